import { expect, test } from "vitest";
import { parseRequest } from "../../../src/conversation/grammar/parse-request.ts";
import { library } from "../../support/ask-library.ts";

const about = (text: string, topic: string) =>
  parseRequest(text, library, { language: "en", units: "us", topic }).topic;

test("a topic's word with a pair right after it asks that topic, though the word names a fact in the one before", () => {
  expect(about("size people=3 setpoint=125F", "kit")).toBe("size");
  expect(about("room where=basement", "caution")).toBe("room");
  expect(about("supply length=60ft", "circuit")).toBe("supply");
});

test("the same word with a value is the fact of the topic that is talked about", () => {
  expect(about("size 80 gal", "kit")).toBe("kit");
  expect(about("supply 208 V", "circuit")).toBe("circuit");
  expect(about("room basement", "caution")).toBe("caution");
});

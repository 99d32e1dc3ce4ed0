import fc from "fast-check";
import { expect, test } from "vitest";
import { MOST_TEXT_CHARACTERS, readWebMessage } from "../../src/boundary/web-message.ts";

const GOOD = {
  delivery: "delivery-1",
  conversation: "conversation-1",
  user: "wilma",
  text: "mix 135 to 120 with 50 in",
};

const TAKEN: readonly { readonly name: string; readonly body: object }[] = [
  { name: "a typed text", body: GOOD },
  { name: "a pressed button with its aim", body: { ...GOOD, aim: { walk: "w1", fact: "cold" } } },
  {
    name: "a form without a text",
    body: { ...GOOD, text: "", form: { topic: "mix", fields: { hot: "135", cold: "" } } },
  },
  { name: "a text of the greatest length", body: { ...GOOD, text: "x".repeat(MOST_TEXT_CHARACTERS) } },
];

test.each(TAKEN)("takes $name", ({ body }) => {
  expect(readWebMessage(body)).toEqual({ ok: true, message: body });
});

test("leaves out what it does not know", () => {
  expect(readWebMessage({ ...GOOD, role: "owner" })).toEqual({ ok: true, message: GOOD });
});

const REFUSED: readonly { readonly name: string; readonly body: unknown; readonly problem: string }[] = [
  { name: "no body", body: undefined, problem: "malformed" },
  { name: "a list", body: [GOOD], problem: "malformed" },
  { name: "a missing text", body: { ...GOOD, text: undefined }, problem: "malformed" },
  { name: "a text that is a number", body: { ...GOOD, text: 7 }, problem: "malformed" },
  { name: "a delivery id with a quote", body: { ...GOOD, delivery: `delivery"1` }, problem: "malformed" },
  { name: "a delivery id of 7 characters", body: { ...GOOD, delivery: "1234567" }, problem: "malformed" },
  { name: "a delivery id of 65 characters", body: { ...GOOD, delivery: "d".repeat(65) }, problem: "malformed" },
  { name: "a conversation id with a space", body: { ...GOOD, conversation: "conver sation" }, problem: "malformed" },
  { name: "half an aim", body: { ...GOOD, aim: { walk: "w1" } }, problem: "malformed" },
  {
    name: "a form field that is a list",
    body: { ...GOOD, form: { topic: "mix", fields: { hot: ["135"] } } },
    problem: "malformed",
  },
  {
    name: "a form field of 1001 characters",
    body: { ...GOOD, form: { topic: "mix", fields: { hot: "1".repeat(1001) } } },
    problem: "malformed",
  },
  { name: "spaces alone", body: { ...GOOD, text: " \n\t" }, problem: "empty" },
  {
    name: "a text one character too long",
    body: { ...GOOD, text: "x".repeat(MOST_TEXT_CHARACTERS + 1) },
    problem: "too-long",
  },
];

test.each(REFUSED)("refuses $name as $problem", ({ body, problem }) => {
  expect(readWebMessage(body)).toMatchObject({ ok: false, problem });
});

test("keeps the person of a message that it refuses for its length", () => {
  expect(readWebMessage({ ...GOOD, text: "x".repeat(5000) })).toEqual({
    ok: false,
    problem: "too-long",
    user: "wilma",
  });
});

test("answers any value without throwing", () => {
  fc.assert(fc.property(fc.anything(), (body) => typeof readWebMessage(body).ok === "boolean"));
});

import { describe, expect, test } from "vitest";
import type { Block } from "../../src/messages/card.ts";
import { gatherFolds } from "../../src/messages/gather-folds.ts";
import { SAMPLE_CARDS } from "../support/sample-cards.ts";

const text = (said: string): Block => ({ kind: "text", tone: "plain", text: said, isDetail: true });

describe("details under their titles", () => {
  const parts = gatherFolds(SAMPLE_CARDS["details"]?.blocks ?? []);

  test("a heading, a headed list and a table each begin a fold; what follows belongs to it", () => {
    expect(parts.map((part) => (part.kind === "fold" ? part.title : part.kind))).toEqual([
      ...["headline", "rows", "table", "buttons"],
      "More numbers",
      "How it was counted",
      "What to change, the cheapest first",
      "The same unit in closed rooms",
      "Assumed",
    ]);
    const assumed = parts.at(-1);
    expect(assumed?.kind === "fold" && assumed.blocks.map(({ kind }) => kind)).toEqual(["rows", "buttons"]);
  });
  test("a title is not said again inside its fold, but a table keeps its caption", () => {
    const inside = JSON.stringify(parts.flatMap((part) => (part.kind === "fold" ? part.blocks : [])));
    expect(inside).not.toContain("More numbers");
    expect(inside).not.toContain("How it was counted");
    expect(inside).toContain("The same unit in closed rooms");
  });
  test("a detail before any title stands open, and a block in between ends a fold", () => {
    const heading: Block = { kind: "text", tone: "heading", text: "Why", isDetail: true };
    const open: Block = { kind: "headline", text: "4.5 gal" };
    expect(gatherFolds([text("early"), heading, text("in"), open, text("late")])).toEqual([
      text("early"),
      { kind: "fold", title: "Why", blocks: [text("in")] },
      open,
      text("late"),
    ]);
  });
});

import { parseHTML } from "linkedom";
import { describe, expect, test } from "vitest";
import { renderHtml } from "../../adapters/web/render-html.ts";
import type { Block, Card } from "../../src/messages/card.ts";
import { NASTY_TEXTS, SAMPLE_CARDS } from "../support/sample-cards.ts";

type Page = ReturnType<typeof parseHTML>["document"];

function parse(card: Card, language: "en" | "es" = "en"): Page {
  return parseHTML(`<!doctype html><html><body>${renderHtml(card, { id: "d1", language })}</body></html>`).document;
}
function show(...blocks: readonly Block[]): Page {
  return parse({ title: "Title", summary: "Summary", blocks });
}
const textOf = (page: Page, selector: string) => page.querySelector(selector)?.textContent?.replace(/\s+/g, " ").trim();
const textsOf = (page: Page, selector: string) => [...page.querySelectorAll(selector)].map((one) => one.textContent);

/** Every text of a card, wherever it stands. */
function textsIn(value: unknown, key = ""): readonly string[] {
  const KEPT_OUT = [
    "kind",
    "tone",
    "severity",
    "style",
    "summary",
    "mark",
    "xKind",
    "hash",
    "id",
    "type",
    "chart",
    "labels",
    "units",
  ];
  if (KEPT_OUT.includes(key)) return [];
  if (typeof value === "string") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) => textsIn(one, name));
}
const plain = (text: string) =>
  text
    .replace(/[^\P{Cc}\t\n]/gu, "")
    .replace(/\p{Surrogate}/gu, "\uFFFD")
    .replace(/\s+/gu, " ")
    .trim();

describe.each(Object.entries(SAMPLE_CARDS))("sample card %s", (_, card) => {
  const page = parse(card);

  test("holds every text of the card in what a person can read or press", () => {
    const attributes = ["data-say", "data-walk", "data-fact", "data-topic", "name", "value", "placeholder"];
    const found = new Set(
      [...page.querySelectorAll("*")].flatMap((element) => [
        plain(element.textContent ?? ""),
        ...attributes.map((attribute) => plain(element.getAttribute(attribute) ?? "")),
      ]),
    );
    const missing = textsIn(card).filter((text) => !found.has(plain(text)));
    expect(missing).toEqual([]);
  });

  test("holds no script, style, event handler or address of elsewhere", () => {
    expect(page.querySelectorAll("script, style, img, iframe, object, a, link, [src], [href], [style]").length).toBe(0);
    const handlers = [...page.querySelectorAll("*")].flatMap((element) =>
      [...element.attributes].filter((attribute) => attribute.name.startsWith("on")),
    );
    expect(handlers).toEqual([]);
  });

  test("gives every id once and points only at ids that exist", () => {
    const ids = [...page.querySelectorAll("[id]")].map((element) => element.id);
    expect(new Set(ids).size).toBe(ids.length);
    const targets = ["for", "aria-labelledby", "aria-describedby"].flatMap((attribute) =>
      [...page.querySelectorAll(`[${attribute}]`)].flatMap((element) =>
        (element.getAttribute(attribute) ?? "").split(" "),
      ),
    );
    expect(targets.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test("names every field and every group", () => {
    for (const field of page.querySelectorAll("input, select, progress"))
      expect(page.querySelectorAll(`label[for="${field.id}"]`).length).toBe(1);
    for (const group of page.querySelectorAll("[role=group], [role=region], [role=note], article, figure, form"))
      expect(group.hasAttribute("aria-labelledby")).toBe(true);
  });
});

test("the card is an article under its title, in the reader's language", () => {
  const page = parse(SAMPLE_CARDS["spanish"] ?? { title: "", summary: "", blocks: [] }, "es");
  expect(page.querySelector("article")?.getAttribute("lang")).toBe("es");
  expect(textOf(page, "h2#d1-title")).toBe("Mezcla en la válvula");
  expect(textOf(page, ".caution-show b")).toBe("Cómo mostrarlo en obra:");
});

test("a verdict is a word beside a shape that no other verdict has", () => {
  const shapes = (["good", "caution", "no", "info"] as const).map((kind) => {
    const page = parse({ title: "t", summary: "s", blocks: [], verdict: { kind, word: `Word ${kind}` } });
    expect(textOf(page, ".verdict")).toBe(`Word ${kind}`);
    return page.querySelector(".verdict svg")?.innerHTML;
  });
  expect(new Set(shapes).size).toBe(4);
});

test("a caution is a note under its word with a shape of its own weight", () => {
  const shapes = (["stop", "must", "should", "note"] as const).map((severity) => {
    const page = show({
      kind: "caution",
      severity,
      word: `Word ${severity}`,
      text: "Do.",
      show: "Look.",
      cites: "Book 1",
    });
    const section = page.querySelector("section[role=note]");
    expect(page.getElementById(section?.getAttribute("aria-labelledby") ?? "")?.textContent).toBe(`Word ${severity}`);
    expect(textsOf(page, "section p")).toEqual(["Do.", "To show it on site: Look.", "Source: Book 1"]);
    return page.querySelector("h3 svg")?.innerHTML;
  });
  expect(new Set(shapes).size).toBe(4);
});

test("rows are a list of terms, a note under its value", () => {
  const page = show({
    kind: "rows",
    heading: "Went by",
    rows: [
      { label: "Tank", value: "80 gal", note: "assumed" },
      { label: "Cold", value: "50 °F" },
    ],
  });
  expect(textsOf(page, "h3")).toEqual(["Went by"]);
  expect(textsOf(page, "dl > div > dt")).toEqual(["Tank", "Cold"]);
  expect(textsOf(page, "dl > div > dd")).toEqual(["80 gal", "assumed", "50 °F"]);
});

test("a table has its caption, column heads and row heads", () => {
  const page = show({
    kind: "table",
    caption: "Sizes",
    columns: ["Size", "Enough?"],
    rows: [
      ["2 gal", "no"],
      ["4 gal", "yes"],
    ],
  });
  expect(textOf(page, "table > caption")).toBe("Sizes");
  expect(textsOf(page, "thead th[scope=col]")).toEqual(["Size", "Enough?"]);
  expect(textsOf(page, "tbody th[scope=row]")).toEqual(["2 gal", "4 gal"]);
  expect(textsOf(page, "tbody td")).toEqual(["no", "yes"]);
  expect(page.querySelector("[role=region]")?.getAttribute("tabindex")).toBe("0");
});

test.each([
  { rows: 20, folds: 0 },
  { rows: 21, folds: 1 },
])("a table of $rows rows is folded $folds times", ({ rows, folds }) => {
  const page = show({
    kind: "table",
    caption: "Long",
    columns: ["A"],
    rows: Array.from({ length: rows }, (_, i) => [`${i}`]),
  });
  expect(page.querySelectorAll("details").length).toBe(folds);
  expect(page.querySelectorAll("tbody tr").length).toBe(rows);
});

test("a question is a group with its answers, named by its prompt and described by its help", () => {
  const page = show(
    { kind: "question", prompt: "How cold?", help: "Look.", progress: "2 of 5" },
    { kind: "buttons", buttons: [{ label: "50 °F", say: "50F", aim: { walk: "w3", fact: "cold" } }] },
    { kind: "buttons", buttons: [{ label: "Help", say: "help" }] },
  );
  const group = page.querySelector("[role=group]");
  expect(page.getElementById(group?.getAttribute("aria-labelledby") ?? "")?.textContent).toBe("How cold?");
  expect(page.getElementById(group?.getAttribute("aria-describedby") ?? "")?.textContent).toBe("Look.");
  expect(textsOf(page, "[role=group] button")).toEqual(["50 °F"]);
  expect(textsOf(page, "button")).toEqual(["50 °F", "Help"]);
  const { say, walk, fact } = page.querySelector("button")?.dataset ?? {};
  expect({ say, walk, fact }).toEqual({ say: "50F", walk: "w3", fact: "cold" });
});

test("a button without an aim carries none", () => {
  const page = show({ kind: "buttons", buttons: [{ label: "Back", say: "back", style: "danger" }] });
  const button = page.querySelector("button");
  expect(button?.getAttribute("type")).toBe("button");
  expect(button?.className).toContain("button-danger");
  expect(button?.hasAttribute("data-walk")).toBe(false);
});

test("a form ties each problem and help to its field", () => {
  const page = parse(SAMPLE_CARDS["form"] ?? { title: "", summary: "", blocks: [] });
  const field = page.querySelector("input[name=run]");
  expect(field?.getAttribute("aria-invalid")).toBe("true");
  expect(page.getElementById(field?.getAttribute("aria-describedby") ?? "")?.textContent).toContain("60 apples");
  expect(page.querySelector("input[name=element]")?.hasAttribute("required")).toBe(true);
  expect(page.querySelector("form")?.getAttribute("data-topic")).toBe("circuit");
});

const choice = (count: number, required: boolean, value?: string): Block => ({
  kind: "form",
  topic: "t",
  title: "t",
  submit: "s",
  fields: [
    {
      fact: "a",
      label: "A",
      required,
      ...(value !== undefined && { value }),
      input: { type: "choice", options: Array.from({ length: count }, (_, i) => ({ value: `${i}`, label: `L${i}` })) },
    },
  ],
});
const CHOICES: readonly {
  readonly name: string;
  readonly block: Block;
  readonly offered: readonly string[];
  readonly chosen: readonly string[];
}[] = [
  {
    name: "4 options are radios, none chosen unasked",
    block: choice(4, true),
    offered: ["0", "1", "2", "3"],
    chosen: [],
  },
  {
    name: "4 options that may stay open start there",
    block: choice(4, false),
    offered: ["0", "1", "2", "3", ""],
    chosen: [""],
  },
  {
    name: "a value that is none of 2 options chooses none",
    block: choice(2, true, "9"),
    offered: ["0", "1"],
    chosen: [],
  },
  {
    name: "5 options are a list that starts with nothing",
    block: choice(5, true),
    offered: ["", "0", "1", "2", "3", "4"],
    chosen: [""],
  },
  {
    name: "5 options with one chosen need no empty one",
    block: choice(5, true, "3"),
    offered: ["0", "1", "2", "3", "4"],
    chosen: ["3"],
  },
  {
    name: "a value that is none of 5 options chooses nothing",
    block: choice(5, true, "9"),
    offered: ["", "0", "1", "2", "3", "4"],
    chosen: [""],
  },
];
test.each(CHOICES)("$name", ({ block, offered, chosen }) => {
  const page = show(block);
  const values = (selector: string) => [...page.querySelectorAll(selector)].map((one) => one.getAttribute("value"));
  expect(values("input[type=radio], option")).toEqual(offered);
  expect(values("[checked], [selected]")).toEqual(chosen);
});

test("a day has a calendar and a count a field for numbers, with what is known", () => {
  const page = parse(SAMPLE_CARDS["form"] ?? { title: "", summary: "", blocks: [] });
  const day = page.querySelector('input[name="due"]');
  expect([day?.getAttribute("type"), day?.getAttribute("value")]).toEqual(["date", "2026-12-01"]);
  const count = page.querySelector('input[name="circuits"]');
  const said = ["type", "value", "min", "max", "step"].map((name) => count?.getAttribute(name));
  expect(said).toEqual(["number", "2", "0", "42", "1"]);
});

test("a chart is a figure with its text, and its numbers in a table to unfold", () => {
  const page = parse(SAMPLE_CARDS["chart"] ?? { title: "", summary: "", blocks: [] });
  expect(textOf(page, "figure > figcaption")).toBe("Outlet through the day");
  expect(textOf(page, "figure > p")).toContain("falls to 112 °F");
  expect(textsOf(page, "figure details tbody th")).toEqual(["0", "7", "11"]);
});

test("progress is a bar with its text as label", () => {
  const page = show({ kind: "progress", text: "Sampled days 25 %", done: 50, total: 200 });
  const bar = page.querySelector("progress");
  expect([bar?.getAttribute("value"), bar?.getAttribute("max")]).toEqual(["50", "200"]);
  expect(textOf(page, `label[for="${bar?.id}"]`)).toBe("Sampled days 25 %");
});

test("texts in any direction keep to their own element", () => {
  const text = NASTY_TEXTS["rightToLeft"] ?? "";
  const page = show({ kind: "rows", rows: [{ label: text, value: text, note: text }] }, { kind: "headline", text });
  const holders = [...page.querySelectorAll("*")].filter(
    (one) => one.children.length === 0 && one.textContent?.includes("tank"),
  );
  expect(holders.length).toBe(4);
  for (const holder of holders) expect(holder.localName === "bdi" || holder.getAttribute("dir") === "auto").toBe(true);
});

describe("a kept file", () => {
  const fileOf = ({ hash, name }: { readonly hash: string; readonly name: string }) =>
    `/files/${hash}?${new URLSearchParams({ user: "wilma", name })}`;
  const show = (type: string, name: string, size_B: number) => {
    const file = { hash: "a1".repeat(32), name, type, size_B };
    const card: Card = { title: "Job", summary: "Job", blocks: [{ kind: "file", file, text: `The <b>panel` }] };
    return parseHTML(renderHtml(card, { id: "c", language: "en", fileOf })).document;
  };
  test.each(["image/jpeg", "image/png", "image/webp"])("of type %s is a small picture that opens whole", (type) => {
    const page = show(type, "panel.jpg", 2_140_000);
    const link = page.querySelector("a.photo");
    expect(link?.getAttribute("href")).toBe(`/files/${"a1".repeat(32)}?user=wilma&name=panel.jpg`);
    expect([link?.getAttribute("target"), link?.getAttribute("rel")]).toEqual(["_blank", "noopener"]);
    expect(page.querySelector("img")?.getAttribute("alt")).toBe("The <b>panel");
    expect(page.querySelector("figcaption")?.textContent).toContain("panel.jpg, 2.1 MB");
  });
  test.each([
    { type: "application/pdf", name: "permit.pdf", size_B: 999, says: "permit.pdf, 999 B" },
    { type: "text/csv", name: `x" onclick="y.csv`, size_B: 20_480, says: `x" onclick="y.csv, 20 kB` },
    { type: "image/svg+xml", name: "drawing.svg", size_B: 999_600, says: "drawing.svg, 1.0 MB" },
    { type: "text/html", name: "page.html", size_B: 0, says: "page.html, 0 B" },
  ])("of type $type is something to take along, with its size", ({ type, name, size_B, says }) => {
    const page = show(type, name, size_B);
    expect(page.querySelectorAll("img, b, [onclick]").length).toBe(0);
    const link = page.querySelector("a");
    expect([link?.getAttribute("download"), link?.getAttribute("aria-label")]).toEqual([
      name,
      `Download ${name}: The <b>panel`,
    ]);
    expect(link?.textContent).toContain(says);
  });
});

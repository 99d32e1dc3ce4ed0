import { describe, expect, test } from "vitest";
import { createPapers } from "../../adapters/papers/create-papers.ts";
import { drawRecordPdf } from "../../adapters/papers/draw-record.ts";
import { tidyText } from "../../adapters/papers/tidy-text.ts";
import type { JobChange } from "../../src/jobs/job.ts";
import { projectJob } from "../../src/jobs/project-job.ts";
import { buildRecordPaper } from "../../src/messages/build-record-paper.ts";
import { type Reader, voiceFor } from "../../src/messages/voice.ts";
import type { RecordPaper } from "../../src/ports/papers.ts";
import { library } from "../support/ask-library.ts";
import { fixtureBooks } from "../support/fixture-books.ts";
import { eventsOf } from "../support/job-samples.ts";
import { readPdf } from "../support/pdf-text.ts";
import { SMALL_JPEG } from "../support/small-jpeg.ts";

const US: Reader = { language: "en", units: "us" };
const ES: Reader = { language: "es", units: "si" };

const MEASURED: readonly JobChange[] = [
  { kind: "unit", model: "hollin-50" },
  { kind: "planned", day: "2026-11-30", people: ["marisol"] },
  { kind: "status", status: "under_way" },
  {
    kind: "reading",
    reading: {
      id: "line_pressure",
      quantity: { kind: "pressure", value: 455.05 },
      expected: { kind: "pressure", value: 551.58 },
      isAccepted: true,
    },
  },
  { kind: "item_opened", item: { id: "bond", what: "bond", owner: "marisol", due: "2026-12-01" } },
  { kind: "trail", text: "Display shows A1." },
  { kind: "status", status: "open_items" },
];
const photo = (name: string, type = "image/jpeg"): JobChange => ({
  kind: "file",
  file: { hash: name, name, type, size_B: 1 },
});

function paperOf(reader: Reader, ...more: readonly JobChange[]): RecordPaper {
  const events = eventsOf(...MEASURED, ...more);
  const job = projectJob(events);
  if (job === undefined) throw new Error("no job");
  const marks = [
    { caution: "relief_discharge_missing", about: "{}", act: "seen", by: "Ana", at_ms: 5000, door: "slack" } as const,
  ];
  return buildRecordPaper({ ...voiceFor(library, reader), books: fixtureBooks }, { job, events, marks });
}

async function print(paper: RecordPaper, photos: ReadonlyMap<string, Uint8Array | undefined> = new Map()) {
  const pages = readPdf(await drawRecordPdf(paper, photos, { compress: false }));
  return { pages, text: pages.map(({ text }) => text).join("\n") };
}

describe("a record on paper", () => {
  test("says in English and US units what was measured beside what was expected, and what is open", async () => {
    const { pages, text } = await print(paperOf(US));
    // Letter, 8.5 by 11 in at 72 points an inch.
    expect(pages[0]).toMatchObject({ width: 612, height: 792 });
    for (const said of [
      "Record of job 1001",
      "T. M.",
      "66 psi",
      "80 psi",
      "Accepted",
      "December 1, 2026",
      "Display shows A1.",
    ])
      expect(text).toContain(said);
    expect(text).toContain("For the crew");
    expect(text).toContain("relief discharge missing");
  });

  test("says the same in Spanish and SI units on A4, with every letter", async () => {
    const { pages, text } = await print(paperOf(ES, { kind: "note", text: "¿Señal? Sí: 0.5 Ω ≥ nada" }));
    // ISO 216: 210 by 297 mm.
    expect(pages[0]?.width).toBeCloseTo((210 / 25.4) * 72, 1);
    for (const said of [
      "Registro del trabajo 1001",
      "455.05 kPa",
      "Se acepta",
      "1 de diciembre de 2026",
      "Por la cuadrilla",
    ])
      expect(text).toContain(said);
    expect(text.replaceAll("\n", " ")).toContain("¿Señal? Sí: 0.5 Ω ≥ nada");
    expect(text).not.toContain("\uFFFD");
  });

  test("bears its number, who decides and how many pages there are on every page", async () => {
    const { pages } = await print(
      paperOf(US, ...Array.from({ length: 60 }, () => ({ kind: "note", text: "x" }) as const)),
    );
    expect(pages.length).toBeGreaterThan(2);
    for (const [at, { text }] of pages.entries()) {
      expect(text).toContain(`Record of job 1001   Page ${at + 1} of ${pages.length}`);
      expect(text).toContain("authority having jurisdiction decide");
    }
  });

  test("says on every page that data are invented, where they are", async () => {
    const { pages } = await print(paperOf(US));
    expect(fixtureBooks.company.isInvented).toBe(true);
    expect(pages.every(({ text }) => text.includes("every name and number here is invented"))).toBe(true);
  });

  test("is the same file for the same record, and another one when something changes", async () => {
    const draw = (paper: RecordPaper) => drawRecordPdf(paper, new Map([["a", SMALL_JPEG]]));
    const [one, again] = [await draw(paperOf(US, photo("a"))), await draw(paperOf(US, photo("a")))];
    expect(Buffer.compare(one, again)).toBe(0);
    expect(Buffer.compare(one, await draw(paperOf(US, photo("a"), { kind: "note", text: "more" })))).not.toBe(0);
  });

  test("names its language and title for screen readers, and tags what it shows", async () => {
    const file = Buffer.from(
      await drawRecordPdf(paperOf(ES, photo("a")), new Map([["a", SMALL_JPEG]]), { compress: false }),
    );
    const raw = file.toString("latin1");
    expect(raw).toContain("/Lang (es)");
    expect(raw).toContain("/Marked true");
    expect(raw).toContain("/DisplayDocTitle true");
    for (const tag of ["H1", "H2", "Table", "TH", "Figure"]) expect(raw).toContain(`/S /${tag}\n`);
  });
});

describe("what does not fit", () => {
  const NASTY = [
    { name: "ten thousand letters", text: "word ".repeat(2000) },
    { name: "ten thousand letters without a blank", text: "x".repeat(10_000) },
    { name: "marks that turn the direction", text: "a\u202Eb\u202Cc \u200F\u2067d\u2069" },
    { name: "controls and half letters", text: "a\u0000\u0007b\tc\r\nd\uD800e" },
    { name: "nothing", text: "" },
  ];
  test.each(NASTY)("$name in a note, a reason and a name stay on the paper", async ({ text }) => {
    const said = text.slice(0, 3000);
    const reading = {
      id: "bond",
      quantity: { kind: "resistance", value: 3 },
      isAccepted: false,
      because: said,
    } as const;
    const { pages, text: shown } = await print(
      paperOf(US, { kind: "note", text }, { kind: "reading", reading }, photo(`${said}.jpg`)),
      new Map([[`${said}.jpg`, SMALL_JPEG]]),
    );
    // Page ends stand in between, so that letters are counted: in the note, and once more in the reason.
    for (const letter of new Set(text.replace(/[^a-z]/g, ""))) {
      const count = (where: string) => where.split(letter).length - 1;
      expect({ letter, isThere: count(shown) >= count(text) + count(said) }).toEqual({ letter, isThere: true });
    }
    expect(shown).not.toMatch(/\p{Cf}|\p{Variation_Selector}/u);
    expect(shown).toContain("Signatures");
    expect(pages.length).toBeLessThan(20);
  });

  test("forty photos stand with their names, and none is lost at the end of a page", async () => {
    const names = Array.from({ length: 40 }, (_, at) => `photo-${at}.jpg`);
    const printed = new Map(names.map((name) => [name, SMALL_JPEG]));
    const { pages, text } = await print(paperOf(US, ...names.map((name) => photo(name))), printed);
    for (const name of names) expect(text).toContain(name);
    expect(pages.length).toBeLessThan(14);
  });

  test("a photo that cannot be printed or is gone is named instead, and a paper by its name", async () => {
    const paper = paperOf(
      US,
      photo("wrong"),
      photo("here.webp", "image/webp"),
      photo("gone"),
      photo("a.pdf", "application/pdf"),
    );
    const papers = createPapers({
      printPhoto: async (bytes, type) => (type === "image/webp" ? undefined : bytes),
      draw: (one, photos) => drawRecordPdf(one, photos, { compress: false }),
    });
    const bytes = await papers.drawRecord(paper, async (hash) =>
      hash === "gone" ? undefined : Buffer.from("no picture"),
    );
    const text = readPdf(bytes)
      .map((page) => page.text)
      .join("\n");
    expect(text).toMatch(/wrong: .*not printed/);
    expect(text).toMatch(/here\.webp: .*kept with the job, not printed here/);
    expect(text).toMatch(/gone: .*no longer there/);
    expect(text).toContain("a.pdf: ");
  });
});

describe("what is written in other scripts and signs", () => {
  test.each([
    { said: "Señal: 0.5 Ω ≥ ½ → ¿sí?", shown: "Señal: 0.5 Ω ≥ ½ → ¿sí?" },
    { said: "fine 👍🏽🔥 so far", shown: "fine […] so far" },
    { said: "👨\u200D👩\u200D👧 1\uFE0F\u20E3 漢字 ✅ ❌", shown: "[…] 1 […] ✔ ✘" },
    { said: "שלום עולם now", shown: "עולם שלום  now" },
    { said: "see שלום.png", shown: "see שלום .png" },
  ])("$said is set as $shown", ({ said, shown }) => {
    expect(tidyText(said)).toBe(shown);
  });

  test("what the fonts lack is marked, said once at the end, and nothing is said where nothing is missing", async () => {
    const { text } = await print(paperOf(US, { kind: "note", text: "all good 👍" }, { kind: "note", text: "🔥" }));
    expect(text).toContain("all good […]");
    expect(text.split("stands for signs that this page cannot print")).toHaveLength(2);
    expect((await print(paperOf(US, { kind: "note", text: "all good" }))).text).not.toContain("[…]");
    const typed = await print(paperOf(US, { kind: "note", text: "and so on […] é" }));
    expect(typed.text).not.toContain("cannot print");
  });
});

/** Some papers one after the other, on a busy machine. */
const MANY_PAPERS_ms = 120_000;

test("no heading stands alone at the foot of a page, wherever the page ends", { timeout: MANY_PAPERS_ms }, async () => {
  const printed = new Map([["tank.jpg", SMALL_JPEG]]);
  for (let lines = 8; lines < 24; lines += 2) {
    const notes = Array.from({ length: lines }, (_, at) => ({ kind: "trail", text: `finding ${at}` }) as const);
    const { pages } = await print(paperOf(US, ...notes, photo("tank.jpg"), { kind: "note", text: "gurgles" }), printed);
    const pageWith = (said: string) => pages.findIndex(({ text }) => text.split("\n").includes(said));
    const pageOf = (said: string) => pages.findIndex(({ text }) => text.includes(said));
    expect({ lines, photos: pageWith("Photos") }).toEqual({ lines, photos: pageOf("tank.jpg: ") });
    expect({ lines, notes: pageWith("Notes") }).toEqual({ lines, notes: pageOf("gurgles") });
    expect({ lines, walk: pageWith("Fault walk") }).toEqual({ lines, walk: pageOf("Display shows A1.") });
    expect({ lines, signed: pageWith("Signatures") }).toEqual({ lines, signed: pageWith("Date") });
    expect(pageWith("Photos")).toBeGreaterThanOrEqual(0);
  }
});

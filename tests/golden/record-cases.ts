import type { Books } from "../../src/books/books.ts";
import type { JobChange } from "../../src/jobs/job.ts";
import { projectJob } from "../../src/jobs/project-job.ts";
import { buildSummaryCard, buildSummaryThreadCard } from "../../src/messages/build-summary-card.ts";
import type { Card } from "../../src/messages/card.ts";
import { recordToJson } from "../../src/messages/record-json.ts";
import { type Reader, type Voice, voiceFor } from "../../src/messages/voice.ts";
import type { KeptMark } from "../../src/ports/store.ts";
import { library, say } from "../support/ask-library.ts";

/** A card that is kept in all its renderings, and what a script reads beside it. */
export interface RecordCase {
  readonly name: string;
  readonly reader: Reader;
  readonly card: Card;
  readonly json?: unknown;
}

const JOB = "1042";
const EBBE = { by: "Ebbe Tarnowell", person: "ebbe", door: "slack" } as const;
/** November 23, 2026, 08:00 where the demo company is. */
const BEGIN_ms = Date.UTC(2026, 10, 23, 14);
const QUARTER_ms = 15 * 60_000;
const photo = (name: string, hash: string): JobChange => ({
  kind: "file",
  file: { hash: hash.repeat(64), name, type: "image/jpeg", size_B: 81_920 },
});

/** A call-back: what was set and measured, what was found, what is left open, with photos. */
const CHANGES: readonly JobChange[] = [
  { kind: "opened", customer: "R. V.", place: "Ostrowick", day: "2026-11-23" },
  { kind: "unit", model: "hollin-50" },
  { kind: "permit", permit: "P-2099" },
  { kind: "planned", day: "2026-11-23", people: ["ebbe", "marisol"] },
  { kind: "status", status: "under_way" },
  {
    kind: "facts",
    topic: "expansion",
    facts: { closed: true, tank: 174.128941, setpoint: 51.666667, line_pressure: 468.843496 },
  },
  {
    kind: "reading",
    reading: {
      id: "line_pressure",
      quantity: { kind: "pressure", value: 455.053984 },
      expected: { kind: "pressure", value: 551.580583 },
      isAccepted: true,
    },
  },
  {
    kind: "reading",
    reading: {
      id: "outlet_temperature",
      quantity: { kind: "temperature", value: 51.666667 },
      expected: { kind: "temperature", value: 48.888889 },
      isAccepted: false,
      because: "the mixing valve is on order",
    },
  },
  {
    kind: "item_opened",
    item: { id: "drain", what: "drain pan to the floor drain", owner: "ebbe", due: "2026-11-24" },
  },
  { kind: "item_opened", item: { id: "valve", what: "mixing valve", owner: "marisol", due: "2026-12-01" } },
  { kind: "item_closed", item: "drain" },
  { kind: "parts", parts: { "expansion-tank-2-gal": 1, "drain-pan": 1 } },
  { kind: "trail", text: "Water under the unit after each shower; the condensate line was clogged." },
  { kind: "note", text: "The customer asks for a call before the next visit." },
  photo("left-side.jpg", "a"),
  photo("label.jpg", "b"),
  { kind: "status", status: "open_items" },
];
const MARKS: readonly KeptMark[] = [
  {
    caution: "heavy_to_lift",
    about: "{}",
    act: "seen",
    job: JOB,
    by: "Marisol Vantreaux",
    door: "teams",
    at_ms: BEGIN_ms + QUARTER_ms,
    shown: { severity: "must", data: { unit: { kind: "mass", value: 80 }, person: { kind: "mass", value: 23 } } },
  },
  {
    caution: "hot_storage_without_mixing_valve",
    about: "{}",
    act: "skipped",
    because: "the valve comes on Tuesday",
    job: JOB,
    by: "Ebbe Tarnowell",
    door: "slack",
    at_ms: BEGIN_ms + 2 * QUARTER_ms,
    shown: {
      severity: "stop",
      data: { storage: { kind: "temperature", value: 60 }, time: { kind: "time", value: 6 } },
    },
  },
];

/** Summary, thread, record and JSON of one job, in English and US units and in Spanish and SI units. */
export function recordCases(books: Books): readonly RecordCase[] {
  const events = CHANGES.map((change, at) => ({
    number: at + 1,
    job: JOB,
    change,
    ...EBBE,
    at_ms: BEGIN_ms + at * QUARTER_ms,
  }));
  const job = projectJob(events);
  if (job === undefined) throw new Error("no job");
  const record = { job, events, marks: MARKS };
  const ofReader = (reader: Reader, names: readonly [string, string, string]): readonly RecordCase[] => {
    const voice: Voice = { ...voiceFor(library, reader), books };
    const lent: Books = { ...books, jobs: [job], openJob: job, openRecord: { job: JOB, events, marks: MARKS } };
    const [summary, thread, whole] = names;
    return [
      { name: summary, reader, card: buildSummaryCard(voice, record) },
      { name: thread, reader, card: buildSummaryThreadCard(voice, job, MARKS) },
      { name: whole, reader, card: say(`record ${JOB}`, reader, lent).card, json: recordToJson(voice, record) },
    ];
  };
  return [
    ...ofReader({ language: "en", units: "us" }, ["summary", "summary-thread", "record"]),
    ...ofReader({ language: "es", units: "si" }, ["resumen", "resumen-hilo", "registro"]),
  ];
}

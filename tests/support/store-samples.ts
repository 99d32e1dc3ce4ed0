import type { ConversationState, Walk } from "../../src/conversation/state.ts";
import type { Card } from "../../src/messages/card.ts";
import type { PostPaper } from "../../src/ports/outbox.ts";
import type { Caller, Exchange, Person } from "../../src/ports/store.ts";

export const ANN: Caller = { door: "slack", organisation: "T-ONE", user: "U1", name: "Ann" };
export const BEN: Caller = { ...ANN, user: "U2", name: "Ben" };
/** The same user id in another organisation: somebody else altogether. */
export const STRANGER: Caller = { ...ANN, organisation: "T-TWO", name: "Stranger" };

export function card(title: string): Card {
  return { title, blocks: [{ kind: "headline", text: title }], summary: title };
}

const walk = (id: string): Walk => ({
  id,
  topic: "expansion",
  facts: { tank: { value: 302.8, from: "asked", typed: "80 gal" }, closed: { value: true, from: "assumed" } },
  toAsk: ["cold"],
  asked: ["tank"],
});

/** A state that has every part filled in, with an open walk when it gets an id. */
export function stateWith(walkId?: string): ConversationState {
  return {
    ...(walkId !== undefined && {
      walk: { ...walk(walkId), unsettled: [UNKNOWN_WORD, AMBIGUOUS], revises: "r1", job: "1001" },
    }),
    parked: [walk("parked")],
    last: {
      topic: "mix",
      facts: { hot: { value: 57.2, from: "asked" } },
      walk: "w0",
      numbers: { mix_fraction_hot: { kind: "share", value: 0.62 } },
      job: "1001",
    },
    shown: [
      {
        id: "line_pressure_high",
        severity: "must",
        data: { pressure: { kind: "pressure", value: 655 }, note: "told" },
        walk: "w0",
        local: {
          action: "replace",
          asks: { en: "Ask the town.", es: "Pregunte al pueblo." },
          because: { en: "the mains surge", es: "la red sube" },
          by: { basis: "invented", document: "Testbench rules", section: "1" },
        },
      },
      { id: "relief_setting_high", severity: "stop", data: {}, walk: "w0", isPast: true },
    ],
    job: "1001",
    walksStarted: 3,
    past: [
      { walk: walk("before"), parked: [] },
      { units: "us", language: "en" },
      { job: "1002", entered: { job: "1001", events: [3, 4], crew: [5] } },
      { marked: [{ caution: "relief_setting_high", about: "{}" }] },
    ],
  };
}
const UNKNOWN_WORD = { kind: "unknown-word", word: "tnak", nearest: ["tank"], text: "expansion tnak 80" } as const;
const AMBIGUOUS = { kind: "ambiguous", typed: "60", candidates: ["cold", "pressure"] } as const;

/** A paper with every kind of block. */
export const SAMPLE_PAPER: PostPaper = {
  name: "job-1001-record.pdf",
  text: "Record of job 1001",
  record: {
    language: "en",
    sheet: "letter",
    title: "Record of job 1001",
    subject: "Hollin 50 in Ostrowick",
    company: "Testbench",
    warning: "Everything is invented.",
    mark: "Record of job 1001",
    foot: "Who decides",
    leftOut: "Something is left out.",
    page: "Page",
    of: "of",
    at_ms: 1_700_000_000_000,
    blocks: [
      { kind: "heading", text: "Readings" },
      { kind: "text", tone: "strong", text: "Nothing is open." },
      { kind: "table", widths: [0.5, 0.5], columns: ["What", "How much"], rows: [["Pressure", "66 psi"]] },
      { kind: "pairs", pairs: [["Customer", "T. M."]] },
      {
        kind: "gauges",
        alt: "Pressure: 66 psi",
        legend: "Shaded: accepted",
        gauges: [
          {
            label: "Pressure",
            value: 455,
            low: 0,
            high: 551,
            valueText: "66 psi",
            lowText: "0 psi",
            highText: "80 psi",
          },
        ],
      },
      {
        kind: "photos",
        photos: [
          {
            file: { hash: "a".repeat(64), name: "a.jpg", type: "image/jpeg", size_B: 3 },
            caption: "a.jpg",
            missing: "gone",
            elsewhere: "kept",
          },
        ],
      },
      { kind: "signatures", lines: [{ who: "For the crew", date: "Date" }] },
    ],
  },
};

let deliveries = 0;
/** An exchange that differs from every other by its delivery and its time. */
export function exchangeOf(person: Person, change: Partial<Exchange> = {}): Exchange {
  deliveries += 1;
  const delivery = change.delivery ?? `delivery ${deliveries}`;
  const at_ms = 1_700_000_000_000 + deliveries;
  return { person, conversation: "c1", state: stateWith(), card: card(delivery), at_ms, delivery, ...change };
}

import type { Block, ButtonsBlock, Card, TableBlock } from "../../src/messages/card.ts";

/**
 * Cards that every door must be able to show: each block kind, each tone, severity and verdict, long and short texts,
 * and texts that try to break out of the message. All figures and names are invented; they only give the cards a shape.
 */

/** Texts that a platform could take for more than text. */
export const NASTY_TEXTS: Readonly<Record<string, string>> = {
  channelMention: "<!channel> <!here> <!everyone> wake up",
  userMention: "ask <@U1> and <@W012A3CDE> and <#C1|general> and <!subteam^S1>",
  disguisedLink: "<https://example.test/evil|https://example.test/good> [good](https://example.test/evil)",
  bareLink: "see https://example.test/a?b=1&c=2 or www.example.test",
  entities: "5 &lt; 6 &amp;&amp; 7 &gt; 3 &#60;b&#62;",
  html: `<img src=x onerror="alert(1)"><script>alert(1)</script></p>`,
  markdown: "*bold* _low_ ~gone~ `code` ```fence``` # title\n> quote\n- list\n| a | b |\n|---|---|",
  adaptiveMacro: "{{DATE(2026-01-01T00:00:00Z, SHORT)}} $\u007Bexpression} $when",
  atMarkup: "<at>everyone</at> @here @channel",
  rightToLeft: "tank \u202E lag 08 \u202C \u200F closet \u2067 abc \u2069",
  joiners: "cold\u200D\u200B\u2060\uFEFF water \u{1F469}\u200D\u{1F527}\u{1F469}\u200D\u{1F527} e\u0301e\u0301",
  loneSurrogate: "half \uD83D of an emoji \uDE00",
  controls: "tab\tbell\u0007 null\u0000 escape\u001B[31m red \u001B[0m \u009B31m back\rreturn\b",
  quotes: `6'-3" and "quoted" and \\backslash\\ and \u201Ccurly\u201D \u2019`,
  emojiCode: ":skull: :+1: (y) :)",
  oneLongWord: "w".repeat(400),
  tenThousand: `${"The closet is 7x10x10 ft & the door is <louvred>. ".repeat(200)}`.slice(0, 10_000),
  tenThousandNoSpaces: "&<>\u{1F525}".repeat(2_000),
};

const sizesTable: TableBlock = {
  kind: "table",
  caption: "Stock sizes near the answer",
  columns: ["Size", "Acceptance", "Enough?"],
  rows: [
    ["2.1 gal", "0.9 gal", "no"],
    ["4.5 gal", "2.2 gal", "yes"],
    ["8.5 gal", "4.0 gal", "yes"],
  ],
};

const answerButtons: ButtonsBlock = {
  kind: "buttons",
  buttons: [
    { label: "How?", say: "how?" },
    { label: "At 150 °F", say: "expansion tank=80gal cold=50F hot=150F line=60psi", style: "primary" },
    { label: "Change a fact", say: "form expansion" },
  ],
};

const answer: Card = {
  verdict: { kind: "caution", word: "Check first" },
  title: "Expansion tank",
  summary: "Check first: the water grows by 1.3 gal; a 4.5 gal expansion tank at 60 psi takes it.",
  blocks: [
    { kind: "headline", text: "4.5 gal expansion tank, precharged to 60 psi" },
    { kind: "text", tone: "plain", text: "Heating 80 gal from 50 °F to 140 °F makes 1.3 gal more water." },
    {
      kind: "rows",
      rows: [
        { label: "Growth of the water", value: "1.3 gal" },
        { label: "Smallest tank", value: "3.0 gal" },
        { label: "Precharge", value: "60 psi" },
      ],
    },
    {
      kind: "rows",
      heading: "What I went by",
      rows: [
        { label: "Tank", value: "80 gal" },
        { label: "Relief valve", value: "150 psi", note: "assumed" },
        { label: "Closed system", value: "yes", note: "assumed" },
      ],
    },
    {
      kind: "caution",
      severity: "must",
      word: "Must",
      text: "Where a check valve or a pressure regulator closes the cold supply, growth needs somewhere to go.",
      show: "Look for a check valve or a regulator at the meter and photograph it.",
      cites: "Invented plumbing code, 2099, section 1.2.3 (from memory)",
    },
    sizesTable,
    { kind: "text", tone: "quiet", text: "The authority having jurisdiction decides." },
    answerButtons,
  ],
};

const question: Card = {
  title: "Expansion tank",
  summary: "Question 2 of 5: how cold is the incoming water?",
  blocks: [
    {
      kind: "question",
      prompt: "How cold is the incoming water?",
      help: "A thermometer under the nearest cold tap after two minutes.",
      progress: "2 of 5",
    },
    {
      kind: "buttons",
      buttons: [
        { label: "40 °F", say: "40F", aim: { walk: "w3", fact: "cold" } },
        { label: "50 °F", say: "50F", aim: { walk: "w3", fact: "cold" } },
        { label: "60 °F", say: "60F", aim: { walk: "w3", fact: "cold" } },
        { label: "Don't know", say: "skip", aim: { walk: "w3", fact: "cold" } },
        { label: "Back", say: "back" },
        { label: "Stop", say: "stop", style: "danger" },
      ],
    },
  ],
};

/** A question whose answer is a day. */
const dayQuestion: Card = {
  title: "Job",
  summary: "Question 3: on which day?",
  blocks: [
    {
      kind: "question",
      prompt: "On which day?",
      progress: "Question 3",
      day: { aim: { walk: "w4", fact: "day" }, value: "2026-12-01" },
    },
    { kind: "buttons", buttons: [{ label: "Skip", say: "skip", aim: { walk: "w4", fact: "day" } }] },
  ],
};

const spanish: Card = {
  verdict: { kind: "good", word: "Bien" },
  title: "Mezcla en la válvula",
  summary: "Bien: 71 % de agua caliente da 120 °F en la llave.",
  blocks: [
    { kind: "headline", text: "71 % caliente, 29 % fría" },
    {
      kind: "rows",
      heading: "Con qué conté",
      rows: [{ label: "Agua de entrada", value: "10,5 °C", note: "supuesto" }],
    },
    {
      kind: "caution",
      severity: "stop",
      word: "Alto",
      text: "A 140 °F el agua quema la piel en segundos. Mida en la llave antes de irse.",
      show: "Termómetro en la llave más cercana, agua caliente abierta dos minutos.",
      cites: "Norma inventada, 2099, sección 4",
    },
  ],
};

const form: Card = {
  title: "Electric circuit",
  summary: "Form: electric circuit, four facts.",
  isPrivate: true,
  blocks: [
    {
      kind: "form",
      topic: "circuit",
      title: "Electric circuit for the water heater",
      submit: "Work it out",
      fields: [
        {
          fact: "element",
          label: "Element power",
          help: "On the plate by the lower cover.",
          required: true,
          input: { type: "text", placeholder: "4500 W" },
        },
        {
          fact: "supply",
          label: "Supply",
          required: true,
          value: "240",
          input: {
            type: "choice",
            options: [
              { value: "208", label: "208 V" },
              { value: "240", label: "240 V" },
            ],
          },
        },
        {
          fact: "run",
          label: "Length of the run",
          required: false,
          value: "60 apples",
          problem: "I could not read “60 apples” as a length. Type it like 60 ft or 18 m.",
          input: { type: "text" },
        },
        {
          fact: "due",
          label: "Day of the inspection",
          help: "As the permit says.",
          required: false,
          value: "2026-12-01",
          input: { type: "day" },
        },
        {
          fact: "circuits",
          label: "Free circuits",
          required: true,
          value: "2",
          input: { type: "number", min: 0, max: 42, whole: true },
        },
        {
          fact: "conductor",
          label: "Conductor",
          required: false,
          input: {
            type: "choice",
            options: ["14", "12", "10", "8", "6", "4", "3"].map((size) => ({
              value: size,
              label: `${size} AWG copper`,
            })),
          },
        },
      ],
    },
  ],
};

const chart: Card = {
  verdict: { kind: "info", word: "For your information" },
  title: "A day in the tank",
  summary: "For your information: the outlet falls to 112 °F at 7 in the morning.",
  blocks: [
    { kind: "headline", text: "Lowest outlet 112 °F" },
    {
      kind: "chart",
      units: "us",
      title: "Outlet through the day",
      alt: "The outlet stays near 135 °F, falls to 112 °F at 7 h and is back at 135 °F by 11 h.",
      labels: { outlet: "Outlet", wanted: "Wanted at the taps", x: "Hour of the day" },
      chart: {
        id: "day",
        xKind: "hour_of_day",
        series: [{ id: "outlet", mark: "line", kind: "temperature", x: [0, 7, 11, 24], y: [57.2, 44.4, 57.2, 57.2] }],
        marks: [{ id: "wanted", kind: "temperature", value: 43.3 }],
      },
      table: {
        kind: "table",
        caption: "Outlet through the day",
        columns: ["Hour", "Outlet"],
        rows: [
          ["0", "135 °F"],
          ["7", "112 °F"],
          ["11", "135 °F"],
        ],
      },
    },
  ],
};

const file: Card = {
  title: "Job 1003: complete",
  summary: "Job 1003 is complete; one photo.",
  blocks: [
    { kind: "text", tone: "heading", text: "Photos and papers" },
    {
      kind: "file",
      file: { hash: "a1".repeat(32), name: "IMG_1.jpg", type: "image/jpeg", size_B: 20_480 },
      text: "Photo from Wren, 20 kB",
    },
  ],
};

const progress: Card = {
  title: "Will it keep up?",
  summary: "Working: 50 of 200 days.",
  blocks: [
    { kind: "progress", text: "Sampled days", done: 50, total: 200 },
    { kind: "buttons", buttons: [{ label: "Cancel", say: "cancel 0a1b2c3d" }] },
  ],
};

const refusal: Card = {
  verdict: { kind: "no", word: "No" },
  title: "Will it keep up?",
  summary: "No: this tank runs cold on three mornings of ten.",
  blocks: [
    { kind: "headline", text: "Runs cold on 3 mornings of 10" },
    { kind: "text", tone: "heading", text: "Why" },
    { kind: "text", tone: "plain", text: "Three showers in a row draw more than the tank holds above 105 °F." },
    ...(["stop", "must", "should", "note"] as const).map(
      (severity): Block => ({
        kind: "caution",
        severity,
        word: { stop: "Stop", must: "Must", should: "Should", note: "Note" }[severity],
        text: `A caution of weight ${severity}.`,
        cites: "Invented handbook, 2099, chapter 5",
      }),
    ),
  ],
};

const problem: Card = {
  title: "I did not get that",
  summary: "I do not know “tnak”. Did you mean tank?",
  isPrivate: true,
  blocks: [
    { kind: "text", tone: "problem", text: "I do not know “tnak”. Did you mean tank?" },
    { kind: "buttons", buttons: [{ label: "tank", say: "expansion tank=80gal" }] },
  ],
};

const nastyButtons: ButtonsBlock = {
  kind: "buttons",
  buttons: Object.values(NASTY_TEXTS)
    .filter((text) => text.length < 500)
    .map((text) => ({ label: text, say: text, aim: { walk: "w<1>", fact: "a&b" } })),
};

/** A card whose every field holds this text. */
export function cardFullOf(text: string): Card {
  const table: TableBlock = { kind: "table", caption: text, columns: [text, text], rows: [[text, text]] };
  return {
    verdict: { kind: "caution", word: text },
    title: text,
    summary: text,
    blocks: [
      { kind: "headline", text },
      ...(["plain", "quiet", "heading", "problem"] as const).map((tone): Block => ({ kind: "text", tone, text })),
      { kind: "rows", heading: text, rows: [{ label: text, value: text, note: text }] },
      table,
      { kind: "caution", severity: "stop", word: text, text, show: text, cites: text },
      { kind: "question", prompt: text, help: text, progress: text },
      { kind: "buttons", buttons: [{ label: text, say: "back" }] },
      {
        kind: "form",
        topic: "circuit",
        title: text,
        submit: text,
        fields: [
          {
            fact: "a",
            label: text,
            help: text,
            required: true,
            value: text,
            problem: text,
            input: { type: "text", placeholder: text },
          },
          {
            fact: "b",
            label: text,
            required: false,
            value: "1",
            input: { type: "choice", options: [{ value: "1", label: text }] },
          },
        ],
      },
      {
        kind: "chart",
        units: "us",
        title: text,
        alt: text,
        labels: { a: text, x: text },
        chart: {
          id: "c",
          xKind: "time",
          series: [{ id: "a", mark: "line", kind: "temperature", x: [0, 1], y: [10, 20] }],
        },
        table,
      },
      { kind: "progress", text, done: 1, total: 3 },
      { kind: "file", file: { hash: "b2".repeat(32), name: text, type: "application/pdf", size_B: 1 }, text },
    ],
  };
}

const big: Card = {
  verdict: { kind: "info", word: "For your information" },
  title: "Everything I can work out",
  summary: "A very long card.",
  blocks: [
    { kind: "headline", text: "A very long card" },
    ...Array.from(
      { length: 60 },
      (_, i): Block => ({ kind: "text", tone: "plain", text: `Paragraph ${i + 1}. `.repeat(20) }),
    ),
    {
      kind: "rows",
      heading: "Many rows",
      rows: Array.from({ length: 45 }, (_, i) => ({ label: `Label ${i + 1}`, value: `${i + 1} gal`, note: "assumed" })),
    },
    {
      kind: "table",
      caption: "A long table",
      columns: ["Model", "Setpoint", "Mode", "Cost a year"],
      rows: Array.from({ length: 150 }, (_, i) => [`Model ${i + 1}`, "130 °F", "heat pump first", `$${100 + i}`]),
    },
    {
      kind: "table",
      caption: "A wide table",
      columns: Array.from({ length: 24 }, (_, i) => `${i} h`),
      rows: [Array.from({ length: 24 }, (_, i) => `${100 + i} °F`)],
    },
    {
      kind: "buttons",
      buttons: Array.from({ length: 30 }, (_, i) => ({ label: `Choice ${i + 1}`, say: `choice ${i + 1}` })),
    },
  ],
};

const bare: Card = { title: "Stopped", summary: "Stopped. Nothing was lost.", blocks: [] };

/** An answer with more than a phone should show at once. */
const details: Card = {
  verdict: { kind: "no", word: "No" },
  title: "Room for a heat pump",
  summary: "No: make the door louvered.",
  blocks: [
    { kind: "headline", text: "Make the door louvered" },
    { kind: "rows", rows: [{ label: "Room at its lowest", value: "37 °F" }] },
    {
      kind: "table",
      caption: "Causes",
      columns: ["Cause", "Likely", ""],
      rows: [
        ["Thermostat or relay stays open", "79 %", "████████░░"],
        ["Something not in the list", "7.8 %", "█░░░░░░░░░"],
      ],
    },
    { kind: "buttons", buttons: [{ label: "Louvered door", say: "room door=louvred" }] },
    { kind: "rows", heading: "More numbers", isDetail: true, rows: [{ label: "Highest humidity", value: "81 %" }] },
    { kind: "text", tone: "heading", text: "How it was counted", isDetail: true },
    { kind: "text", tone: "plain", text: "The room is taken as well mixed.", isDetail: true },
    {
      kind: "table",
      caption: "What to change, the cheapest first",
      isDetail: true,
      columns: ["Change", "Low in the room", "Humidity", "COP", "Electricity a day", "Enough?"],
      rows: [["Low and high grille, 120 in² each", "50 °F", "64 %", "3.05", "4.6 kWh", "Helps, not enough"]],
    },
    {
      kind: "table",
      caption: "The same unit in closed rooms",
      isDetail: true,
      columns: ["Volume", "Low in the room", "COP"],
      rows: [["450 ft³", "45 °F", "2.92"]],
    },
    {
      kind: "rows",
      heading: "Assumed",
      isDetail: true,
      rows: [{ label: "People", value: "3", note: "common practice" }],
    },
    {
      kind: "buttons",
      isDetail: true,
      buttons: [{ label: "Change: People", say: "change people", aim: { walk: "w3", fact: "people" } }],
    },
  ],
};

/** A question with more answers than a phone has room for as buttons. */
const manyAnswers: Card = {
  title: "Find a fault",
  summary: "Which of these comes nearest?",
  blocks: [
    { kind: "question", prompt: "Which of these comes nearest?", progress: "Question 1" },
    {
      kind: "buttons",
      buttons: Array.from({ length: 41 }, (_, index) => ({
        label: `Complaint ${index + 1}, or something very much like it`,
        say: `Complaint ${index + 1}`,
        aim: { walk: "w3", fact: "symptom" },
      })),
    },
    { kind: "buttons", buttons: [{ label: "Stop", say: "stop", aim: { walk: "w3", fact: "symptom" } }] },
  ],
};

export const SAMPLE_CARDS: Readonly<Record<string, Card>> = {
  answer,
  question,
  dayQuestion,
  spanish,
  form,
  chart,
  progress,
  file,
  details,
  manyAnswers,
  refusal,
  problem,
  big,
  bare,
  nastyButtons: { title: "Buttons", summary: "Buttons with odd labels.", blocks: [nastyButtons] },
  ...Object.fromEntries(Object.entries(NASTY_TEXTS).map(([name, text]) => [`nasty-${name}`, cardFullOf(text)])),
};

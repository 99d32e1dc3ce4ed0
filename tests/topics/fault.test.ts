import { describe, expect, test } from "vitest";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { type ConversationState, EMPTY_STATE } from "../../src/conversation/state.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import { askerRecord } from "../../src/faults/topic/asker-record.ts";
import { measuredBefore } from "../../src/faults/topic/measured-before.ts";
import type { Card } from "../../src/messages/card.ts";
import { LANGUAGES, type Language } from "../../src/messages/language.ts";
import type { Quantity } from "../../src/units/quantity-kinds.ts";
import { library, say } from "../support/ask-library.ts";

const books = await loadBooks(new URL("../../seeds", import.meta.url).pathname, library.cautions, library.faults);

interface From {
  readonly language?: Language;
  readonly person?: string;
  readonly state?: ConversationState;
}

/** Says one thing after another and returns the last card, with what is remembered. */
function talk(texts: readonly string[], { language = "en", person = "", state: before = EMPTY_STATE }: From = {}) {
  const record = person === "" ? {} : { record: askerRecord(person, "2026-11-25", books, library.faults) };
  let state = before;
  let card: Card | undefined;
  for (const text of texts) ({ card, state } = say(text, { language, units: "us" }, books, state, record));
  if (card === undefined) throw new Error("nothing was said");
  return { card, state, text: JSON.stringify(card) };
}

const asked = (state: ConversationState) => state.walk?.toAsk[0];
const KNOWN = "unit=integrated age=mid lately=nothing";

describe("from a person's words", () => {
  test.each([
    ["there's no hot water at all", "No hot water anywhere"],
    ["se acaba muy rapido el agua caliente", "Hot water runs out fast"],
    ["fault: breker keeps poping", "Breaker trips"],
  ])("'%s' opens a walk that says what was heard", (words, heard) => {
    const { card, state } = talk([words]);
    expect(state.walk?.topic).toBe("fault");
    expect(JSON.stringify(card.blocks)).toContain(`Heard: ${heard}.`);
  });

  test("words of another topic stay with that topic", () => {
    expect(talk(["mix 135 to 120 with 50 in"]).card.title).toBe("Mixing valve");
  });

  test("when nothing is sure, a few are offered and none of them is an answer too", () => {
    const { card, state } = talk(["fault water is strange and hot sometimes"]);
    expect(asked(state)).toBe("symptom");
    const offered = card.blocks.flatMap((block) => (block.kind === "buttons" ? block.buttons : []));
    expect(offered.length).toBeLessThanOrEqual(6);
    expect(offered.map(({ label }) => label)).toContain("None of these");
  });

  test("somebody who cannot say what is wrong picks from all, or goes on with nothing", () => {
    const all = talk(["fault", "skip"]);
    expect(asked(all.state)).toBe("symptom");
    expect(asked(talk(["skip"], { state: all.state }).state)).toBe("unit");
  });

  test("a further complaint is kept beside the first, and words that say nothing change nothing", () => {
    const more = talk([`fault no hot water ${KNOWN}`, "also the breaker trips"]);
    expect(more.state.walk?.facts["complaint"]?.value).toBe("no hot water; also the breaker trips");
    const lost = talk([`fault no hot water ${KNOWN}`, "purple elephants"]);
    expect(lost.state.walk?.facts["complaint"]?.value).toBe("no hot water");
  });
});

describe("danger", () => {
  test.each(["smells like burning plastic", "got a tingle touching the faucet", "carbon monoxide alarm went off"])(
    "'%s': the stop line stands first, alone with its answer, and is not passed over",
    (words) => {
      const { card, state } = talk([`fault ${words}`]);
      expect(card.blocks[0]).toMatchObject({ kind: "caution", severity: "stop" });
      expect(card.summary.startsWith(card.blocks[0]?.kind === "caution" ? card.blocks[0].text : "?")).toBe(true);
      const again = talk([`fault ${words}`, "skip"]);
      expect(asked(again.state)).toBe(asked(state));
      expect(again.card.blocks[0]).toMatchObject({ kind: "caution", severity: "stop" });
      expect(asked(talk([`fault ${words}`, "done"]).state)).not.toBe(asked(state));
    },
  );

  test("no walk ever asks for a check with a hazard before its precaution was seen to", () => {
    const hazardous = new Set(library.faults.checks.filter(({ hazards }) => hazards.length > 0).map(({ id }) => id));
    let seen = 0;
    for (const symptom of library.faults.symptoms) {
      let last = talk([`fault ${symptom.words.en.phrases[0] ?? ""} ${KNOWN}`], { person: "ebbe" });
      for (let step = 0; step < 8; step += 1) {
        const { state, card } = last;
        const fact = asked(state) ?? "";
        if (fact === "") break;
        if (hazardous.has(fact)) {
          seen += 1;
          expect(state.walk?.facts[`ready_for_${fact}`]?.value, `${symptom.id}: ${fact}`).toBe("done");
        }
        if (fact.startsWith("ready_for_"))
          expect(card.blocks.some((block) => block.kind === "caution" && block.severity === "must")).toBe(true);
        last = talk([/^(ready_for|stop)_/.test(fact) ? "done" : "skip"], { person: "ebbe", state });
      }
    }
    expect(seen).toBeGreaterThan(5);
  }, 60_000);
});

describe("who may", () => {
  const live = new Set(library.faults.checks.filter(({ hazards }) => hazards.includes("live")).map(({ id }) => id));

  test("somebody whose record shows nothing is never sent to live parts, and is told whom to call", () => {
    let last = talk([`fault breaker trips ${KNOWN}`]);
    for (let step = 0; step < 120 && last.state.walk; step += 1) {
      const fact = asked(last.state) ?? "";
      expect(live.has(fact.replace("ready_for_", ""))).toBe(false);
      last = talk([/^(ready_for|stop)_/.test(fact) ? "done" : "skip"], { state: last.state });
    }
    expect(last.state.walk).toBeUndefined();
    expect(last.card.blocks.find(({ kind }) => kind === "headline")).toMatchObject({
      text: expect.stringMatching(/^From here on it takes /),
    });
  }, 60_000);

  test("the record comes from the crew's book: cards that ran out do not count, tools out of calibration neither", () => {
    const ebbe = askerRecord("ebbe", "2026-11-25", books, library.faults);
    expect(String(ebbe["asker_may"]?.value).split(",")).toEqual(["plumber", "qualified", "refrigerant"]);
    const marisol = askerRecord("marisol", "2026-11-25", books, library.faults);
    expect(String(marisol["asker_may"]?.value)).not.toContain("combustion");
    expect(String(marisol["asker_tools"]?.value).split(",")).not.toContain("thermometer");
    expect(askerRecord("nobody", "2026-11-25", books, library.faults)).toEqual({ month: { value: "11", from: "job" } });
  });
});

describe("checks", () => {
  const start = `fault runs out after one shower model=hollin-50 ${KNOWN}`;
  const ohms = [`${start} ready_for_element_resistance=done`];

  test("a reading typed with its unit is judged against what this unit should show", () => {
    const good = "element_resistance_reading=12.7ohm";
    const open = "element_resistance_reading=5000000ohm";
    const share = (reading: string) => {
      const { facts } = runFault(`${ohms[0]} ${reading}`);
      return topShare(facts, "lower_element_open");
    };
    expect(share(open)).toBeGreaterThan(4 * share(good));
  });

  test("not sure says nothing and is not asked again; undo brings the question back as it was", () => {
    const first = talk([start], { person: "ebbe" });
    const fact = asked(first.state);
    const skipped = talk([start, "skip"], { person: "ebbe" });
    expect(asked(skipped.state)).not.toBe(fact);
    expect(skipped.state.walk?.facts["passed_over"]?.value).toBe(fact);
    const undone = talk([start, "skip", "undo"], { person: "ebbe" });
    expect(undone.state.walk).toEqual(first.state.walk);
    expect(undone.card.blocks.filter(({ kind }) => kind === "table")).toEqual(
      first.card.blocks.filter(({ kind }) => kind === "table"),
    );
  });

  test("an answer that hardly goes with an earlier one is pointed out", () => {
    const { text } = talk([`${start} display_reading=blank`, "display_reading=ok"]);
    expect(text).toMatch(/Changed: What the display says|was a slip/);
  });
});

describe("what the job knows of the site", () => {
  const share = (site: string) =>
    topShare(
      runFault(`fault relief valve drips while heating ${KNOWN} stop_relief_discharge=done ${site}`).facts,
      "expansion_unrelieved",
    );

  test("what the start-up measured counts, and each step that is read there is a check of the knowledge", () => {
    const reading = (step: string, quantity: Quantity) =>
      [step, { id: step, quantity, isAccepted: true, by: "Ebbe Tarnowell", at_ms: 0 }] as const;
    const measured = measuredBefore({
      readings: Object.fromEntries([
        reading("line_pressure", { kind: "pressure", value: 760 }),
        reading("handed_over", { kind: "count", value: 1 }),
      ]),
    });
    expect(measured).toEqual({ measured_before: { value: "line_pressure:760", from: "job" } });
    const high = (before: string) =>
      topShare(
        runFault(`fault taps drip at night ${KNOWN} stop_relief_discharge=done${before}`).facts,
        "supply_pressure_high",
      );
    expect(high(" measured_before=line_pressure:760")).toBeGreaterThan(high(""));
    const checks = library.faults.checks.map(({ id }) => id);
    for (const step of ["line_pressure", "precharge", "bond", "supply", "first_rise"]) {
      const value = measuredBefore({
        readings: Object.fromEntries([reading(step, { kind: "count", value: 1 })]),
      })["measured_before"]?.value;
      expect(checks, step).toContain(String(value).split(":")[0]);
    }
  });

  test("of a job that came back, what lasts still counts, and that it had power and heated does not", () => {
    const taken = (step: string) => ({
      status: "called_back" as const,
      readings: {
        [step]: { id: step, quantity: { kind: "count" as const, value: 1 }, isAccepted: true, by: "E", at_ms: 0 },
      },
    });
    expect(measuredBefore(taken("line_pressure"))).toHaveProperty("measured_before.value", "line_pressure:1");
    for (const step of ["supply", "first_rise"]) expect(measuredBefore(taken(step))).toEqual({});
  });

  test("a closed system makes unrelieved expansion likelier", () => {
    expect(share("closed=yes")).toBeGreaterThan(share(""));
  });
});

describe("the end", () => {
  const found = `fault display_code=A1 model=hollin-50 age=mid lately=nothing`;

  test("names cause, remedy, parts, what to prove and to tell, with the precaution before the remedy", () => {
    const { card } = talk([found]);
    const said = card.blocks.flatMap((block) =>
      block.kind === "text" || block.kind === "caution" ? [block.text] : [],
    );
    expect(card.blocks.find(({ kind }) => kind === "headline")).toMatchObject({
      text: expect.stringMatching(/^Dirty filter or coil: \d+ % sure\.$/),
    });
    const place = (start: string) => said.findIndex((text) => text.startsWith(start));
    expect(place("Lock out. ")).toBeGreaterThanOrEqual(0);
    expect(place("Remedy: ")).toBeGreaterThan(place("Lock out. "));
    for (const start of ["Parts: ", "Prove afterwards: ", "Tell the customer: "])
      expect(place(start)).toBeGreaterThan(0);
  });

  test("parts are looked up in the asker's own truck", () => {
    const { card } = talk([found], { person: "ebbe" });
    const table = card.blocks.find((block) => block.kind === "table" && block.caption === "Parts for it");
    expect(table).toMatchObject({ rows: [["filter", expect.any(String)], expect.anything(), expect.anything()] });
    expect(talk([found]).text).not.toContain("Parts for it");
  });

  test("a remedy that did not cure is taken as such, and the reasoning goes on from there", () => {
    const { state } = talk([found, "not_cured_by_dirty_filter=yes"]);
    expect(state.walk?.facts["not_cured_by_dirty_filter"]?.value).toBe(true);
    expect(asked(state)).toBeDefined();
  });

  test("a remedy that cured closes the fault, and says that it counts", () => {
    const { card, state } = talk([found, "cured_by_dirty_filter=yes"]);
    expect(card.verdict?.kind).toBe("good");
    expect(JSON.stringify(card.blocks)).toContain("Closed. It was: dirty filter or coil.");
    expect(state.last?.facts["cured_by_dirty_filter"]?.value).toBe(true);
  });

  test("what this company found before makes it likelier, and without it the shipped shares are back", () => {
    const share = (before: string) =>
      topShare(runFault(`fault frost on the coil ${KNOWN}${before}`).facts, "fan_failed");
    expect(share(" found_before=fan_failed:20")).toBeGreaterThan(1.5 * share(""));
  });

  test("an answer says how often this company found the cause before", () => {
    expect(talk([`${found} found_before=dirty_filter:3`]).text).toContain("found it before, times: 3.");
    expect(talk([found]).text).not.toContain("found it before");
  });

  test("a script is told the next question", () => {
    const { result } = runFault("fault no hot water unit=integrated age=mid lately=nothing");
    expect(result).toMatchObject({ kind: "needs-facts", missing: [expect.any(String)] });
  });
});

test.each(LANGUAGES)("every question and every verdict of the knowledge has its words in %s", (language) => {
  const texts = library.texts[language].topics.get("fault");
  const topic = library.topics.get("fault");
  expect(Object.keys(texts?.facts ?? {}).sort()).toEqual(Object.keys(topic?.facts ?? {}).sort());
  expect(Object.keys(texts?.findings ?? {}).sort()).toEqual(Object.keys(topic?.findings ?? {}).sort());
  for (const [code, sentence] of Object.entries(texts?.findings ?? {})) {
    const data = Object.fromEntries(Object.keys(topic?.findings[code] ?? {}).map((field) => [field, "x"]));
    expect(sentence(data), code).toMatch(/\S/);
    expect(sentence(data), code).not.toMatch(/undefined/);
  }
});

function runFault(request: string) {
  const topic = library.topics.get("fault");
  if (topic === undefined) throw new Error("there is no fault topic");
  const { state, answered } = say(request, { language: "en", units: "us" }, books, EMPTY_STATE);
  const facts = state.walk?.facts ?? answered?.facts ?? {};
  return { ...runTopic(topic, facts, books, library.cautions, () => undefined), facts };
}

function topShare(facts: ReturnType<typeof runFault>["facts"], cause: string): number {
  const guidance = library.topics.get("fault")?.guide?.next(facts, books);
  const tables = guidance?.about ?? [];
  const rows = tables.find(({ id }) => id === "candidates")?.rows ?? [];
  const row = rows.find(([cell]) => typeof cell === "object" && "code" in cell && cell.code === `cause_${cause}`);
  const share = row?.[1];
  if (share !== undefined && typeof share === "object" && "value" in share) return share.value;
  // Found already: the answer names it.
  const result = runTopic(
    library.topics.get("fault") ?? fail(),
    facts,
    books,
    library.cautions,
    () => undefined,
  ).result;
  return result.kind === "answer" && "quantity" in (result.results[0] ?? {}) ? 1 : 0;
}

function fail(): never {
  throw new Error("there is no fault topic");
}

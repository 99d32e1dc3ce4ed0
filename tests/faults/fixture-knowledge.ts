import type { Cause, Check, FaultKnowledge, InLanguages, Level, Symptom } from "../../src/faults/knowledge.ts";

/** A small invented knowledge in which every share can be reckoned by hand. */
const both = <T>(value: T): InLanguages<T> => ({ en: value, es: value });

function symptom(id: string, phrases: readonly string[], stop?: string): Symptom {
  const words = { label: id, ask: `${id}?`, phrases, ...(stop !== undefined && { stop }) };
  return { id, urgency: stop === undefined ? "normal" : "stop", words: both(words) };
}

function cause(id: string, symptoms: Readonly<Record<string, Level>>, over: Partial<Cause> = {}): Cause {
  const words = { label: id, why: "", remedy: "", parts: [], verify: "", tell: "" };
  return {
    id,
    family: "invented",
    appliesTo: ["integrated", "split", "resistance"],
    prior: { new: 1, mid: 1, old: 1 },
    basis: "judgement",
    symptoms,
    repairBy: ["plumber"],
    hazards: [],
    words: both(words),
    ...over,
  };
}

function check(id: string, byCause: Check["byCause"], over: Partial<Check> = {}): Check {
  const outcome = (name: string) => ({ id: name, words: both(name) });
  return {
    id,
    minutes: 5,
    doer: "crew",
    tools: [],
    hazards: [],
    appliesTo: ["integrated", "split", "resistance"],
    outcomes: [outcome("fine"), outcome("bad")],
    usual: { fine: "very_likely", bad: "unlikely" },
    byCause,
    words: both({ label: id, how: "", accept: "" }),
    ...over,
  };
}

const BAD = { fine: "unlikely", bad: "very_likely" } as const;
const ohms = (id: string, share: { readonly from?: number; readonly to?: number }) => ({ id, share, words: both(id) });

export const FIXTURE: FaultKnowledge = {
  symptoms: [
    symptom("tepid", ["the water is only tepid"]),
    symptom("wet_floor", ["there is a puddle on the floor"]),
    symptom("sparks", ["sparks fly from the cover"], "Breaker off. Keep away."),
  ],
  causes: [
    cause("element", { tepid: "very_likely" }, { prior: { new: 1, mid: 2, old: 4 }, repairBy: ["qualified"] }),
    cause("valve", { tepid: "likely", wet_floor: "possible" }),
    cause("tank", { wet_floor: "very_likely" }, { prior: { new: 0.5, mid: 1, old: 5 } }),
    cause("wiring", { sparks: "very_likely", tepid: "possible" }, { repairBy: ["electrician"] }),
    cause("gas_lost", { tepid: "likely" }, { appliesTo: ["integrated", "split"], repairBy: ["refrigerant"] }),
  ],
  checks: [
    check("look", { tank: BAD, valve: { fine: "possible", bad: "likely" } }, { minutes: 2 }),
    check(
      "ohms",
      { element: { open: "very_likely", fine: "unlikely", low: "unlikely" } },
      {
        doer: "qualified",
        tools: ["multimeter"],
        hazards: ["lockout"],
        reading: { quantity: "resistance", expected: "element", error: { share: 0.015, least: 0.2 } },
        outcomes: [ohms("low", { to: 0.8 }), ohms("fine", { from: 0.8, to: 1.2 }), ohms("open", { from: 1.2 })],
        usual: { fine: "very_likely", low: "unlikely", open: "unlikely" },
      },
    ),
    check("amps", { element: BAD, wiring: BAD }, { doer: "qualified", hazards: ["live"] }),
    check("mix", { valve: BAD }, { hazards: ["scald"] }),
    check("split", { gas_lost: BAD }, { appliesTo: ["integrated", "split"], minutes: 15 }),
    check("gauges", { gas_lost: BAD }, { appliesTo: ["integrated", "split"], hazards: ["refrigerant"] }),
  ],
  groups: [
    ["ohms", "amps"],
    ["split", "gauges"],
  ],
};

import { describe, expect, test } from "vitest";
import { runTopic } from "../../src/declaration/run-topic.ts";
import { caution } from "../../src/topics/caution.ts";
import { toBase } from "../../src/units/convert.ts";
import { library } from "../support/ask-library.ts";
import { fixtureBooks } from "../support/fixture-books.ts";
import { startTalk } from "../support/talk.ts";

type Told = Readonly<Record<string, number | string | boolean>>;

function ask(told: Told, books = fixtureBooks) {
  const facts = Object.fromEntries(Object.entries(told).map(([id, value]) => [id, { value, from: "asked" as const }]));
  return runTopic(caution, facts, books, library.cautions, () => undefined);
}
const raised = (told: Told, books = fixtureBooks) => ask(told, books).cautions.map(({ id }) => id);

describe("the answer", () => {
  test("names the codes that were adopted at the place", () => {
    const names = (told: Told) => {
      const { result } = ask(told);
      return result.kind === "answer" ? result.results.map((one) => ("name" in one ? one.name : "")) : [];
    };
    expect(names({})).toEqual(["IPC 2021", "NEC 2023", "IMC 2021"]);
    expect(names({ place: "saltmere" })).toEqual(["UPC 2021", "NEC 2023", "UMC 2021"]);
  });

  test.each([
    [{}, "info", "raises_nothing"],
    [{ softened: true }, "caution", "raises_less"],
    [{ line_pressure: toBase(95, "psi") }, "caution", "raises_must"],
    [{ gas_smell: true }, "no", "raises_stop"],
  ] as const)("to %o is %s, %s", (told, verdict, code) => {
    expect(ask(told).result).toMatchObject({ verdict, headline: { code } });
  });

  test("an unknown model or place is refused with the nearest names", () => {
    expect(ask({ model: "hollin-81" }).result).toMatchObject({
      kind: "out-of-range",
      reason: { code: "unknown_model", data: { nearest: expect.stringContaining("hollin-80") } },
    });
    expect(ask({ place: "ostrowik" }).result).toMatchObject({ reason: { code: "unknown_place" } });
  });

  test("where the books do not say what was adopted, it says so", () => {
    const code = { ...fixtureBooks.code, isAssumed: true as const };
    expect(ask({}, { ...fixtureBooks, code }).result).toMatchObject({ findings: [{ code: "code_assumed" }, {}] });
  });
});

describe("places differ", () => {
  /** Check list: the IPC lets the relief discharge end in the pan, the UPC does not. */
  test("a relief discharge into the pan is raised where the UPC is adopted, and not under the IPC", () => {
    expect(raised({ discharge: "pan" })).not.toContain("relief_discharge_into_pan");
    expect(raised({ discharge: "pan", place: "Saltmere" })).toContain("relief_discharge_into_pan");
  });
});

describe("what silence hides is told", () => {
  const silent = {
    ...fixtureBooks,
    code: {
      ...fixtureBooks.code,
      amendments: [
        {
          caution: "well_water_untested",
          action: "silence",
          because: { en: "the county tests every well", es: "el condado analiza cada pozo" },
          cites: { basis: "invented", document: "County rules", checkedOn: "2026-11-25" },
        },
      ],
    },
  } as const;

  test("a silenced caution is not raised, is counted, and is listed with why", () => {
    const { cautions, silenced, result } = ask({ well: true }, silent);
    expect(cautions).toEqual([]);
    expect(silenced).toMatchObject([
      { id: "well_water_untested", local: { because: { en: "the county tests every well" } } },
    ]);
    expect(result).toMatchObject({ findings: [{ code: "some_silenced" }, { code: "tell_more" }] });
  });

  test("nothing is listed that these facts would not have raised", () => {
    expect(ask({ well: false }, silent).silenced).toEqual([]);
  });
});

test("the guided walk asks six things at most; everything else is told by name", () => {
  const talk = startTalk({ language: "en", units: "us" }, library);
  talk.say("caution");
  expect(talk.state.walk?.toAsk).toEqual(["room", "setpoint", "mixing_valve", "closed", "fuel_appliance", "occupants"]);
});

const BY_NAME: readonly (readonly [id: string, words: string])[] = [
  ["relief_missing_or_plugged", "caution relief plugged"],
  ["pan_drain_missing", "caution attic, pan without a drain"],
  ["condensate_nowhere", "caution condensate runs nowhere"],
  ["flue_may_backdraft", "caution natural draft appliance, house air blown out"],
  ["gas_line_to_cap", "caution replaces gas"],
  ["power_before_water", "caution start-up, tank not full"],
  ["gas_line_open", "caution replaces gas, gas line not capped"],
  ["loop_always_on", "caution loop always on"],
  ["heavy_to_lift", "caution unit weight 220 lb, no lifting gear"],
  ["doorway_too_narrow", "caution model hollin-80, passage 20 in"],
  ["very_hard_water", "caution very hard water"],
];
test.each(BY_NAME)("%s is raised by one line: %s", (id, words) => {
  const talk = startTalk({ language: "en", units: "us" }, library);
  talk.say(words);
  expect(talk.state.shown?.map((one) => one.id) ?? []).toContain(id);
});

/** Ids that only another topic can know, because they rest on what it computes. */
const COMPUTED_ELSEWHERE =
  /^(aluminium_conductor|breaker_|wire_|supply_|voltage_drop|feeder_|hot_velocity|cold_velocity|hot_water_waits|duct_resists|cold_air_on|breathes_|air_side_|sound_at_|relief_discharge_reduced|expansion_tank_cut_off)/;

test("every caution that a person on site can tell the facts of is reached by a fact of this topic", () => {
  const out = new Set(library.cautions.map(({ id }) => id));
  for (const told of everyFactAtItsWorst()) for (const id of raised(told)) out.delete(id);
  expect([...out].filter((id) => !COMPUTED_ELSEWHERE.test(id))).toEqual([]);
});

/** Each fact alone and beside the others that cautions look at together. */
function everyFactAtItsWorst(): readonly Told[] {
  const ends: readonly (readonly [string, readonly (number | string | boolean)[]])[] = Object.entries(
    caution.facts,
  ).map(([id, spec]) => {
    if (spec.type === "flag") return [id, [true, false]];
    if (spec.type === "choice") return [id, spec.options];
    return spec.type === "quantity" ? [id, [spec.min, spec.max]] : [id, []];
  });
  const alone = ends.flatMap(([id, values]) => values.map((value): Told => ({ [id]: value })));
  const beside: readonly Told[] = [
    { model: "hollin-80", tank: 400, passage: 0.3, headroom: 0.01, room_volume: 1, floor_allows: 50, room_low: -10 },
    { place: "saltmere", discharge: "pan", replaces: "gas", shared_flue: true, gas_line: "open" },
    { setpoint: 60, occupants: "frail", mixing_valve: false, fixtures_limited: false, tap: 60 },
    { setpoint: 60, occupants: "frail", mixing_valve: true, fixtures_limited: false, work: "removal" },
    { setpoint: 48, occupants: "frail" },
    { setpoint: 42, occupants: "frail", closed: true, control: "none" },
    { setpoint: 51, closed: true, control: "tank", line_pressure: 500, precharge: 100 },
    { fuel_appliance: "natural_draft", house_air: true, exhaust: "duct_bare", seismic: true, straps: 0, tank: 300 },
    { seismic: true, tank: 500, work: "refrigerant_circuit", refrigerant_work: "without_card" },
    { wet_place: "without_ground_fault", disconnect: false, lockable: false, work: "wiring", locked_out: false },
    { loop: "timer", loop_check: false, loop_return: 40, joint: "direct", other_water: "open", heat_traps: false },
    { unit_mass: 120, tank: 300, floor: "wood", outdoor_lines: "bare", condensate: "pump", pump_float: false },
    { room: "attic", pan: "none", leak_harms: true, permit: true, inspected: false, work: "hand_over" },
    { room: "attic", pan: "no_drain", work: "start_up", fill: "empty", hardness: "very_hard" },
  ];
  return [...alone, ...beside];
}

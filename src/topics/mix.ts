import type {
  Answer,
  FindingOf,
  FindingSpecs,
  NextStep,
  NumberResult,
  OutOfRange,
  Verdict,
} from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { commonFacts } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { numberResult } from "../declaration/number-result.ts";
import { declareTopic } from "../declaration/topic.ts";
import { writeRequest } from "../declaration/write-request.ts";
import { hotShare, MIXING_BALANCE, mixedVolume_L, USABLE_SHARE } from "../physics/mixing.ts";
import { SCALD_SOURCES } from "../physics/scald-table.ts";
import { SCALD_FROM_C, scaldTime_s } from "../physics/scald-time.ts";
import { toBase } from "../units/convert.ts";

const FACTS = {
  setpoint: commonFacts.setpoint,
  wanted: {
    type: "quantity",
    quantity: "temperature",
    min: toBase(60, "F"),
    max: toBase(180, "F"),
    usual: [toBase(105, "F"), toBase(110, "F"), toBase(120, "F")],
  },
  cold: { ...commonFacts.cold, ask: true },
  tank: { ...commonFacts.tank, optional: true, ask: true },
  drawable: {
    type: "quantity",
    quantity: "share",
    min: 0.1,
    max: 1,
    usual: [0.67, 0.7, 0.75, 0.8],
    default: {
      value: 0.7,
      source: USABLE_SHARE,
    },
  },
  mixing_valve: commonFacts.mixing_valve,
} as const satisfies FactSpecs;

const RESULTS = [
  "mix_fraction_hot",
  "mixed_volume",
  "hot_volume",
  "gain_over_unmixed",
  "scald_time_storage",
  "scald_time_tap",
] as const;

const FINDINGS = {
  mixes_volume: { volume: "volume", wanted: "temperature", hot: "volume" },
  mixes: { hot: "share", wanted: "temperature", gain: "share" },
  mixes_nothing: { wanted: "temperature" },
  gain_needs_valve: { gain: "share", setpoint: "temperature" },
  tap_burns: { wanted: "temperature", limit: "temperature" },
  below_scald_table: { wanted: "temperature", lowest: "temperature" },
  children_burn_faster: {},
  fixtures_keep_theirs: {},
  measure_at_tap: { wanted: "temperature" },
  wanted_above_storage: { wanted: "temperature", setpoint: "temperature" },
  cold_above_wanted: { cold: "temperature", wanted: "temperature" },
  step_hotter: { setpoint: "temperature" },
  step_expansion: {},
} as const satisfies FindingSpecs;

type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

/** Highest temperature at a tub or shower. IPC 2021, 412.5. */
const TAP_LIMIT_C = toBase(120, "F");
/** The codes print 120 °F (49 °C): the rounder of the two counts as over, so that 49 °C typed in SI is met. */
const OVER_C = 49;
/** Storage that health guidance asks for, with a mixing valve behind it. */
const HOTTER_C = toBase(140, "F");

export const mix = declareTopic({
  id: "mix",
  work: "short",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  compute: (facts) => refuse(facts) ?? answer(facts),
  site: ({ setpoint_C, wanted_C, tank_L, mixing_valve }) => ({
    storage_C: setpoint_C,
    tap_C: wanted_C,
    ...(tank_L !== undefined && { tank_L }),
    ...(mixing_valve !== undefined && { hasMixingValve: mixing_valve }),
  }),
});

function refuse({ setpoint_C, wanted_C, cold_C }: Facts): OutOfRange<F> | undefined {
  const setpoint = q("temperature", setpoint_C);
  const wanted = q("temperature", wanted_C);
  const cold = q("temperature", cold_C);
  if (wanted_C > setpoint_C) {
    const reason = { code: "wanted_above_storage", data: { wanted, setpoint } } as const;
    return { kind: "out-of-range", fact: "wanted", value: wanted, reason };
  }
  if (cold_C < wanted_C) return undefined;
  return {
    kind: "out-of-range",
    fact: "cold",
    value: cold,
    reason: { code: "cold_above_wanted", data: { cold, wanted } },
  };
}

function answer(facts: Facts): Answer<Id, F> {
  return {
    kind: "answer",
    verdict: judge(facts),
    headline: headline(facts),
    results: [...mixingResults(facts), ...scaldResults(facts)],
    findings: findings(facts),
    next: nextSteps(facts),
  };
}

function judge({ wanted_C, setpoint_C, mixing_valve }: Facts): Verdict {
  if (wanted_C > OVER_C) return "caution";
  return setpoint_C > OVER_C && mixing_valve !== true ? "caution" : "info";
}

/** How much more mixed water a tank gives than the same tank kept at the wanted temperature. */
function gainOf(facts: Facts): number {
  return 1 / hotShare(facts.setpoint_C, facts.cold_C, facts.wanted_C) - 1;
}

function headline(facts: Facts): F {
  const wanted = q("temperature", facts.wanted_C);
  if (facts.setpoint_C === facts.wanted_C) return { code: "mixes_nothing", data: { wanted } };
  if (facts.tank_L === undefined) {
    const hot = q("share", hotShare(facts.setpoint_C, facts.cold_C, facts.wanted_C));
    return { code: "mixes", data: { hot, wanted, gain: q("share", gainOf(facts)) } };
  }
  const hot_L = facts.tank_L * facts.drawable;
  const volume = q("volume", mixedVolume_L(hot_L, facts.setpoint_C, facts.cold_C, facts.wanted_C));
  return { code: "mixes_volume", data: { volume, wanted, hot: q("volume", hot_L) } };
}

function mixingResults(facts: Facts): readonly NumberResult<Id>[] {
  const { setpoint_C, cold_C, wanted_C, tank_L, drawable } = facts;
  const temperatures = {
    t_hot: q("temperature", setpoint_C),
    t_cold: q("temperature", cold_C),
    t_mix: q("temperature", wanted_C),
  };
  const share = q("share", hotShare(setpoint_C, cold_C, wanted_C));
  const gain = q("share", gainOf(facts));
  const fraction = "f = (t_mix − t_cold) / (t_hot − t_cold)";
  const results: NumberResult<Id>[] = [numberResult("mix_fraction_hot", share, fraction, temperatures, MIXING_BALANCE)];
  if (tank_L !== undefined) {
    const V_tank = q("volume", tank_L);
    const V_hot = q("volume", tank_L * drawable);
    const V_mix = q("volume", mixedVolume_L(V_hot.value, setpoint_C, cold_C, wanted_C));
    results.push(
      numberResult("hot_volume", V_hot, "V_hot = V_tank · s", { V_tank, s: q("share", drawable) }, USABLE_SHARE),
      numberResult("mixed_volume", V_mix, "V_mix = V_hot / f", { V_hot, f: share }, MIXING_BALANCE),
    );
  }
  results.push(numberResult("gain_over_unmixed", gain, "1 / f − 1", { f: share }, MIXING_BALANCE));
  return results;
}

function scaldResults({ setpoint_C, wanted_C }: Facts): readonly NumberResult<Id>[] {
  return [...scaldResult("scald_time_storage", setpoint_C), ...scaldResult("scald_time_tap", wanted_C)];
}

function scaldResult(id: "scald_time_storage" | "scald_time_tap", water_C: number): readonly NumberResult<Id>[] {
  const time = scaldTime_s(water_C);
  if (time === undefined) return [];
  const { moritz_henriques, safety_list, hospital_list, university_list, burn_foundation } = SCALD_SOURCES;
  const sources = [moritz_henriques, safety_list, hospital_list, university_list, burn_foundation] as const;
  const shown = numberResult(id, q("time", time.shortest_s), "log τ ~ t", { t: q("temperature", water_C) }, ...sources);
  return [{ ...shown, upTo: time.longest_s }];
}

function findings(facts: Facts): readonly F[] {
  const wanted = q("temperature", facts.wanted_C);
  const found: F[] = [];
  if (facts.setpoint_C > facts.wanted_C && facts.mixing_valve !== true)
    found.push({
      code: "gain_needs_valve",
      data: { gain: q("share", gainOf(facts)), setpoint: q("temperature", facts.setpoint_C) },
    });
  if (facts.wanted_C > OVER_C)
    found.push({ code: "tap_burns", data: { wanted, limit: q("temperature", TAP_LIMIT_C) } });
  if (facts.wanted_C < SCALD_FROM_C)
    found.push({ code: "below_scald_table", data: { wanted, lowest: q("temperature", SCALD_FROM_C) } });
  if (facts.setpoint_C > facts.wanted_C) found.push({ code: "fixtures_keep_theirs", data: {} });
  found.push({ code: "children_burn_faster", data: {} }, { code: "measure_at_tap", data: { wanted } });
  return found;
}

function nextSteps({ setpoint_C, cold_C, wanted_C, tank_L }: Facts): readonly NextStep<F>[] {
  const tank = tank_L === undefined ? undefined : q("volume", tank_L);
  const cold = q("temperature", cold_C);
  const steps: NextStep<F>[] = [];
  if (setpoint_C < HOTTER_C) {
    const setpoint = q("temperature", HOTTER_C);
    const request = writeRequest("mix", {
      setpoint,
      wanted: q("temperature", wanted_C),
      cold,
      tank,
      mixing_valve: true,
    });
    steps.push({ say: { code: "step_hotter", data: { setpoint } }, request });
  }
  const expansion = writeRequest("expansion", { tank, setpoint: q("temperature", setpoint_C), cold });
  steps.push({ say: { code: "step_expansion", data: {} }, request: expansion });
  return steps;
}

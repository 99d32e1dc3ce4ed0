import { type FindingOf, type FindingSpecs, q } from "../declaration/answer.ts";
import { drainFall_m, PREFERRED_SLOPE } from "../physics/air/condensate-drain.ts";
import { toBase } from "../units/convert.ts";
import type { RoomCase } from "./room-case.ts";
import { LAB_DROP, LAB_WALLS_W_m2_K, labDrop } from "./room-lab.ts";
import type { RoomOutcome } from "./room-outcome.ts";
import { SHELLS } from "./room-shell-table.ts";
import { houseMove_Pa, netExhaust_m3_s } from "./room-side.ts";
import { CHILLY_ROOM_C, DAMP } from "./room-verdict.ts";

/** What a room gives cause to say. */
export const ROOM_FINDINGS = {
  counted_for: { outdoor: "temperature", adjoining: "temperature", hot_water: "volume" },
  counted_for_garage: { outdoor: "temperature", hot_water: "volume" },
  well_mixed: {},
  cop_lost: { cop: "ratio", open: "ratio", loss: "share" },
  barred_by_cold: { time: "time" },
  frost_may_grow: { low: "temperature" },
  damp_winter: { humidity: "share" },
  damp_summer: { humidity: "share" },
  volumes_disagree: {},
  lab_differs: { lab: "share", light: "share", insulated: "share" },
  penalty_share: { taken: "energy", made_up: "energy", share: "share" },
  heating_not_touched: {},
  ducts_to_house: { airflow: "airflow", pressure: "house_pressure", make_up: "energy" },
  combustion_with_exhaust: { pressure: "house_pressure" },
  combustion_same_room: {},
  insulate_exhaust: {},
  drain_advice: { fall: "dimension", run: "length" },
  heater_runs: { energy: "energy" },
  generic_sheet: { volume: "volume" },
  sound_assumed: {},
  not_settled: {},
  square_floor: {},
} as const satisfies FindingSpecs;
type Said = FindingOf<typeof ROOM_FINDINGS>;

/** A smaller loss than this is within the model's own noise. */
const WORTH_SAYING = 0.01;
const DRAIN_RUN_m = 3.048;
const J_PER_kWh = 3.6e6;

export interface RoomAsides {
  readonly combustion: boolean | undefined;
  readonly bedroom_m: number | undefined;
}

/** Everything worth saying beside the headline, the most telling first. */
export function sayRoom(known: RoomCase, outcome: RoomOutcome, asides: RoomAsides): readonly Said[] {
  return [
    ...sayCop(outcome),
    ...sayDamp(outcome),
    ...sayHeating(known, outcome),
    ...sayDucts(known, outcome, asides),
    { code: "volumes_disagree", data: {} },
    ...sayLab(known),
    drainAdvice(),
    ...sayBasis(known, outcome, asides),
  ];
}

function sayCop({ winter, open, score }: RoomOutcome): readonly Said[] {
  const { summary, lowest_C, days } = winter;
  const data = { cop: q("ratio", summary.systemCop), open: q("ratio", open.systemCop), loss: q("share", score.loss) };
  const found: Said[] = score.loss > WORTH_SAYING ? [{ code: "cop_lost", data }] : [];
  if (summary.barredByCold_s > 0)
    found.push({ code: "barred_by_cold", data: { time: q("time", summary.barredByCold_s / days) } });
  else if (lowest_C < CHILLY_ROOM_C) found.push({ code: "frost_may_grow", data: { low: q("temperature", lowest_C) } });
  return found;
}

function sayDamp({ winter, summer }: RoomOutcome): readonly Said[] {
  const say = (code: "damp_winter" | "damp_summer", humidity: number): readonly Said[] =>
    humidity > DAMP ? [{ code, data: { humidity: q("share", Math.min(1, humidity)) } }] : [];
  return [...say("damp_winter", winter.highestHumidity), ...say("damp_summer", summer.highestHumidity)];
}

function sayHeating(known: RoomCase, { winter, penalty }: RoomOutcome): readonly Said[] {
  const found: Said[] = [];
  const { taken_kWh, total_kWh } = penalty;
  if (known.where === "garage") found.push({ code: "heating_not_touched", data: {} });
  else if (taken_kWh > 0) {
    const share = q("share", Math.max(0, total_kWh / taken_kWh));
    const data = { taken: q("energy", taken_kWh), made_up: q("energy", Math.max(0, total_kWh)), share };
    found.push({ code: "penalty_share", data });
  }
  const heater_kWh = winter.ledger.heater_J / winter.days / J_PER_kWh;
  if (heater_kWh > 0) found.push({ code: "heater_runs", data: { energy: q("energy", heater_kWh) } });
  return found;
}

function sayDucts(known: RoomCase, { winter, penalty }: RoomOutcome, { combustion }: RoomAsides): readonly Said[] {
  const found: Said[] = [];
  const net_m3_s = netExhaust_m3_s(known, winter.air.airflow_m3_s);
  const pressure = q("house_pressure", Math.abs(houseMove_Pa(net_m3_s)));
  if (net_m3_s !== 0) {
    const airflow = q("airflow", winter.air.airflow_m3_s);
    found.push({ code: "ducts_to_house", data: { airflow, pressure, make_up: q("energy", penalty.makeUp_kWh) } });
  }
  if (combustion === true && net_m3_s > 0) found.push({ code: "combustion_with_exhaust", data: { pressure } });
  else if (combustion === true) found.push({ code: "combustion_same_room", data: {} });
  const { choice } = known.set.ducts;
  if (choice === "exhaust" || choice === "both") found.push({ code: "insulate_exhaust", data: {} });
  return found;
}

/** The laboratory's step on this unit, medium draw pattern, between two walls that it may have had. */
function sayLab({ unit }: RoomCase): readonly Said[] {
  const drop = (walls_W_m2_K: number) => {
    const large = { volume_m3: LAB_FROM_m3, bin: "medium", walls_W_m2_K } as const;
    return q("share", Math.max(0, labDrop(unit, large, LAB_TO_m3)));
  };
  const { light, insulated } = LAB_WALLS_W_m2_K;
  const data = { lab: q("share", LAB_DROP.medium), light: drop(light), insulated: drop(insulated) };
  return [{ code: "lab_differs", data }];
}

const LAB_FROM_m3 = toBase(700, "ft3");
const LAB_TO_m3 = toBase(450, "ft3");

function drainAdvice(): Said {
  const fall = q("dimension", drainFall_m(DRAIN_RUN_m, PREFERRED_SLOPE));
  return { code: "drain_advice", data: { fall, run: q("length", DRAIN_RUN_m) } };
}

/** What all of it was counted for, and what was taken for granted. */
function sayBasis(known: RoomCase, { winter }: RoomOutcome, { bedroom_m }: RoomAsides): readonly Said[] {
  const { outdoor_C, adjoining_C } = known.weather.winter;
  const outdoor = q("temperature", outdoor_C);
  const hot_water = q("volume", winter.summary.hot_L / winter.days);
  const found: Said[] = [
    SHELLS[known.where].mayOpen
      ? { code: "counted_for", data: { outdoor, adjoining: q("temperature", adjoining_C), hot_water } }
      : { code: "counted_for_garage", data: { outdoor, hot_water } },
    { code: "well_mixed", data: {} },
    { code: "square_floor", data: {} },
  ];
  if (known.model === undefined)
    found.push({ code: "generic_sheet", data: { volume: q("volume", known.unit.tank.volume_L) } });
  if (bedroom_m !== undefined && known.model?.sound_dBA === undefined) found.push({ code: "sound_assumed", data: {} });
  if (!winter.isSettled) found.push({ code: "not_settled", data: {} });
  return found;
}

import { type NumberResult, q } from "../declaration/answer.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import { LESS_AIR } from "../physics/air/coil-airflow.ts";
import { condensateVolume_L, DRAIN_SIZE, DRAIN_SLOPE, drainSize_m } from "../physics/air/condensate-drain.ts";
import { DUCT_FRICTION, FLEX_COMPRESSION } from "../physics/air/duct-loss.ts";
import { COMPRESSION_FOUND, FITTING_COEFFICIENTS, ROUGHNESS } from "../physics/air/duct-table.ts";
import { USUAL_STATIC } from "../physics/air/fan.ts";
import { DEPRESSURISATION_LIMITS, LEAKAGE } from "../physics/air/house-pressure.ts";
import { SUPERPOSITION } from "../physics/air/make-up-air.ts";
import { FREE_SHARES, faceArea_m2, ORIFICE } from "../physics/air/openings.ts";
import { HEATER_SOUND, PARTITION_LOSSES, SPREADING } from "../physics/air/sound.ts";
import { STACK } from "../physics/air/stack-flow.ts";
import { ROOM_BALANCE } from "../physics/room/room-balance.ts";
import { areasOf, describeRoom, type RoomCase } from "./room-case.ts";
import type { RoomDay } from "./room-day.ts";
import { freeAreaOf } from "./room-door.ts";
import type { RoomOutcome } from "./room-outcome.ts";
import { GRILLE_EACH_m2 } from "./room-remedies.ts";
import { SHELLS, USUAL_SHELL } from "./room-shell-table.ts";
import { houseMove_Pa, netExhaust_m3_s, soundOutside_dBA, USUAL_HOUSE, USUAL_SOUND_dBA } from "./room-side.ts";
import { COLDEST_ROOM } from "./room-verdict.ts";
import type { AskedVolume } from "./room-volumes.ts";

export const ROOM_RESULTS = [
  "room_volume",
  "required_volume",
  "room_temperature_low",
  "room_temperature_mean",
  "room_temperature_without",
  "humidity",
  "cop_in_room",
  "cop_open_air",
  "running_time",
  "energy_per_day",
  "cooling_rate",
  "heating_penalty",
  "airflow_needed",
  "airflow_left",
  "capacity_left",
  "net_free_area",
  "grille_area",
  "duct_pressure_drop",
  "duct_pressure_available",
  "house_pressure",
  "condensate_per_hour",
  "condensate_per_day",
  "drain_size",
  "sound_at_distance",
] as const;
type RoomId = (typeof ROOM_RESULTS)[number];
type Numbers = readonly NumberResult<RoomId>[];

const TANK_IN_ROOM: Source = {
  basis: "computed",
  document: "Stratified tank and one-zone room, coupled each 1 to 5 minutes; both books closed to 1e-9",
};
const GRILLES_ASKED: Source = {
  basis: "published",
  document: "ENERGY STAR, questions on heat pump water heaters",
  section: "240 in² free area in all, half high and half low",
};

/** Volume, and what sources ask. */
export function volumeResults({ set, ceiling_m }: RoomCase, asked: readonly AskedVolume[]): Numbers {
  const V = q("room_volume", set.volume_m3);
  const floor = q("area", areasOf(set.volume_m3, ceiling_m).floor_m2);
  const [least, ...more] = asked;
  const most = more.at(-1) ?? least;
  const volume = numberResult("room_volume", V, "V = A · h", { A: floor, h: q("length", ceiling_m) }, ROOM_BALANCE);
  if (least === undefined || most === undefined) return [volume];
  const required: NumberResult<RoomId> = {
    id: "required_volume",
    quantity: q("room_volume", least.volume_m3),
    upTo: most.volume_m3,
    how: { equation: "V_min … V_max", inputs: [], sources: [least.source, ...more.map(({ source }) => source)] },
  };
  return [volume, required];
}

/** What the winter day came to. */
export function winterResults(known: RoomCase, outcome: RoomOutcome): Numbers {
  const { winter, still, open } = outcome;
  const { summary, days } = winter;
  const around = surroundingsOf(known);
  const temperature = (id: RoomId, value_C: number, equation: string, ...more: readonly Source[]) =>
    numberResult(id, q("temperature", value_C), equation, around, ROOM_BALANCE, TANK_IN_ROOM, USUAL_SHELL, ...more);
  const E = q("energy", summary.electricity_kWh / days);
  const cop = (id: RoomId, { systemCop, delivered_kWh, electricity_kWh }: RoomDay["summary"]) => {
    const inputs = { E_out: q("energy", delivered_kWh / days), E: q("energy", electricity_kWh / days) };
    return numberResult(id, q("ratio", systemCop), "COP = E_out / E", inputs, TANK_IN_ROOM, known.unit.source);
  };
  const ran = q("time", summary.heatPumpRan_s / days);
  return [
    temperature("room_temperature_low", winter.lowest_C, "min t_room, ΔH = Σ Q", COLDEST_ROOM),
    temperature("room_temperature_mean", winter.mean_C, "mean t_room"),
    temperature("room_temperature_without", still.mean_C, "mean t_room, Q_unit = 0"),
    cop("cop_in_room", summary),
    cop("cop_open_air", open),
    numberResult("running_time", ran, "Σ t(P > 0)", {}, TANK_IN_ROOM),
    numberResult("energy_per_day", E, "E / n", { n: q("count", days) }, TANK_IN_ROOM),
    ...coolingRate(winter),
    ...heatingResult(known, outcome),
  ];
}

/** What the heating of the house makes up; a garage has none to speak of. */
function heatingResult({ where }: RoomCase, { penalty }: RoomOutcome): Numbers {
  if (where === "garage") return [];
  const inputs = { Q_taken: q("energy", penalty.taken_kWh), Q_makeup: q("energy", penalty.makeUp_kWh) };
  const equation = "Q_heated − Q_heated(Q_unit = 0) + Q_makeup";
  const total = q("energy", penalty.total_kWh);
  return [numberResult("heating_penalty", total, equation, inputs, ROOM_BALANCE, SUPERPOSITION)];
}

function coolingRate({ summary }: RoomDay): Numbers {
  const { takenFromAir_kWh, heatPumpRan_s } = summary;
  if (heatPumpRan_s === 0) return [];
  const rate = q("heat_rate", (takenFromAir_kWh * J_PER_kWh) / heatPumpRan_s);
  const inputs = { Q: q("energy", takenFromAir_kWh), t: q("time", heatPumpRan_s) };
  return [numberResult("cooling_rate", rate, "Q / t", inputs, TANK_IN_ROOM)];
}

const J_PER_kWh = 3.6e6;

function surroundingsOf(known: RoomCase) {
  const { adjoining_C, outdoor_C, ground_C } = known.weather.winter;
  const { neighbours, quickMass_J_K } = describeRoom(known, "winter").spec;
  const toward = (id: string) => neighbours.find((one) => one.id === id)?.walls_W_K ?? 0;
  const { mayOpen } = SHELLS[known.where];
  return {
    V: q("room_volume", known.set.volume_m3),
    ...(mayOpen && { t_adjoining: q("temperature", adjoining_C) }),
    t_outdoor: q("temperature", outdoor_C),
    t_ground: q("temperature", ground_C),
    UA_adjoining: q("heat_loss_coefficient", toward("adjoining")),
    UA_house: q("heat_loss_coefficient", toward("house")),
    UA_outdoor: q("heat_loss_coefficient", toward("outdoors")),
    UA_ground: q("heat_loss_coefficient", toward("ground")),
    C_quick: q("energy", quickMass_J_K / J_PER_kWh),
  };
}

/** Water out of the air: the damper of the two days. */
export function waterResults({ heatPump }: RoomCase, { winter, summer }: RoomOutcome): Numbers {
  const highest = Math.min(1, Math.max(winter.highestHumidity, summer.highestHumidity));
  const humidity = numberResult(
    "humidity",
    q("share", highest),
    "max φ_room",
    {
      φ_winter: q("share", Math.min(1, winter.highestHumidity)),
      φ_summer: q("share", Math.min(1, summer.highestHumidity)),
    },
    ROOM_BALANCE,
    TANK_IN_ROOM,
  );
  const wetter = perDay_kg(winter) > perDay_kg(summer) ? winter : summer;
  const perDay_L = condensateVolume_L(perDay_kg(wetter));
  const ran_s = wetter.summary.heatPumpRan_s / wetter.days;
  const inputs = { m: q("mass", perDay_kg(wetter)), t_run: q("time", ran_s), φ: q("share", highest) };
  const cooling_W = heatPump.ratedHeat_W * (1 - 1 / heatPump.ratedCop);
  const Q = q("heat_rate", cooling_W);
  return [
    humidity,
    numberResult("condensate_per_day", q("volume", perDay_L), "V = m / ρ", inputs, TANK_IN_ROOM),
    ...(ran_s > 0
      ? [
          numberResult(
            "condensate_per_hour" as const,
            q("recovery", perDay_L / ran_s),
            "V / t_run",
            inputs,
            TANK_IN_ROOM,
          ),
        ]
      : []),
    numberResult("drain_size", q("dimension", drainSize_m(cooling_W)), "d(Q)", { Q }, DRAIN_SIZE, DRAIN_SLOPE),
  ];
}

function perDay_kg({ summary, days }: RoomDay): number {
  return summary.condensate_kg / days;
}

/** Air for the unit: openings, ducts and what they do to the house. */
export function airResults(known: RoomCase, { winter, ductedShare }: RoomOutcome): Numbers {
  const { set, heatPump, where } = known;
  const { air } = winter;
  const rated = q("airflow", heatPump.airflow_m3_s);
  const free = freeAreaOf(set.door);
  const each_m2 = q("opening_area", GRILLE_EACH_m2);
  const openings: Numbers = SHELLS[where].mayOpen
    ? [
        numberResult("net_free_area", q("opening_area", free), "Σ A_free", {}, ORIFICE, STACK, FREE_SHARES),
        numberResult(
          "grille_area",
          q("opening_area", faceArea_m2(GRILLE_EACH_m2, "metal")),
          "A_face = A_free / 0.75",
          { A_free: each_m2 },
          GRILLES_ASKED,
          FREE_SHARES,
        ),
      ]
    : [];
  const needed = numberResult("airflow_needed", rated, "q_sheet", {}, known.unit.source);
  if (set.ducts.choice === "none") return [needed, ...openings];
  const inputs = {
    q_sheet: rated,
    L: q("length", set.ducts.run_m),
    d: q("dimension", set.ducts.diameter_m),
    Δp_sheet: q("air_pressure", air.ratedDrop_Pa),
  };
  const drop = q("air_pressure", air.ratedDrop_Pa);
  const net_m3_s = netExhaust_m3_s(known, air.airflow_m3_s);
  return [
    needed,
    numberResult("airflow_left", q("airflow", air.airflow_m3_s), "Δp_duct(q) = Δp_fan", inputs, DUCT_FRICTION),
    numberResult("capacity_left", q("share", ductedShare), "Q(q) / Q(q_sheet)", inputs, LESS_AIR),
    numberResult(
      "duct_pressure_drop",
      drop,
      "(f L / d + Σ C) · ρ v² / 2",
      inputs,
      DUCT_FRICTION,
      ROUGHNESS,
      FITTING_COEFFICIENTS,
      FLEX_COMPRESSION,
      COMPRESSION_FOUND,
    ),
    numberResult("duct_pressure_available", q("air_pressure", air.available_Pa), "Δp_fan", {}, USUAL_STATIC),
    numberResult(
      "house_pressure",
      q("house_pressure", houseMove_Pa(net_m3_s)),
      "50 Pa · (q / q_50)^(1 / 0.65)",
      {
        q: q("airflow", Math.abs(net_m3_s)),
        q_50: q("airflow", (USUAL_HOUSE.changes50_per_h * USUAL_HOUSE.volume_m3) / HOUR_s),
      },
      LEAKAGE,
      DEPRESSURISATION_LIMITS,
    ),
    ...openings,
  ];
}

const HOUR_s = 3600;

/** Sound some way off, where somebody said how far. */
export function soundResults(known: RoomCase, bedroom_m: number | undefined): Numbers {
  if (bedroom_m === undefined) return [];
  const level = q("sound", soundOutside_dBA(known, bedroom_m));
  const inputs = { L_sheet: q("sound", known.model?.sound_dBA ?? USUAL_SOUND_dBA), r: q("length", bedroom_m) };
  const equation = "L_w + 10 lg(4 / A) − R + 10 lg(S / A₂) − 20 lg r";
  return [numberResult("sound_at_distance", level, equation, inputs, HEATER_SOUND, SPREADING, PARTITION_LOSSES)];
}

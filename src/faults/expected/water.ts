import { q } from "../../declaration/answer.ts";
import { numberResult } from "../../declaration/number-result.ts";
import type { Source } from "../../declaration/source.ts";
import { BOYLE, expandedVolume_L } from "../../physics/expansion-tank.ts";
import { pressureAfter_kPa } from "../../physics/pressure-rise.ts";
import { IAPWS_IF97 } from "../../physics/water.ts";
import type { QuantityKind } from "../../units/quantity-kinds.ts";
import type { ExpectedFacts, ExpectedReading } from "./known.ts";

/** Where temperature and pressure relief valves of water heaters are set: 150 psi [kPa]. */
const USUAL_RELIEF_kPa = 1034.2;
const USUAL_RELIEF: Source = { basis: "common_practice", document: "Relief valves of water heaters: 150 psi" };
const SITE: Source = { basis: "computed", document: "Measured or recorded at this site" };

/** Line pressure that was recorded; what an expansion tank's air must match. */
export const linePressure = asKnown("line_pressure", "pressure", ({ line_kPa }) => line_kPa);
/** Cold water of the month and place. */
export const coldWater = asKnown("cold_water", "temperature", ({ cold_C }) => cold_C);
/** Flow of the cold at the same tap, which the hot should match. */
export const coldFlow = asKnown("cold_flow", "water_flow", ({ coldFlow_L_s }) => coldFlow_L_s);

/** Rise of pressure from cold to the setpoint with every tap shut; it ends at the relief valve. */
export const pressureRise: ExpectedReading = {
  quantity: "pressure",
  compute: (known) => {
    const { unit, cold_C, setpoint_C, line_kPa, expansion } = known;
    if (unit === undefined || cold_C === undefined || setpoint_C === undefined) return undefined;
    if (line_kPa === undefined || expansion === undefined || setpoint_C < cold_C) return undefined;
    const relief_kPa = known.relief_kPa ?? USUAL_RELIEF_kPa;
    const grown_L = expandedVolume_L(unit.tank.volume_L, cold_C, setpoint_C);
    const after_kPa = Math.min(relief_kPa, pressureWith(known, grown_L, line_kPa));
    const inputs = {
      V: q("volume", unit.tank.volume_L),
      V_grown: q("volume", grown_L),
      p_line: q("pressure", line_kPa),
      p_relief: q("pressure", relief_kPa),
      ...(expansion.kind === "tank" && {
        V_tank: q("volume", expansion.tank_L),
        p_air: q("pressure", expansion.precharge_kPa),
      }),
    };
    const sources = [BOYLE, IAPWS_IF97, ...(known.relief_kPa === undefined ? [USUAL_RELIEF] : [])] as const;
    const equation = "min(P0 / (P0 / max(P0, P1) − V_grown / V_tank), p_relief) − p_line";
    return numberResult(
      "pressure_rise",
      q("pressure", Math.max(0, after_kPa - line_kPa)),
      equation,
      inputs,
      ...sources,
    );
  },
};

/** In a closed system without a tank there is nowhere to go but out at the relief valve. */
function pressureWith({ expansion }: ExpectedFacts, grown_L: number, line_kPa: number): number {
  if (expansion?.kind === "tank")
    return pressureAfter_kPa(expansion.tank_L, expansion.precharge_kPa, line_kPa, grown_L);
  return expansion?.kind === "closed" && grown_L > 0 ? Number.POSITIVE_INFINITY : line_kPa;
}

function asKnown(id: string, kind: QuantityKind, read: (known: ExpectedFacts) => number | undefined): ExpectedReading {
  return {
    quantity: kind,
    compute: (known) => {
      const value = read(known);
      return value === undefined
        ? undefined
        : numberResult(id, q(kind, value), "x = x_site", { x_site: q(kind, value) }, SITE);
    },
  };
}

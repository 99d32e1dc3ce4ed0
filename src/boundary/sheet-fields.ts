import { z } from "zod";
import { parseQuantity } from "../units/parse-quantity.ts";
import type { QuantityKind } from "../units/quantity-kinds.ts";
import { describeUnit, readersUnit } from "../units/unit-table.ts";

/** Names for kinds as a person who fills in a sheet would say them, with an example to copy. */
const EXAMPLES: Partial<Record<QuantityKind, string>> = {
  volume: "46 gal",
  room_volume: "700 cu ft",
  temperature: "122 F",
  temperature_difference: "9 F",
  dimension: "65 in",
  power: "4500 W",
  voltage: "240 V",
  current: "30 A",
  airflow: "210 cfm",
  time: "10 min",
  mass: "200 lb",
  heat_loss_coefficient: "1.5 W/K",
  sound: "49 dBA",
};

/** A quantity as a data sheet prints it, with its unit: "46 gal"; read into the base unit of its kind. */
export function sheetQuantity(kind: QuantityKind) {
  const advice = `write a number with its unit, such as ${exampleOf(kind)}`;
  return z
    .union([z.string(), z.number()], {
      error: ({ input }) => (input === undefined ? `is missing: ${advice}` : advice),
    })
    .transform((written, context) => {
      const parsed = parseQuantity(String(written), kind, { units: "us", decimal: "point" });
      if (parsed.ok && parsed.readAs === undefined) return parsed.value;
      context.addIssue({ code: "custom", message: `"${written}": ${advice}` });
      return z.NEVER;
    });
}

function exampleOf(kind: QuantityKind): string {
  return EXAMPLES[kind] ?? `12 ${describeUnit(readersUnit(kind, "us")).symbol}`;
}

/** A plain number, such as a COP or a coefficient. */
export function sheetNumber(advice: string) {
  return z.number({ error: ({ input }) => (input === undefined ? `is missing: ${advice}` : advice) });
}

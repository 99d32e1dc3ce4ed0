import { z } from "zod";
import type { ElectricityPlan, PriceBook } from "../books/prices.ts";
import { toBase } from "../units/convert.ts";
import { type BookRead, file, read, words } from "./book-schema.ts";
import { sheetNumber } from "./sheet-fields.ts";

const HOURS = Array.from({ length: 24 }, (_, hour) => hour);
const MONTHS = Array.from({ length: 12 }, (_, index) => index + 1);
const price = sheetNumber("write US dollars a kWh, such as 0.16").min(0, "is below zero").max(5, "is above 5");
const period = file({ hours: z.array(z.int().min(0).max(23)).min(1, "name at least one hour, 0 to 23"), price });
const dayPrices = file({ peak: period.exactOptional(), night: period.exactOptional(), other: price });
const day = z.string({ error: "write a day as YYYY-MM-DD" }).regex(/^\d{4}-\d{2}-\d{2}$/, "write a day as YYYY-MM-DD");

const plan = file({
  id: z.string().regex(/^[a-z][a-z0-9-]{0,39}$/, "use small letters, digits and hyphens"),
  name: words("Evening peak"),
  seasons: z
    .array(file({ months: z.array(z.int().min(1).max(12)), weekday: dayPrices, weekend: dayPrices }))
    .superRefine((seasons, context) => {
      for (const month of MONTHS) {
        const times = seasons.filter(({ months }) => months.includes(month)).length;
        if (times !== 1)
          context.addIssue({ code: "custom", message: `month ${month} stands in ${times} seasons, not one` });
      }
    }),
});
const pricesFile = file({
  invented: z.boolean({ error: "write true when everything in this file is invented, else false" }),
  set_on: day,
  electricity: z.array(plan).min(1, "name at least one plan"),
  gas: sheetNumber("write US dollars a therm, such as 1.42").min(0, "is below zero").max(50, "is above 50"),
  emissions: file({
    set_on: day,
    electricity: sheetNumber("write kg of CO2 a kWh, such as 0.37").min(0).max(2),
    gas: sheetNumber("write kg of CO2 a therm, such as 5.3").min(0).max(20),
  }),
  incentives: z.array(
    file({
      id: z.string().regex(/^[a-z][a-z0-9-]{0,39}$/, "use small letters, digits and hyphens"),
      name: words("Utility rebate"),
      amount: sheetNumber("write US dollars").min(0).exactOptional(),
      share: sheetNumber("write a share, such as 0.3").min(0).max(1).exactOptional(),
      limit: sheetNumber("write US dollars").min(0).exactOptional(),
    }),
  ),
});

/** Reads what stands in prices.yaml. */
export function readPrices(contents: unknown): BookRead<{ isInvented: boolean; prices: PriceBook }> {
  return read(pricesFile, contents, ({ invented, set_on, electricity, gas, emissions, incentives }) => {
    const [first, ...others] = electricity.map(shapePlan);
    if (first === undefined) throw new Error("the schema asks for one plan at least");
    return {
      isInvented: invented,
      prices: {
        setOn: set_on,
        electricity: [first, ...others],
        gas_usd_kWh: gas / toBase(1, "therm"),
        emissions: {
          setOn: emissions.set_on,
          electricity_kg_kWh: emissions.electricity,
          gas_kg_kWh: emissions.gas / toBase(1, "therm"),
        },
        incentives: incentives.map(({ id, name, amount, share, limit }) => ({
          id,
          name,
          ...(amount !== undefined && { amount_usd: amount }),
          ...(share !== undefined && { share }),
          ...(limit !== undefined && { limit_usd: limit }),
        })),
      },
    };
  });
}

function shapePlan({ id, name, seasons }: z.infer<typeof plan>): ElectricityPlan {
  const [first, ...others] = seasons.map(({ months, weekday, weekend }) => ({
    months,
    weekday_usd_kWh: hourPrices(weekday),
    weekend_usd_kWh: hourPrices(weekend),
  }));
  if (first === undefined) throw new Error("the schema asks that every month has a season");
  return { id, name, seasons: [first, ...others] };
}

function hourPrices({ peak, night, other }: z.infer<typeof dayPrices>): readonly number[] {
  return HOURS.map((hour) => [peak, night].find((one) => one?.hours.includes(hour))?.price ?? other);
}

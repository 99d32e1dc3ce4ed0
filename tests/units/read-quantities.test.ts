import { describe, expect, test } from "vitest";
import { normaliseText } from "../../src/units/normalise-text.ts";
import type { DecimalMark } from "../../src/units/read-number.ts";
import { readQuantities } from "../../src/units/read-quantity.ts";
import type { QuantityToken } from "../../src/units/written-value.ts";

const read = (typed: string, decimal: DecimalMark = "point") =>
  readQuantities(normaliseText(typed), { decimal, isAlone: false });
const show = ({ text, value }: QuantityToken) => `${text} = ${showValue(value)}`;
function showValue(value: QuantityToken["value"]): string {
  switch (value.form) {
    case "one":
      return `${value.number.value} ${value.unit?.ids[0] ?? "bare"}`;
    case "sum":
      return `${Number(value.total.toFixed(6))} ${value.base}`;
    case "product":
      return value.factors.map(showValue).join(" x ");
    case "unreadable":
      return "?";
  }
}

describe("values in running text", () => {
  test.each([
    {
      typed: "expansion 80 gal tank, 50F cold 140F hot 60 psi",
      found: ["80 gal = 80 gal", "50F = 50 F", "140F = 140 F", "60 psi = 60 psi"],
    },
    { typed: "mix 135 to 120", found: ["135 = 135 bare", "120 = 120 bare"] },
    { typed: "circuit 4500W at 208V 60 ft", found: ["4500W = 4500 W", "208V = 208 V", "60 ft = 60 ft"] },
    { typed: "wait 60 ft of 3/4 pex at 2 gpm", found: ["60 ft = 60 ft", "3/4 = 0.75 bare", "2 gpm = 2 gpm"] },
    { typed: "60 ft 3/4 pex", found: ["60 ft = 60 ft", "3/4 = 0.75 bare"] },
    { typed: "60' 3/4 pex", found: ["60' = 60 ft", "3/4 = 0.75 bare"] },
    {
      typed: "room 7x10x10 ft, door 30x80 in",
      found: ["7x10x10 ft = 7 bare x 10 bare x 10 ft", "30x80 in = 30 bare x 80 in"],
    },
    { typed: "closet 7'6\" x 10'", found: ["7'6\" x 10' = 2.286 m x 10 ft"] },
    { typed: "run is 6’3” and 4 ft", found: ["6'3\" = 1.905 m", "4 ft = 4 ft"] },
    { typed: "it's 120 F, don't touch", found: ["120 F = 120 F"] },
    { typed: "note: the 50's valve", found: ["50 = 50 bare"] },
    { typed: "120-140F, 120/240 V, 12/2 wire", found: ["120-140F = ?", "120/240 V = ?", "12/2 = ?"] },
    { typed: "$0.14/kWh and $1,200 rebate", found: ["$0.14/kWh = 0.14 usd_kWh", "$1,200 = 1200 usd"] },
    { typed: "HX50-2 no 4a7", found: ["4 = 4 bare"] },
    { typed: "80 gal. Then 60 psi.", found: ["80 gal = 80 gal", "60 psi = 60 psi"] },
    { typed: "4people 80gal", found: ["4 = 4 bare", "80gal = 80 gal"] },
    { typed: "-5 °C outside (23 °F)", found: ["-5 °C = -5 C", "23 °F = 23 F"] },
    { typed: "w/ 50 in w/o", found: ["50 in = 50 in"] },
    { typed: "", found: [] },
  ])("$typed", ({ typed, found }) => {
    expect(read(typed).map(show)).toEqual(found);
  });

  test("Spanish with decimal commas", () => {
    expect(read("tanque 300,5 litros a 57,3 °C y 1.000,5 L", "comma").map(show)).toEqual([
      "300,5 litros = 300.5 L",
      "57,3 °C = 57.3 C",
      "1.000,5 L = 1000.5 L",
    ]);
  });
});

test("a token knows its place in the text", () => {
  const text = "tank 80 gal at 140 °F";
  for (const token of read(text)) expect(text.slice(token.start, token.end)).toBe(token.text);
  expect(read(text).map(({ start }) => start)).toEqual([5, 15]);
});

test("a unit that stands apart is marked, because it may be a word: 50 in", () => {
  expect(read("with 50 in")[0]?.unitAt).toEqual({ start: 8, end: 10 });
  expect(read("with 50in")[0]?.unitAt).toBeUndefined();
});

test("feet and inches that stand apart are also two values", () => {
  expect(read("60 ft 1 in")[0]?.apart?.map(show)).toEqual(["60 ft = 60 ft", "1 in = 1 in"]);
  expect(read("60'1\"")[0]?.apart).toBeUndefined();
  expect(read("60 ft - 1 in")[0]?.apart).toBeUndefined();
});

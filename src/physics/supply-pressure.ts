import type { AnswerTable, FindingOf, FindingSpecs } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { toBase } from "../units/convert.ts";
import { LOSSES, type SupplyCase, type SupplyPlan, type SupplyTrial } from "./supply-plan.ts";

/** The fixture that is hardest to reach. */
export const FAR_FIXTURES = [
  "balanced_shower",
  "shower",
  "balanced_tub",
  "lavatory",
  "sink",
  "dishwasher",
  "laundry",
  "hose_bibb",
] as const;
type FarFixture = (typeof FAR_FIXTURES)[number];

/** Flow pressure that a fixture needs [psi]. Source: IPC 2018 Table 604.3, read in a copy. */
const NEEDED_psi: Readonly<Record<FarFixture, number>> = {
  balanced_shower: 20,
  shower: 8,
  balanced_tub: 20,
  lavatory: 8,
  sink: 8,
  dishwasher: 8,
  laundry: 8,
  hose_bibb: 8,
};

/** Flow pressure that a fixture needs [kPa]. Source: IPC 2018 Table 604.3. */
export function countPressure(fixture: FarFixture): number {
  return toBase(NEEDED_psi[fixture], "psi");
}

/** What a row of the pressure table is called. */
export const PRESSURE_ROWS = {
  row_static: {},
  row_residual: {},
  row_regulated: {},
  row_regulator_missing: {},
  row_rise: {},
  row_meter: {},
  row_backflow: {},
  row_softener: {},
  row_heater: {},
  row_valve: {},
  row_main: { size: "word" },
  row_hot: { size: "word" },
  row_left: {},
  row_needed: {},
} as const satisfies FindingSpecs;
type Row = FindingOf<typeof PRESSURE_ROWS>;

/** The pressure from street to far fixture, step by step; what is taken away is negative. */
export function listPressure(known: SupplyCase, plan: SupplyPlan, trial: SupplyTrial): AnswerTable<Row> {
  const row = (code: Exclude<Row["code"], "row_main" | "row_hot">, value_kPa: number) =>
    [{ code, data: {} }, q("pressure", value_kPa)] as const;
  const losses = LOSSES.filter((loss) => known.losses_kPa[loss] > 0);
  return {
    id: "pressure",
    rows: [
      row(`row_${plan.startedFrom}`, plan.start_kPa),
      row("row_rise", -plan.rise_kPa),
      ...losses.map((loss) => row(`row_${loss}`, -known.losses_kPa[loss])),
      [{ code: "row_main", data: { size: `${trial.size} in` } }, q("pressure", -trial.mainFriction_kPa)],
      ...(known.hot_length_m > 0
        ? [[{ code: "row_hot", data: { size: `${trial.hotSize} in` } }, q("pressure", -trial.hotFriction_kPa)] as const]
        : []),
      row("row_left", trial.left_kPa),
      row("row_needed", known.needed_kPa),
    ],
  };
}

import type { CatalogueModel } from "../equipment/catalogue.ts";
import { POLICIES } from "../equipment/policies.ts";
import { toBase } from "../units/convert.ts";
import { type ColdRisk, type ColdRiskCase, findColdRisk } from "./cold-risk.ts";
import { moveToQuietHours } from "./quiet-hours.ts";
import type { SampledDay } from "./sample-day.ts";
import { type SizeCase, VALVE_C } from "./size-case.ts";
import type { RunMode } from "./unit-case.ts";

/** What may be changed when a tank does not serve; everything left out stays as it is. */
export interface Change {
  readonly setpoint_C?: number;
  readonly mixing_valve?: true;
  readonly mode?: RunMode;
  readonly model?: CatalogueModel;
  readonly appliances?: "quiet_hours";
}
/** A change and what the same sampled days came to with it. */
export interface Remedy {
  readonly change: Change;
  readonly risk: ColdRisk;
}

/** Storage that health guidance asks for, with a mixing valve behind it. */
const HOTTER_C = toBase(140, "F");
/** Less than this is no hotter tank [K]. */
const LEAST_STEP_K = 1;
/** Modes from the thriftiest to the strongest. */
const STRENGTH = ["heat_pump_only", "heat_pump_first", "both_together"] as const;
/** A tank this much larger is the next size, not the same size of another make. */
const NEXT_SIZE = 1.05;
const MOST_MODELS = 2;
/** Supplies of the same name differ by less than this. */
const SAME_SUPPLY = 0.06;

/**
 * Changes worth trying, each alone: hotter storage behind a mixing valve, a stronger mode, appliances in quiet hours, the
 * next larger tanks of the catalogue; then hotter storage and the strongest mode together.
 */
export function listChanges(known: SizeCase, catalogue: readonly CatalogueModel[], isQuiet: boolean): Change[] {
  const hotter = hotterStorage(known);
  const modes = strongerModes(known).map((mode): Change => ({ mode }));
  const strongest = modes.at(-1);
  return [
    ...hotter,
    ...modes,
    ...(isQuiet ? [] : [{ appliances: "quiet_hours" } as const]),
    ...largerModels(known, catalogue).map((model): Change => ({ model })),
    ...(hotter[0] && strongest ? [{ ...hotter[0], ...strongest }] : []),
  ];
}

/** Runs the same sampled days with one thing changed. */
export function tryChange(known: SizeCase, sampled: readonly SampledDay[], change: Change): Remedy {
  const days = change.appliances === undefined ? sampled : sampled.map(moveToQuietHours);
  return { change, risk: findColdRisk({ ...changeCase(known, change), sampled: days }) };
}

function changeCase({ run, unit }: SizeCase, change: Change): ColdRiskCase {
  const [step] = run.plan;
  const setpoint_C = change.setpoint_C ?? step.setpoint_C;
  const policy = change.mode === undefined ? step.policy : POLICIES[change.mode];
  const valve_C = change.mixing_valve === undefined ? run.site.mixingValve_C : Math.min(VALVE_C, setpoint_C);
  return {
    ...run,
    unit: change.model?.heater ?? unit,
    site: { ...run.site, ...(valve_C !== undefined && { mixingValve_C: valve_C }) },
    plan: [{ from_s: 0, policy, setpoint_C }],
  };
}

function hotterStorage({ unit, run }: SizeCase): readonly Change[] {
  const setpoint_C = Math.min(HOTTER_C, unit.controls.setpoint_C[1]);
  if (setpoint_C < run.plan[0].setpoint_C + LEAST_STEP_K) return [];
  return [{ setpoint_C, mixing_valve: true }];
}

function strongerModes({ unit, mode }: SizeCase): readonly RunMode[] {
  const present = mode === "elements_only" ? STRENGTH.length - 2 : STRENGTH.indexOf(mode);
  return STRENGTH.slice(present + 1).filter((one) => unit.controls.policies.includes(one));
}

/** Of the next larger sizes that fit supply, mode and setpoint, the cheapest model each. */
function largerModels(known: SizeCase, catalogue: readonly CatalogueModel[]): readonly CatalogueModel[] {
  const fitting = catalogue
    .filter((model) => model.nominal_L > known.nominal_L * NEXT_SIZE && mayReplace(known, model))
    .sort((a, b) => a.nominal_L - b.nominal_L || priceOf(a) - priceOf(b));
  const sizes: CatalogueModel[] = [];
  for (const model of fitting) if (model.nominal_L > (sizes.at(-1)?.nominal_L ?? 0) * NEXT_SIZE) sizes.push(model);
  return sizes.slice(0, MOST_MODELS);
}

function mayReplace({ unit, mode, supply_V, run }: SizeCase, { heater, circuit }: CatalogueModel): boolean {
  const [lowest_C, highest_C] = heater.controls.setpoint_C;
  const { setpoint_C } = run.plan[0];
  return (
    (heater.heatPump === undefined) === (unit.heatPump === undefined) &&
    heater.controls.policies.includes(mode) &&
    circuit.supplies_V.some((made_V) => Math.abs(made_V - supply_V) <= SAME_SUPPLY * made_V) &&
    setpoint_C >= lowest_C &&
    setpoint_C <= highest_C
  );
}

function priceOf({ price }: CatalogueModel): number {
  return price.unit_usd + price.installation_usd;
}

import type { Policy } from "../../equipment/policies.ts";
import type { WaterHeater } from "../../equipment/water-heater.ts";
import { requireWithin } from "../require-within.ts";
import { readSensors } from "./advance.ts";
import { adoptControl, type ControlState, prepareControl } from "./control.ts";
import type { Engine } from "./engine.ts";
import { findPlaces } from "./places.ts";

/** The plan of a run: when which control takes over. Controls that recur are prepared once. */
export interface PlanCourse {
  readonly from_s: Float64Array;
  readonly controls: readonly ControlState[];
  place: number;
  next_s: number;
}

/** Away, a tank may be held cooler than anybody would set it to be drawn from [C]. */
const COOLEST_HOLD_C = 10;

interface Step {
  readonly from_s: number;
  readonly policy: Policy;
  readonly setpoint_C: number;
}

/**
 * Prepares every mode and setpoint of a plan.
 * @throws where the steps are out of order, the first is not at 0, the unit lacks the mode or the setpoint
 */
export function preparePlan(unit: WaterHeater, plan: readonly Step[]): PlanCourse {
  const known = new Map<string, ControlState>();
  let last_s = Number.NEGATIVE_INFINITY;
  const controls = plan.map((step, i) => {
    if (!(step.from_s > last_s) || (i === 0 && step.from_s !== 0))
      throw new RangeError(`plan step ${i + 1} begins at ${step.from_s} s; steps begin at 0 and go forward`);
    last_s = step.from_s;
    const key = `${step.policy.id} ${step.setpoint_C}`;
    const control = known.get(key) ?? checkedControl(unit, step);
    known.set(key, control);
    return control;
  });
  return { from_s: Float64Array.from(plan, (step) => step.from_s), controls, place: 0, next_s: 0 };
}

function checkedControl(unit: WaterHeater, step: Step): ControlState {
  const { policies, setpoint_C } = unit.controls;
  const isOff = step.policy.id === "switched_off";
  if (!isOff && !policies.includes(step.policy.id)) throw new RangeError(`${unit.id} has no mode ${step.policy.id}`);
  const lowest_C = isOff || step.policy.id === "away_hold" ? COOLEST_HOLD_C : setpoint_C[0];
  requireWithin("setpoint [C]", step.setpoint_C, lowest_C, setpoint_C[1]);
  return prepareControl(unit, step.policy, step.setpoint_C);
}

/** Moves on to the step that is due. */
export function followPlan(plan: PlanCourse, engine: Engine): void {
  while (plan.place < plan.controls.length && (plan.from_s[plan.place] ?? 0) <= engine.now_s) {
    const control = plan.controls[plan.place];
    if (control) engine.control = control;
    plan.place += 1;
  }
  plan.next_s = plan.from_s[plan.place] ?? Number.POSITIVE_INFINITY;
  takeOver(engine);
}

/** Changes mode and setpoint at once, outside any plan. */
export function setPolicy(engine: Engine, policy: Policy, setpoint_C: number): void {
  engine.control = prepareControl(engine.unit, policy, setpoint_C);
  takeOver(engine);
}

function takeOver(engine: Engine): void {
  findPlaces(engine.places, engine.tank);
  readSensors(engine);
  adoptControl(engine.control, engine.switches);
  engine.isUndecided = true;
  engine.isMoved = true;
}

import { commonFacts } from "../declaration/common-facts.ts";
import type { FactSpec, FactSpecs } from "../declaration/facts.ts";
import { PASSED_OVER } from "../declaration/topic.ts";
import type { StartupStep } from "./startup-step.ts";
import { STARTUP_STEPS } from "./startup-steps-table.ts";

/** Ids of the facts that belong to a step. */
export const factOfStep = (step: string) => `start_${step}`;
export const whyOfStep = (step: string) => `start_${step}_why`;

const NAMED = { optional: true, byNameOnly: true } as const;
const UNLISTED = { optional: true, unlisted: true, byNameOnly: true } as const;

/** What the steps are judged by. A job knows most of it from its survey. */
const SITE_FACTS = {
  model: { ...commonFacts.model, optional: true },
  setpoint: { ...commonFacts.setpoint, ...NAMED },
  line_pressure: { ...commonFacts.line_pressure, ...NAMED },
  closed: { type: "flag", ...NAMED },
  control: { type: "choice", options: ["none", "tank", "relief_valve"], ...NAMED },
  supply: { ...commonFacts.supply, ...NAMED },
  mode: { ...commonFacts.mode, ...NAMED },
  air: commonFacts.air,
  cold: { type: "quantity", quantity: "temperature", min: commonFacts.cold.min, max: commonFacts.cold.max, ...NAMED },
  place: commonFacts.place,
  /** True: the steps are shown, and nothing is asked. */
  list: { type: "flag", ...NAMED },
  [PASSED_OVER]: { type: "text", ...UNLISTED },
} as const satisfies FactSpecs;

/** The facts of the walk: what it is judged by, then each step with its reason. */
export const STARTUP_FACTS: FactSpecs = {
  ...SITE_FACTS,
  ...Object.fromEntries(STARTUP_STEPS.flatMap(stepFacts)),
};

function stepFacts(step: StartupStep): readonly (readonly [string, FactSpec])[] {
  const { id, reading } = step;
  const fact: FactSpec =
    reading === undefined
      ? { type: "choice", options: ["done", "not_done"], ...UNLISTED }
      : {
          type: "quantity",
          quantity: reading.quantity,
          min: reading.min,
          max: reading.max,
          usual: reading.usual,
          ...UNLISTED,
        };
  // Where a reason is asked for, a new reading may be typed, or that the step is done after all.
  const why: FactSpec = { type: "text", ...UNLISTED, orReading: factOfStep(id) };
  return [[factOfStep(id), fact], ...(mayNeedReason(step) ? [[whyOfStep(id), why] as const] : [])];
}

/** A reading may be out of what is accepted; a step that somebody may be hurt by is not left open without a word. */
export function mayNeedReason({ isCritical, reading }: StartupStep): boolean {
  return isCritical || reading !== undefined;
}

import type { FindingSpecs } from "../declaration/answer.ts";

/** The name of each step as a finding, for topics that list steps without walking them. */
export const STEP_NAMES = {
  step_filled: {},
  step_purged: {},
  step_tight: {},
  step_line_pressure: {},
  step_precharge: {},
  step_relief_free: {},
  step_bond: {},
  step_supply: {},
  step_air_clear: {},
  step_condensate_runs: {},
  step_set_temperature: {},
  step_controls_set: {},
  step_first_rise: {},
  step_outlet_temperature: {},
  step_handed_over: {},
} as const satisfies FindingSpecs;
type StepName = keyof typeof STEP_NAMES;

const CODES = Object.keys(STEP_NAMES);

/** A step by its name, or the word itself where it is none. */
export function nameStep(
  id: string,
): { readonly code: StepName; readonly data: Readonly<Record<never, never>> } | string {
  const code = `step_${id}`;
  return isStepName(code) ? { code, data: {} } : id;
}

function isStepName(code: string): code is StepName {
  return CODES.includes(code);
}

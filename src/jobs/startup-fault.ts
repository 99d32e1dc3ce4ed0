import type { StepState } from "./startup-state.ts";
import type { StartupStep } from "./startup-step.ts";

/** What a reading outside what is accepted is a sign of, by the ids of the fault walk's symptoms. Others are told by the reading alone. */
export const SIGNS: Readonly<Record<string, { readonly low?: string; readonly high?: string }>> = {
  first_rise: { low: "slow_recovery" },
  outlet_temperature: { low: "lukewarm", high: "too_hot" },
};

/** The fault walk for a reading that is not accepted: with the sign that it is, and with what the job holds by itself. */
export function faultOfStep({ id }: StartupStep, state: StepState): string {
  if (state.kind !== "read" || state.accepted === undefined) return "fault";
  const sign = SIGNS[id]?.[state.value < state.accepted.low ? "low" : "high"];
  return sign === undefined ? "fault" : `fault symptom=${sign}`;
}

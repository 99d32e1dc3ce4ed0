import type { FaultCase } from "./case.ts";
import type { Symptom } from "./knowledge.ts";
import type { FaultModel } from "./model.ts";

/**
 * Symptoms whose stop line must be said first, alone, and has not been acknowledged since the complaint was last made.
 * A complaint that was taken back asks for nothing.
 */
export function openStops(model: FaultModel, known: FaultCase): readonly Symptom[] {
  const open = new Map<string, Symptom>();
  for (const step of known.steps) {
    if (step.kind === "acknowledged") open.delete(step.symptom);
    if (step.kind !== "complaint") continue;
    const symptom = model.symptoms.get(step.symptom);
    if (step.isThere && symptom !== undefined && mustStop(symptom)) open.set(symptom.id, symptom);
    else open.delete(step.symptom);
  }
  return [...open.values()];
}

/** True for what is a danger while it is talked about: it is marked so, or it has a stop line. */
export function mustStop({ urgency, words }: Symptom): boolean {
  return urgency === "stop" || words.en.stop !== undefined;
}

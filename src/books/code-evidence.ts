import type { FaultKnowledge, Level } from "../faults/knowledge.ts";
import type { CodePointer } from "./display-codes.ts";

/** What a display code brings into the reasoning, each with how strongly the company's book says so. */
export type CodeEvidence =
  | { readonly kind: "symptom"; readonly symptom: string; readonly level: Level }
  | { readonly kind: "cause"; readonly cause: string; readonly level: Level }
  | { readonly kind: "outcome"; readonly check: string; readonly outcome: string; readonly level: Level };

/**
 * Says what each pointer of a display code points to.
 * @param pointers as the company's book has them
 * @param knowledge symptoms, causes and checks that there are
 * @returns evidence in the order of the book; a pointer to nothing is left out
 */
export function findEvidence(pointers: readonly CodePointer[], knowledge: FaultKnowledge): readonly CodeEvidence[] {
  return pointers.flatMap(({ id, outcome, level }): readonly CodeEvidence[] => {
    if (outcome !== undefined) {
      const check = knowledge.checks.find((one) => one.id === id);
      const isThere = check?.outcomes.some((one) => one.id === outcome) ?? false;
      return isThere ? [{ kind: "outcome", check: id, outcome, level }] : [];
    }
    if (knowledge.causes.some((one) => one.id === id)) return [{ kind: "cause", cause: id, level }];
    return knowledge.symptoms.some((one) => one.id === id) ? [{ kind: "symptom", symptom: id, level }] : [];
  });
}

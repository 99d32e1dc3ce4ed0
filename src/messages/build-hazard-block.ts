import type { Hazard } from "../faults/knowledge.ts";
import type { CautionBlock } from "./card.ts";
import { hazards as en } from "./en/hazards.ts";
import { hazards as es } from "./es/hazards.ts";
import type { Voice } from "./voice.ts";

const HAZARDS = { en, es } as const;

/** What is seen to before a hand goes in. */
export function buildHazardBlock({ common, language }: Voice, hazard: Hazard): CautionBlock {
  const { label, steps } = HAZARDS[language][hazard];
  return {
    kind: "caution",
    severity: "must",
    word: common.beforeThat,
    text: `${label}. ${steps.join(" ")}`,
    cites: `${common.hazardsDecide}.`,
  };
}

/** A danger that is seen to before anything else is said. */
export function buildStopBlock({ common }: Voice, text: string): CautionBlock {
  return { kind: "caution", severity: "stop", word: common.severities.stop, text, cites: `${common.hazardsDecide}.` };
}

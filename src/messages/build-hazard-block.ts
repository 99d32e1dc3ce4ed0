import type { Finding } from "../declaration/answer.ts";
import { HAZARDS as HAZARD_IDS, type Hazard } from "../faults/knowledge.ts";
import type { CautionBlock } from "./card.ts";
import { hazards as en } from "./en/hazards.ts";
import { hazards as es } from "./es/hazards.ts";
import { sayFinding, type TopicVoice, type Voice } from "./voice.ts";

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

const STOP_CODE = "stop_before_";
const HAZARD_CODE = "first_";

/**
 * What a guided topic says must not be done, or must be seen to, before its remedy: shown with the weight of a caution,
 * in its place among the findings.
 * @returns nothing for any other finding
 */
export function buildFindingHazard(voice: TopicVoice, finding: Finding): CautionBlock | undefined {
  if (voice.topic.guide === undefined) return undefined;
  if (finding.code.startsWith(STOP_CODE)) return buildStopBlock(voice, withoutWord(voice, sayFinding(voice, finding)));
  const hazard = HAZARD_IDS.find((id) => finding.code === `${HAZARD_CODE}${id}`);
  return hazard && buildHazardBlock(voice, hazard);
}

/** The block says the word of the severity itself. */
function withoutWord({ common }: Voice, text: string): string {
  const word = `${common.severities.stop}: `;
  return text.startsWith(word) ? text.slice(word.length) : text;
}

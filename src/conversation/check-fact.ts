import type { FactValue } from "../declaration/facts.ts";
import { sayNotWhole, sayOutOfRange } from "../messages/say-problem.ts";
import { factOf, type TopicVoice } from "../messages/voice.ts";

/** What is wrong with a value that was read well but cannot be used, in words; nothing when it can. */
export function refuseValue(voice: TopicVoice, factId: string, value: FactValue): string | undefined {
  const { spec } = factOf(voice, factId);
  if (spec.type !== "quantity" || typeof value !== "number") return undefined;
  const quantity = { kind: spec.quantity, value };
  if (!(value >= spec.min && value <= spec.max))
    return sayOutOfRange(voice, { kind: "out-of-range", fact: factId, value: quantity, min: spec.min, max: spec.max });
  if (spec.whole === true && !Number.isInteger(value)) return sayNotWhole(voice, factId, String(value));
  return undefined;
}

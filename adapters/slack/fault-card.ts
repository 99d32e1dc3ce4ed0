import type { Card } from "../../src/messages/card.ts";
import { common as en } from "../../src/messages/en/common.ts";
import { common as es } from "../../src/messages/es/common.ts";

/**
 * Said when the desk itself failed, in both languages, because who asked is not known then.
 * @param id stands in the log beside the error
 */
export function faultCard(id: string): Card {
  const sentences = [en.fault(id), es.fault(id)];
  return {
    title: `${en.faultTitle} · ${es.faultTitle}`,
    isPrivate: true,
    blocks: sentences.map((text) => ({ kind: "text", tone: "problem", text })),
    summary: sentences.join(" "),
  };
}

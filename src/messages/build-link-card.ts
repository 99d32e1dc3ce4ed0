import { buildNoticeCard } from "./build-notice-card.ts";
import type { Card } from "./card.ts";
import type { CommonTexts } from "./common-texts.ts";

/** Gives the code that joins a person's other app to this one. */
export function buildLinkCodeCard(common: CommonTexts, code: string): Card {
  const spaced = `${code.slice(0, 3)} ${code.slice(3)}`;
  return buildNoticeCard(common.linkTitle, [common.linkCode(spaced), common.linkHow(code)], []);
}

/** Says that two apps are joined. */
export function buildLinkedCard(common: CommonTexts, name: string): Card {
  return buildNoticeCard(
    common.linkTitle,
    [common.linkDone(name)],
    [
      { label: common.resume, say: common.say.resume() },
      { label: common.help, say: common.say.help() },
    ],
  );
}

/** Says why a code was not taken. */
export function buildLinkRefusedCard(common: CommonTexts, why: "unknown" | "too-many"): Card {
  const text = why === "unknown" ? common.linkRefused : common.linkTooMany;
  return buildNoticeCard(common.linkTitle, [text], [], "problem");
}

/** Says that something of ours failed and that nothing was saved. */
export function buildFaultCard(common: CommonTexts, id: string): Card {
  return buildNoticeCard(common.faultTitle, [common.fault(id)], [], "problem");
}

/** Says that work was stopped from outside before it was done. */
export function buildCancelledCard(common: CommonTexts): Card {
  return buildNoticeCard(common.stoppedTitle, [common.cancelled], []);
}

import type { JobEvent } from "../jobs/job.ts";
import { timeOnSite } from "../jobs/time-on-site.ts";
import type { KeptMark } from "../ports/store.ts";
import { sayBriefly } from "./build-caution-blocks.ts";
import { record as en } from "./en/record.ts";
import { record as es } from "./es/record.ts";
import { formatDuration } from "./format-duration.ts";
import { formatDayAndTime, formatMoment } from "./format-moment.ts";
import type { Language } from "./language.ts";
import type { RecordTexts } from "./record-texts.ts";
import type { Voice } from "./voice.ts";

const MS_A_SECOND = 1000;

/** The sentences of both languages about records. */
export const RECORD_TEXTS: Readonly<Record<Language, RecordTexts>> = { en, es };

/** Day and time of a moment where the company is. */
export function sayMoment(voice: Voice, at_ms: number): string {
  return formatMoment(voice.common, at_ms, zoneOf(voice));
}

/** The same with its year. */
export function sayDayAndTime(voice: Voice, at_ms: number): string {
  return formatDayAndTime(voice.common, at_ms, zoneOf(voice));
}

function zoneOf({ books }: Voice): string {
  return books?.company.timeZone ?? "UTC";
}

export function sayByWhen(voice: Voice, { by, at_ms }: { readonly by: string; readonly at_ms: number }): string {
  return RECORD_TEXTS[voice.language].byWhen(by, sayMoment(voice, at_ms));
}

/** How long the crew was at it, over all visits, in words; nothing while none is over. */
export function sayTimeOnSite(voice: Voice, events: readonly JobEvent[]): string | undefined {
  const spent = timeOnSite(events);
  return spent === undefined ? undefined : formatDuration(Math.round(spent.total_ms / MS_A_SECOND), voice.language);
}

/** A caution in the words in which it was shown; where those are no longer known, by its name. */
export function sayMarked(voice: Voice, { caution, shown }: KeptMark): string {
  const isKnown = shown !== undefined && voice.texts.cautions.has(caution);
  return isKnown ? sayBriefly(voice, { id: caution, ...shown }) : caution.replaceAll("_", " ");
}

/** What was done about a caution, by whom and when. */
export function sayMark(voice: Voice, { act, by, because = "", at_ms }: KeptMark): string {
  const { seen, skipped } = RECORD_TEXTS[voice.language];
  const when = sayMoment(voice, at_ms);
  return act === "skipped" ? skipped(by, when, because) : seen(by, when);
}

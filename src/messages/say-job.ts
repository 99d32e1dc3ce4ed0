import type { JobChange, JobEntry, JobEvent } from "../jobs/job.ts";
import type { JobRefusal } from "../jobs/job-rules.ts";
import { effectsOf, rootOf } from "../jobs/project-job.ts";
import type { KeptPost } from "../ports/outbox.ts";
import { buildNoticeCard } from "./build-notice-card.ts";
import type { Card } from "./card.ts";
import { JOB_TEXTS, labelOfKept, labelOfStep, nameOf } from "./job-labels.ts";
import type { Language } from "./language.ts";
import { HISTORY_TEXTS, itemNamed, sayChange } from "./say-change.ts";
import type { Voice } from "./voice.ts";

export { JOB_TEXTS };

/** Why a change to a job is not made, with what can be done instead. */
export function sayJobRefusal(language: Language, refusal: JobRefusal): string {
  const { statuses, roles, changes, refusals } = JOB_TEXTS[language];
  switch (refusal.code) {
    case "unknown_job":
    case "number_taken":
      return refusals[refusal.code](refusal.job);
    case "not_in_this_status":
      return refusals.not_in_this_status(statuses[refusal.status], changes[refusal.asked]);
    case "not_your_role":
      return refusals.not_your_role(list(refusal.roles.map((role) => roles[role])));
    case "no_such_step":
      return refusals.no_such_step(
        statuses[refusal.from],
        statuses[refusal.to],
        list(refusal.next.map((next) => statuses[next])),
      );
    case "says_why":
      return refusals.says_why(statuses[refusal.to]);
    case "items_left":
      return refusals.items_left(list(refusal.items));
    case "customer_too_much":
    case "no_item_left":
      return refusals[refusal.code];
    case "reading_unexplained":
      return refusals.reading_unexplained(list(refusal.readings));
    case "unknown_item":
      return refusals.unknown_item(refusal.item, list(refusal.open));
    case "unknown_event":
    case "other_kind":
      return refusals[refusal.code](String(refusal.event));
    case "not_your_event":
      return refusals.not_your_event(refusal.by);
  }
}

/** The same card with a note that it may have been posted before. */
export function noteRepeat(card: Card, language: Language): Card {
  const note = JOB_TEXTS[language].mayRepeat;
  return { ...card, blocks: [{ kind: "text", tone: "quiet", text: note }, ...card.blocks] };
}

/** Tells the owner what could not be posted; nothing where all was. */
export function buildLostPostsCard(language: Language, lost: readonly KeptPost[]): Card | undefined {
  const texts = JOB_TEXTS[language];
  const [first, ...others] = lost.map(({ post, because = "" }) =>
    texts.lostPost(post.card.title, `${post.channel.door} ${post.channel.id}`, because),
  );
  return first === undefined ? undefined : buildNoticeCard(texts.lostPostsTitle, [first, ...others], [], "problem");
}

/**
 * What a message wrote into jobs, a line each, as it stands under the card. Openings are what the card itself says.
 * @param events of the jobs of which it can be said what stood before
 */
export function sayWritten(voice: Voice, entries: readonly JobEntry[], events: readonly JobEvent[]): readonly string[] {
  const texts = JOB_TEXTS[voice.language];
  return entries.flatMap(({ job, change, amends }): readonly string[] => {
    const before = amends === undefined ? undefined : standingBefore(events, job, amends);
    if (before !== undefined) return sayAmendment(voice, change, String(amends), before, events);
    switch (change.kind) {
      case "withdrawn":
        return [texts.withdrawnIn(job, String(amends ?? ""))];
      case "facts":
        return [
          texts.savedFacts(job, list(Object.keys(change.facts).map((fact) => labelOfKept(voice, change.topic, fact)))),
        ];
      case "reading":
        return [texts.savedReading(job, labelOfStep(voice, change.reading.id))];
      case "status":
        return [texts.savedStatus(job, texts.statuses[change.status])];
      case "item_opened":
        return [
          texts.savedItem(labelOfStep(voice, change.item.what), nameOf(voice, change.item.owner), change.item.due),
        ];
      case "item_closed":
        return [texts.closedItem(itemNamed(voice, change.item, events))];
      case "parts":
        return [texts.savedParts(job, String(Object.keys(change.parts).length))];
      case "file":
        return [texts.savedFile(job, change.file.name)];
      case "trail":
        return [texts.savedTrail(job)];
      case "note":
        return [texts.savedNote(job)];
      case "unit":
      case "permit":
        return [`${texts.savedIn(job)} ${sayChange(voice, change, events)}.`];
      case "planned":
        return [texts.savedPlan(job, change.day, list(change.people.map((person) => nameOf(voice, person))))];
      default:
        return [];
    }
  });
}

/** What stood and what stands now; the first entry and the newest amendment of it are one. */
function sayAmendment(
  voice: Voice,
  change: JobChange,
  entry: string,
  before: JobChange,
  events: readonly JobEvent[],
): readonly string[] {
  const texts = HISTORY_TEXTS[voice.language];
  const was = sayChange(voice, before, events);
  if (change.kind === "withdrawn") return [texts.wasTakenBack(entry, was)];
  return [texts.was(entry, was), texts.is(entry, sayChange(voice, change, events))];
}

function standingBefore(events: readonly JobEvent[], job: string, amends: number): JobChange | undefined {
  const own = events.filter((event) => event.job === job);
  return effectsOf(own).find(({ number }) => number === rootOf(own, amends))?.change;
}

function list(words: readonly string[]): string {
  return words.join(", ");
}

import { q } from "../declaration/answer.ts";
import type { JobChange, JobEvent, JobReading } from "../jobs/job.ts";
import { effectsOf } from "../jobs/project-job.ts";
import { NOT_JUDGED } from "../jobs/startup-state.ts";
import { jobHistory as en } from "./en/job-history.ts";
import { jobHistory as es } from "./es/job-history.ts";
import type { HistoryTexts } from "./history-texts.ts";
import { JOB_TEXTS, labelOfKept, labelOfStep, nameOf, showKept } from "./job-labels.ts";
import type { Language } from "./language.ts";
import { showQuantity, type Voice } from "./voice.ts";

/** The sentences of both languages about what happened to a job. */
export const HISTORY_TEXTS: Readonly<Record<Language, HistoryTexts>> = { en, es };

/**
 * What one entry of a job says, in a few words.
 * @param events all of the job, where an item is named by what was to be done
 */
export function sayChange(voice: Voice, change: JobChange, events: readonly JobEvent[] = []): string {
  const { said } = HISTORY_TEXTS[voice.language];
  switch (change.kind) {
    case "opened":
      return said.opened(change.customer, change.place, change.day);
    case "planned":
      return said.planned(change.day, change.people.map((person) => nameOf(voice, person)).join(", "));
    case "unit":
      return said.unit(voice.books?.catalogue.find(({ id }) => id === change.model)?.name ?? change.model);
    case "permit":
      return said.permit(change.permit);
    case "status":
      return said.status(JOB_TEXTS[voice.language].statuses[change.status], change.because);
    case "facts":
      return said.facts(sayFacts(voice, change.topic, change.facts));
    case "reading":
      return said.reading(
        labelOfStep(voice, change.reading.id),
        showQuantity(voice, change.reading.quantity),
        sayStands(voice, change.reading),
      );
    case "item_opened":
      return said.item_opened(labelOfStep(voice, change.item.what), nameOf(voice, change.item.owner), change.item.due);
    case "item_closed":
      return said.item_closed(itemNamed(voice, change.item, events));
    case "file":
      return said.file(change.file.name);
    case "parts":
      return said.parts(sayParts(voice, change.parts));
    case "note":
      return said.note(change.text);
    case "trail":
      return said.trail(change.text);
    case "withdrawn":
      return said.withdrawn(change.because);
  }
}

/** An item by what was to be done, as it was put last. */
export function itemNamed(voice: Voice, id: string, events: readonly JobEvent[]): string {
  const told = effectsOf(events).findLast(({ change }) => change.kind === "item_opened" && change.item.id === id);
  return labelOfStep(voice, told?.change.kind === "item_opened" ? told.change.item.what : id);
}

/** Whether a reading is accepted, as it stands in tables and lists. */
export function sayStands(
  voice: Voice,
  { isAccepted, because = "" }: Pick<JobReading, "isAccepted" | "because">,
): string {
  const { record } = JOB_TEXTS[voice.language];
  if (because === NOT_JUDGED) return record.notJudged;
  return isAccepted ? record.accepted : record.notAccepted(because);
}

/** Parts with how much of each: pieces, or a length of what is cut. */
export function sayParts(voice: Voice, parts: Readonly<Record<string, number>>): string {
  return Object.entries(parts)
    .map(([id, amount]) => {
      const part = voice.books?.crew.parts.find((one) => one.id === id);
      const much = part?.measure === "length" ? showQuantity(voice, q("length", amount)) : String(amount);
      return `${much} × ${part?.name[voice.language] ?? id}`;
    })
    .join(", ");
}

function sayFacts(voice: Voice, topic: string, facts: Extract<JobChange, { readonly kind: "facts" }>["facts"]): string {
  return Object.entries(facts)
    .map(([id, value]) => `${labelOfKept(voice, topic, id)}: ${showKept(voice, topic, id, value)}`)
    .join("; ");
}

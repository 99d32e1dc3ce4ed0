import { describeHistory, type HistoryLine } from "../jobs/describe-history.ts";
import type { JobChange, JobEvent, JobReading } from "../jobs/job.ts";
import { rowsUnder, standsAs } from "./build-job-blocks.ts";
import type { Row, RowsBlock } from "./card.ts";
import { JOB_TEXTS, labelOfKept, labelOfStep, nameOf, showKept } from "./job-labels.ts";
import { RECORD_TEXTS, sayByWhen } from "./record-words.ts";
import { showQuantity, type Voice } from "./voice.ts";

/** Everything that happened to a job, newest first; what was put right stays, and says so. */
export function buildHistory(voice: Voice, events: readonly JobEvent[]): readonly RowsBlock[] {
  const texts = RECORD_TEXTS[voice.language];
  const rows = describeHistory(events).map((line): Row => {
    const note = [sayByWhen(voice, line), ...sayAmendment(voice, line)].join("; ");
    return { label: texts.historyEntry(String(line.number)), value: sayChange(voice, line.change), note };
  });
  return rowsUnder(texts.history, rows);
}

function sayAmendment(voice: Voice, { amends, amendedBy }: HistoryLine): readonly string[] {
  const texts = RECORD_TEXTS[voice.language];
  return [
    ...(amends === undefined ? [] : [texts.putsRight(String(amends.number))]),
    ...(amendedBy === undefined ? [] : [texts.putRight(String(amendedBy))]),
  ];
}

/** A change of a job as one sentence. */
export function sayChange(voice: Voice, change: JobChange): string {
  const { changes } = RECORD_TEXTS[voice.language];
  switch (change.kind) {
    case "opened":
      return changes.opened(change.customer, change.place);
    case "planned":
      return changes.planned(change.day, list(change.people.map((person) => nameOf(voice, person))));
    case "unit":
      return changes.unit(voice.books?.catalogue.find(({ id }) => id === change.model)?.name ?? change.model);
    case "permit":
      return changes.permit(change.permit);
    case "status":
      return changes.status(JOB_TEXTS[voice.language].statuses[change.status], change.because ?? "");
    case "facts":
      return changes.facts(list(Object.entries(change.facts).map((entry) => sayFact(voice, change.topic, entry))));
    case "reading":
      return sayReading(voice, change.reading);
    case "item_opened":
      return changes.item_opened(
        labelOfStep(voice, change.item.what),
        nameOf(voice, change.item.owner),
        change.item.due,
      );
    case "item_closed":
      return changes.item_closed(labelOfStep(voice, change.item));
    case "file":
      return changes.file(change.file.name);
    case "parts":
      return changes.parts(list(Object.entries(change.parts).map((entry) => sayPart(voice, entry))));
    case "note":
    case "trail":
      return changes[change.kind](change.text);
    case "withdrawn":
      return changes.withdrawn(change.because ?? "");
  }
}

function sayFact(voice: Voice, topic: string, [id, value]: readonly [string, string | number | boolean]): string {
  return `${labelOfKept(voice, topic, id)} ${showKept(voice, topic, id, value)}`;
}

function sayReading(voice: Voice, reading: Omit<JobReading, "by" | "at_ms">): string {
  const what = labelOfStep(voice, reading.id);
  return RECORD_TEXTS[voice.language].changes.reading(
    what,
    showQuantity(voice, reading.quantity),
    standsAs(voice, reading),
  );
}

function sayPart(voice: Voice, [id, amount]: readonly [string, number]): string {
  const part = voice.books?.crew.parts.find((one) => one.id === id);
  const much = part?.measure === "length" ? showQuantity(voice, { kind: "length", value: amount }) : String(amount);
  return `${much} × ${part?.name[voice.language] ?? id}`;
}

function list(words: readonly string[]): string {
  return words.join(", ");
}

import { describeHistory, type HistoryLine } from "../jobs/describe-history.ts";
import type { JobEvent } from "../jobs/job.ts";
import type { Block, Row } from "./card.ts";
import { formatMoment } from "./format-moment.ts";
import { HISTORY_TEXTS, sayChange } from "./say-change.ts";
import type { Voice } from "./voice.ts";

/** Entries that stand open; a phone shows them on two screens. */
const MOST_OPEN = 8;

/**
 * Everything that happened to a job, newest last: who, when where the company is, at which door, and what; what no longer
 * counts says so. The older ones are folded.
 * @param events all of one job, oldest first
 */
export function buildHistoryBlocks(voice: Voice, events: readonly JobEvent[]): readonly Block[] {
  const texts = HISTORY_TEXTS[voice.language];
  const lines = describeHistory(events).toReversed();
  const rows = lines.map((line) => toRow(voice, line, lines, events));
  const [earlier, newest] = [rows.slice(0, -MOST_OPEN), rows.slice(-MOST_OPEN)];
  return [
    { kind: "rows", heading: texts.heading, rows: newest },
    ...(earlier.length === 0
      ? []
      : [
          {
            kind: "rows" as const,
            heading: texts.earlier(String(earlier.length)),
            rows: earlier,
            isDetail: true as const,
          },
        ]),
  ];
}

function toRow(voice: Voice, line: HistoryLine, lines: readonly HistoryLine[], events: readonly JobEvent[]): Row {
  const texts = HISTORY_TEXTS[voice.language];
  const { number, at_ms, by, door, change, amends, amendedBy } = line;
  const notes = [
    ...(amends === undefined ? [] : [texts.putsRight(String(amends.number))]),
    ...(amendedBy === undefined ? [] : [sayAmended(voice, amendedBy, lines)]),
  ];
  return {
    label: String(number),
    value: texts.entry(sayMoment(voice, at_ms), by, texts.doors[door], sayChange(voice, change, events)),
    ...(notes.length > 0 && { note: notes.join("; ") }),
  };
}

function sayAmended({ language }: Voice, by: number, lines: readonly HistoryLine[]): string {
  const texts = HISTORY_TEXTS[language];
  const isTakenBack = lines.find(({ number }) => number === by)?.change.kind === "withdrawn";
  return isTakenBack ? texts.takenBackBy(String(by)) : texts.putRightBy(String(by));
}

/** The moment by the company's clocks, with its year where it is not this one. */
function sayMoment({ common, books }: Voice, at_ms: number): string {
  const timeZone = books?.company.timeZone ?? "UTC";
  const moment = formatMoment(common, at_ms, timeZone);
  const year = new Intl.DateTimeFormat("en-US", { timeZone, year: "numeric" }).format(at_ms);
  return books?.today?.startsWith(year) === true ? moment : `${moment} ${year}`;
}

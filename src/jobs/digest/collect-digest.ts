import type { Books } from "../../books/books.ts";
import { addDays } from "../../crew/days.ts";
import { type Lapse, lapsesOf } from "../../crew/validity.ts";
import type { OpenItem } from "../job.ts";
import { compareReadings, type StepFigure } from "./measured.ts";
import { timeOnSite_s } from "./on-site.ts";
import { type Bounds, boundsOf, isWithin, type Period } from "./period.ts";
import { type CallBack, type Closing, openItemsAt, type Story, tellStories } from "./story.ts";

export interface Finished {
  readonly story: Story;
  readonly closing: Closing;
}
export interface LeftOpen {
  readonly story: Story;
  readonly item: OpenItem;
  readonly isOverdue: boolean;
}
export interface CalledBack {
  readonly story: Story;
  readonly callBack: CallBack;
}
export interface OnSite {
  readonly story: Story;
  readonly time_s: number;
}
export interface PartUsed {
  readonly part: string;
  /** Pieces, or metres of what is cut to length. */
  readonly amount: number;
  readonly stories: readonly Story[];
}
/** Everything that a digest counts, each figure with the jobs that it was counted from. */
export interface Digest {
  readonly period: Period;
  /** The day from which things are overdue or lapse: the last of the period, or today where it is not over. */
  readonly asOf: string;
  readonly finished: readonly Finished[];
  readonly opened: readonly Story[];
  readonly cancelled: readonly Story[];
  /** Left at the end of the period, the most urgent first. */
  readonly items: readonly LeftOpen[];
  readonly callBacks: readonly CalledBack[];
  /** Jobs closed for the first time in the 90 days up to the end of the period, and which of them came back. */
  readonly recent: { readonly finished: readonly Story[]; readonly cameBack: readonly Story[] };
  /** Jobs closed for the first time in the period. */
  readonly firstClosed: readonly Finished[];
  readonly steps: readonly StepFigure[];
  readonly onSite: readonly OnSite[];
  readonly lapses: readonly Lapse[];
  /** Parts used, those of the most jobs first. */
  readonly parts: readonly PartUsed[];
}

/** How far back call-backs are set against finished jobs [days]; common practice of the house. */
export const LOOK_BACK_days = 90;

/**
 * Counts a period of the company's calendar from its records.
 * @param today the day on which it is counted; what comes after it has not happened
 */
export function collectDigest(books: Books, period: Period, today: string): Digest {
  const { timeZone } = books.company;
  const stories = tellStories(books);
  const bounds = boundsOf(period, timeZone);
  const asOf = period.to < today ? period.to : today;
  const closed = stories.flatMap((story) => story.closings.map((closing) => ({ story, closing })));
  const back = boundsOf({ from: addDays(period.to, 1 - LOOK_BACK_days), to: period.to }, timeZone);
  const recent = stories.filter(({ closings: [first] }) => first !== undefined && isWithin(back, first.at_ms));
  return {
    period,
    asOf,
    finished: lastOfEach(closed.filter(({ closing }) => isWithin(bounds, closing.at_ms))),
    opened: stories.filter(({ job }) => isWithin(bounds, job.openedAt_ms)),
    cancelled: stories.filter((story) => isCancelledIn(story, bounds)),
    items: leftOpen(stories, bounds, asOf),
    callBacks: stories.flatMap((story) =>
      story.callBacks.filter(({ at_ms }) => isWithin(bounds, at_ms)).map((callBack) => ({ story, callBack })),
    ),
    recent: { finished: recent, cameBack: recent.filter((story) => cameBackBy(story, bounds.until_ms)) },
    firstClosed: stories.flatMap((story) => {
      const [closing] = story.closings;
      return closing !== undefined && isWithin(bounds, closing.at_ms) ? [{ story, closing }] : [];
    }),
    steps: compareReadings(stories, bounds),
    onSite: stories
      .map((story) => ({ story, time_s: timeOnSite_s(story, bounds, timeZone) }))
      .filter(({ time_s }) => time_s > 0),
    lapses: books.crew.members.flatMap((member) => lapsesOf(member, asOf)).sort((a, b) => a.in_days - b.in_days),
    parts: partsUsed(stories, bounds),
  };
}

/** A job that was closed twice in a period counts once, as it was closed last. */
function lastOfEach(closed: readonly Finished[]): readonly Finished[] {
  return closed.filter(({ story }, at) => closed.findLastIndex((other) => other.story === story) === at);
}

function isCancelledIn({ effects }: Story, bounds: Bounds): boolean {
  const said = effects.filter(({ change, at_ms }) => change.kind === "status" && isWithin(bounds, at_ms)).at(-1);
  return said?.change.kind === "status" && said.change.status === "cancelled";
}

function cameBackBy({ closings: [first], callBacks }: Story, until_ms: number): boolean {
  return callBacks.some(({ at_ms }) => first !== undefined && at_ms > first.at_ms && at_ms < until_ms);
}

function leftOpen(stories: readonly Story[], { until_ms }: Bounds, asOf: string): readonly LeftOpen[] {
  return stories
    .flatMap((story) => openItemsAt(story, until_ms).map((item) => ({ story, item, isOverdue: item.due < asOf })))
    .sort((a, b) => a.item.due.localeCompare(b.item.due));
}

function partsUsed(stories: readonly Story[], bounds: Bounds): readonly PartUsed[] {
  const used = new Map<string, { amount: number; stories: Set<Story> }>();
  for (const story of stories)
    for (const { change, at_ms } of story.effects) {
      if (change.kind !== "parts" || !isWithin(bounds, at_ms)) continue;
      for (const [part, amount] of Object.entries(change.parts)) {
        const known = used.get(part) ?? { amount: 0, stories: new Set() };
        used.set(part, { amount: known.amount + amount, stories: known.stories.add(story) });
      }
    }
  return [...used]
    .map(([part, { amount, stories: of }]) => ({ part, amount, stories: [...of] }))
    .sort((a, b) => b.stories.length - a.stories.length || b.amount - a.amount || a.part.localeCompare(b.part));
}

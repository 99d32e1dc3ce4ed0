import type { Books } from "../../books/books.ts";
import { type FindingOf, type FindingSpecs, type NumberResult, q } from "../../declaration/answer.ts";
import { numberResult } from "../../declaration/number-result.ts";
import type { Source } from "../../declaration/source.ts";
import type { Quantity } from "../../units/quantity-kinds.ts";
import { type Digest, LOOK_BACK_days } from "./collect-digest.ts";
import { ENOUGH_FOR_A_SHARE, shareOf } from "./share.ts";
import type { Figure } from "./who-sees.ts";

export const DIGEST_NUMBERS = [
  "finished",
  "open_items",
  "overdue",
  "callbacks",
  "opened",
  "cancelled",
  "first_visit",
  "not_accepted",
  "on_site",
  "lapses_30",
  "lapses_60",
  "lapses_90",
] as const;
export type DigestNumber = (typeof DIGEST_NUMBERS)[number];

export const DIGEST_SHARES = {
  first_visits: { some: "count", all: "count" },
  came_back_rate: { some: "count", all: "count", days: "count" },
  share_is: { share: "share", low: "share", high: "share" },
  few_for_share: { enough: "count" },
} as const satisfies FindingSpecs;
export type DigestShare = FindingOf<typeof DIGEST_SHARES>;

/** Which figure each number belongs to, so that who sees the one sees the other. */
export const FIGURE_OF: Readonly<Record<DigestNumber, Figure>> = {
  finished: "finished",
  open_items: "open_items",
  overdue: "overdue",
  callbacks: "callbacks",
  opened: "opened",
  cancelled: "cancelled",
  first_visit: "first_visit",
  not_accepted: "readings",
  on_site: "on_site",
  lapses_30: "lapses",
  lapses_60: "lapses",
  lapses_90: "lapses",
};

/** Where every figure of a digest comes from. */
export function recordsSource({ company }: Pick<Books, "company">): Source {
  return { basis: company.isInvented ? "invented" : "computed", document: "The company's own records" };
}

/** The numbers that may be seen, each with how it is counted. */
export function countDigest(
  digest: Digest,
  sees: readonly Figure[],
  books: Books,
): readonly NumberResult<DigestNumber>[] {
  const source = recordsSource(books);
  return NUMBERS.filter(([id]) => sees.includes(FIGURE_OF[id])).map(([id, equation, value]) =>
    numberResult(id, value(digest), equation, {}, source),
  );
}

const counted = (value: (digest: Digest) => number) => (digest: Digest) => q("count", value(digest));
const lapsing = (days: number) => counted(({ lapses }) => lapses.filter(({ in_days }) => in_days <= days).length);

const NUMBERS: readonly (readonly [DigestNumber, string, (digest: Digest) => Quantity])[] = [
  ["finished", "n(jobs closed in the period)", counted(({ finished }) => finished.length)],
  ["open_items", "n(items open at its end)", counted(({ items }) => items.length)],
  ["overdue", "n(open items, due < day)", counted(({ items }) => items.filter((one) => one.isOverdue).length)],
  ["callbacks", "n(call-backs in the period)", counted(({ callBacks }) => callBacks.length)],
  ["opened", "n(jobs opened in the period)", counted(({ opened }) => opened.length)],
  ["cancelled", "n(jobs cancelled in the period)", counted(({ cancelled }) => cancelled.length)],
  ["first_visit", "n(first closed, complete, 1 visit)", counted(doneAtOnce)],
  [
    "not_accepted",
    "n(last readings, not accepted)",
    counted(({ steps }) => steps.reduce((sum, { notAccepted }) => sum + notAccepted, 0)),
  ],
  [
    "on_site",
    "sum over jobs and days (last entry - first entry)",
    ({ onSite }) =>
      q(
        "time",
        onSite.reduce((sum, { time_s }) => sum + time_s, 0),
      ),
  ],
  ["lapses_30", "n(last day - day <= 30 d)", lapsing(30)],
  ["lapses_60", "n(last day - day <= 60 d)", lapsing(60)],
  ["lapses_90", "n(last day - day <= 90 d)", lapsing(90)],
];

function doneAtOnce({ firstClosed }: Digest): number {
  return firstClosed.filter(({ closing }) => closing.isComplete && closing.visits <= 1).length;
}

/** Shares with the counts that they are made of; a percentage only where the count holds one. */
export function sayShares(digest: Digest, sees: readonly Figure[]): readonly DigestShare[] {
  const { recent, firstClosed } = digest;
  const [some, all] = [doneAtOnce(digest), firstClosed.length];
  const [back, closed] = [recent.cameBack.length, recent.finished.length];
  const days = q("count", LOOK_BACK_days);
  const visits: DigestShare = { code: "first_visits", data: { some: q("count", some), all: q("count", all) } };
  const rate: DigestShare = {
    code: "came_back_rate",
    data: { some: q("count", back), all: q("count", closed), days },
  };
  if (!sees.includes("first_visit")) return [];
  const said = [
    ...(all > 0 ? [visits, ...percentage(some, all)] : []),
    ...(closed > 0 ? [rate, ...percentage(back, closed)] : []),
  ];
  const isFew = [all, closed].some((count) => count > 0 && count < ENOUGH_FOR_A_SHARE);
  return isFew ? [...said, { code: "few_for_share", data: { enough: q("count", ENOUGH_FOR_A_SHARE) } }] : said;
}

function percentage(some: number, all: number): readonly DigestShare[] {
  const share = shareOf(some, all);
  if (share === undefined) return [];
  const { low, high } = share;
  return [{ code: "share_is", data: { share: q("share", share.share), low: q("share", low), high: q("share", high) } }];
}

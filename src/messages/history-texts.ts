import type { JobChange } from "../jobs/job.ts";
import type { Door } from "../ports/store.ts";

/** How the entries of a job are said, one by one. Both languages have this shape; lists arrive joined. */
export interface HistoryTexts {
  readonly doors: Readonly<Record<Door, string>>;
  readonly heading: string;
  readonly earlier: (entries: string) => string;
  /** When, who, which door, and what. */
  readonly entry: (moment: string, by: string, door: string, said: string) => string;
  readonly putRightBy: (entry: string) => string;
  readonly takenBackBy: (entry: string) => string;
  readonly putsRight: (entry: string) => string;
  /** Said when an entry is put right or taken back. */
  readonly was: (entry: string, was: string) => string;
  readonly is: (entry: string, is: string) => string;
  readonly wasTakenBack: (entry: string, was: string) => string;
  readonly said: {
    readonly opened: (customer: string, place: string, day: string | undefined) => string;
    readonly planned: (day: string, people: string) => string;
    readonly unit: (unit: string) => string;
    readonly permit: (permit: string) => string;
    readonly status: (status: string, because: string | undefined) => string;
    readonly facts: (facts: string) => string;
    readonly reading: (label: string, value: string, stands: string) => string;
    readonly item_opened: (what: string, owner: string, due: string) => string;
    readonly item_closed: (what: string) => string;
    readonly file: (name: string) => string;
    readonly parts: (parts: string) => string;
    readonly note: (text: string) => string;
    readonly trail: (text: string) => string;
    readonly withdrawn: (because: string | undefined) => string;
  } & Readonly<Record<JobChange["kind"], unknown>>;
}

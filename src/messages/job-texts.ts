import type { JobChange, JobStatus } from "../jobs/job.ts";
import type { Role } from "../ports/store.ts";

/** Every sentence about job records, files and posts. Both languages have this shape. Lists arrive joined. */
export interface JobTexts {
  readonly statuses: Readonly<Record<JobStatus, string>>;
  readonly roles: Readonly<Record<Role, string>>;
  readonly changes: Readonly<Record<JobChange["kind"], string>>;
  readonly refusals: {
    readonly unknown_job: (job: string) => string;
    readonly number_taken: (job: string) => string;
    readonly customer_too_much: string;
    readonly not_in_this_status: (status: string, change: string) => string;
    readonly not_your_role: (roles: string) => string;
    readonly no_such_step: (from: string, to: string, next: string) => string;
    readonly says_why: (to: string) => string;
    readonly items_left: (items: string) => string;
    readonly no_item_left: string;
    readonly reading_unexplained: (readings: string) => string;
    readonly unknown_item: (item: string, open: string) => string;
    readonly unknown_event: (event: string) => string;
    readonly other_kind: (event: string) => string;
    readonly not_your_event: (by: string) => string;
  };
  readonly files: {
    readonly empty: string;
    readonly too_large: (most_MB: string) => string;
    readonly heic: string;
    readonly unknown_type: string;
    readonly damaged: string;
    readonly not_given: string;
    readonly no_room: string;
    readonly needs_job: string;
    readonly refused: (name: string, because: string) => string;
    readonly title: string;
    readonly thanks: (job: string) => string;
    readonly chooseJob: string;
  };
  /** What a message wrote into a job, said under its card. Lists arrive joined. */
  readonly savedFacts: (job: string, labels: string) => string;
  readonly savedReading: (job: string, label: string) => string;
  readonly savedStatus: (job: string, status: string) => string;
  readonly savedItem: (what: string, owner: string, due: string) => string;
  readonly closedItem: (what: string) => string;
  readonly savedParts: (job: string, kinds: string) => string;
  readonly savedFile: (job: string, name: string) => string;
  readonly savedNote: (job: string) => string;
  readonly savedIn: (job: string) => string;
  readonly savedPlan: (job: string, day: string, people: string) => string;
  readonly withdrawnIn: (job: string, entry: string) => string;
  readonly takenBack: (job: string) => string;
  readonly staysInJob: (job: string) => string;
  readonly notSaved: (job: string, why: string) => string;
  readonly savedTrail: (job: string) => string;
  readonly postedTrail: string;
  /** How the cause of a fault was found, as the team reads it. */
  readonly trail: { readonly title: (job: string) => string; readonly by: (name: string) => string };
  readonly posted: string;
  readonly noTeamChannel: string;
  /** The record of a job, and the summary that the team reads. */
  readonly record: {
    readonly title: (job: string, status: string) => string;
    readonly status: string;
    readonly day: string;
    readonly unit: string;
    readonly place: string;
    readonly customer: string;
    readonly people: string;
    readonly permit: string;
    readonly facts: string;
    readonly factNote: (by: string) => string;
    readonly readings: string;
    readonly readingColumns: readonly [what: string, measured: string, expected: string, stands: string];
    readonly accepted: string;
    readonly notAccepted: (because: string) => string;
    readonly notJudged: string;
    readonly steps: string;
    readonly untaken: string;
    readonly items: string;
    readonly overdue: string;
    readonly parts: string;
    readonly files: string;
    readonly time: string;
    readonly settings: string;
    readonly cautions: string;
    readonly headline: (unit: string, place: string) => string;
    readonly noUnit: string;
    readonly nothingOpen: string;
  };
  /** Under a post that may have been sent before. */
  readonly mayRepeat: string;
  readonly lostPostsTitle: string;
  readonly lostPost: (title: string, channel: string, because: string) => string;
}

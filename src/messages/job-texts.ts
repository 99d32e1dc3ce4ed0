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
  };
  /** Under a post that may have been sent before. */
  readonly mayRepeat: string;
  readonly lostPostsTitle: string;
  readonly lostPost: (title: string, channel: string, because: string) => string;
}

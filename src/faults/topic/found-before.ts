import type { KnownFacts } from "../../declaration/facts.ts";
import type { Job } from "../../jobs/job.ts";
import { CURED_BY } from "./fault-facts.ts";

/**
 * How often each cause was what a fault of this company's jobs came down to, as a fact of the fault topic. A closing that
 * was taken back is no longer in the job, and so no longer counts.
 */
export function foundBefore(jobs: readonly Pick<Job, "facts">[]): KnownFacts {
  const counts = new Map<string, number>();
  for (const { facts } of jobs)
    for (const [fact, { value }] of Object.entries(facts)) {
      if (!fact.startsWith(CURED_BY) || value !== true) continue;
      const cause = fact.slice(CURED_BY.length);
      counts.set(cause, (counts.get(cause) ?? 0) + 1);
    }
  if (counts.size === 0) return {};
  return { found_before: { value: [...counts].map(([cause, count]) => `${cause}:${count}`).join(","), from: "job" } };
}

import type { Books } from "../../books/books.ts";
import type { KnownFacts } from "../../declaration/facts.ts";
import type { JobChange } from "../../jobs/job.ts";
import type { JobAct } from "../../jobs/job-act.ts";
import { isSame } from "../../jobs/shared-facts.ts";
import type { Told } from "./fault-case.ts";
import { isSeen, POST_TRAIL } from "./fault-facts.ts";
import type { Answer } from "./fault-findings.ts";

/**
 * What a fault walk writes into the open job: every complaint, check and reading by itself, so that the record says who
 * told it and when, and taking one back leaves the others.
 */
export function enterSeen(known: KnownFacts, { openJob }: Books): readonly JobChange[] {
  return Object.entries(known).flatMap(([fact, { value, from }]): readonly JobChange[] => {
    const kept = openJob?.facts[fact];
    const isKept = kept?.topic === "fault" && isSame(kept.value, value);
    if (from !== "asked" || !isSeen(fact) || isKept) return [];
    return [{ kind: "facts", topic: "fault", facts: { [fact]: value } }];
  });
}

/** The answer with its way there written into the open job, and offered to the team where it has a channel. */
export function withTrail(answer: Answer, told: Told, { openJob, company }: Books): Answer {
  const rows = answer.tables?.find(({ id }) => id === "trail")?.rows ?? [];
  if (openJob === undefined) return answer;
  const isPosted = told[POST_TRAIL] === true;
  const act: JobAct = { kind: "trail", topic: "fault", headline: answer.headline, rows, wantsPost: isPosted };
  const offer = { say: { code: "step_post", data: {} }, request: `${POST_TRAIL}=yes`, follows: true } as const;
  return {
    ...answer,
    acts: [act],
    next: [...(answer.next ?? []), ...(company.teamChannel === undefined || isPosted ? [] : [offer])],
  };
}

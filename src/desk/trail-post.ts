import type { JobAct } from "../jobs/job-act.ts";
import { buildTrailCard, sayTrail } from "../messages/build-trail-card.ts";
import { speakOf } from "../messages/voice.ts";
import type { Post } from "../ports/outbox.ts";
import { companyVoice } from "./summary-post.ts";
import type { JobWriting } from "./write-job.ts";

type Trail = Extract<JobAct, { readonly kind: "trail" }>;

/** The line that the record of the job keeps, in the company's own language and units. */
export function wordTrail({ turn }: JobWriting, trail: Trail): string {
  return sayTrail(speakOf(companyVoice({ turn }), trail.topic), trail);
}

/** How the cause was found, for the team's channel; each time that somebody wants it told is a post of its own. */
export function trailPosts(writing: JobWriting, trail: Trail, job: string): readonly Post[] {
  const { turn, workspace, person } = writing;
  const { teamChannel: channel, language = "en" } = turn.company;
  if (channel === undefined) return [];
  const card = buildTrailCard(speakOf(companyVoice({ turn }), trail.topic), job, person.name, trail);
  return [{ id: `${workspace}-job-${job}-trail-${turn.newId}`, channel, language, card }];
}

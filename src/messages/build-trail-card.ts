import type { JobAct } from "../jobs/job-act.ts";
import { buildTableBlock, showCell } from "./build-table-blocks.ts";
import type { Card } from "./card.ts";
import { JOB_TEXTS } from "./job-labels.ts";
import { sayFinding, type TopicVoice } from "./voice.ts";

type Trail = Extract<JobAct, { readonly kind: "trail" }>;

/** How a cause was found in a line, as the record of the job keeps it. */
export function sayTrail(voice: TopicVoice, { headline, rows }: Trail): string {
  const seen = rows.map(([check = "", shown = ""]) => `${showCell(voice, check)}: ${showCell(voice, shown)}`);
  return [sayFinding(voice, headline), seen.join("; ")].filter((part) => part !== "").join(" ");
}

/** How a cause was found, as the team reads it. */
export function buildTrailCard(voice: TopicVoice, job: string, by: string, { headline, rows }: Trail): Card {
  const { trail } = JOB_TEXTS[voice.language];
  const title = trail.title(job);
  const said = sayFinding(voice, headline);
  return {
    title,
    blocks: [
      { kind: "headline", text: said },
      { kind: "text", tone: "quiet", text: trail.by(by) },
      ...(rows.length === 0 ? [] : [buildTableBlock(voice, { id: "trail", rows })]),
    ],
    summary: `${title}. ${said}`,
  };
}

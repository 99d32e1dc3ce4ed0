import type { FileRefusal, KeptFile } from "../ports/files.ts";
import { buildNoticeCard } from "./build-notice-card.ts";
import type { Card, TextBlock } from "./card.ts";
import { JOB_TEXTS } from "./job-labels.ts";
import type { Language } from "./language.ts";
import { problem } from "./notes.ts";
import type { Voice } from "./voice.ts";

/** What became of the photos and papers of a message. */
interface TakenFiles {
  readonly kept: readonly KeptFile[];
  readonly refused: readonly { readonly name: string; readonly because: FileRefusal | "not_given" | "no_room" }[];
}

/** Answers a message that asks nothing besides; what is kept is said under it by whoever writes it into the job. */
export function buildFilesCard(language: Language, files: TakenFiles, job: string | undefined): Card {
  const { files: texts } = JOB_TEXTS[language];
  const [first, ...others] = noteFiles(language, files, job !== undefined).map(({ text }) => text);
  if (first !== undefined)
    return buildNoticeCard(texts.title, [first, ...others], jobButtons(language, job), "problem");
  return buildNoticeCard(texts.title, [texts.thanks(job ?? "")], []);
}

function jobButtons(language: Language, job: string | undefined) {
  return job === undefined ? [{ label: JOB_TEXTS[language].files.chooseJob, say: "job" }] : [];
}

/** What could not be kept, and what to do instead. */
export function noteFiles(language: Language, { kept, refused }: TakenFiles, hasJob: boolean): readonly TextBlock[] {
  const { files: texts } = JOB_TEXTS[language];
  return [
    ...(kept.length > 0 && !hasJob ? [problem(texts.needs_job)] : []),
    ...refused.map(({ name, because }) => problem(texts.refused(name, sayFileRefusal(language, because)))),
  ];
}

/** Largest file that is kept, as people say it [MB]. */
const MOST_MB = "10";

function sayFileRefusal(language: Language, because: TakenFiles["refused"][number]["because"]): string {
  const { files: texts } = JOB_TEXTS[language];
  return because === "too_large" ? texts.too_large(MOST_MB) : texts[because];
}

/** Whether a card only says that nothing was made of the words. */
export function isNotUnderstood({ common }: Voice, { title }: Card): boolean {
  return title === common.notUnderstoodTitle;
}

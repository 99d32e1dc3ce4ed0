import { parseCommand } from "../conversation/commands.ts";
import { converse } from "../conversation/converse.ts";
import { findTopic } from "../conversation/grammar/find-topic.ts";
import type { Decision, Show, Turn } from "../conversation/turn.ts";
import type { JobAct } from "../jobs/job-act.ts";
import { buildFilesCard, isNotUnderstood, noteFiles } from "../messages/build-files-card.ts";
import { voiceFor } from "../messages/voice.ts";
import { foldText } from "../units/fold-text.ts";
import { normaliseText } from "../units/normalise-text.ts";
import type { FilesTaken } from "./keep-files.ts";
import type { TakenTurn } from "./take-turn.ts";

/**
 * What a message with photos or papers means: they go to the job that is talked about, or that the message names. Words
 * beside them say what is to be seen and are a note of that job, unless they begin as a request, steer, or answer a walk.
 */
export function takeFiles(turn: Turn, files: FilesTaken): TakenTurn {
  const said = turn.text.trim();
  const isSilent = turn.form === undefined && (said === "" || isCaption(turn, said));
  const decision = isSilent ? undefined : converse(turn);
  const asked = decision && askedAgain(turn, decision, said);
  if (asked !== undefined) return { turn, decision: noted(turn, asked, files) };
  if (decision !== undefined && !isIdle(turn, decision)) return { turn, decision: noted(turn, decision, files) };
  const { language } = turn.reader;
  const shown: Show = {
    kind: "show",
    card: buildFilesCard(language, files, turn.job?.number),
    state: turn.state,
    reader: turn.reader,
    ...(turn.job !== undefined && said !== "" && { acts: [noteOf(said)] }),
  };
  return { turn, decision: shown };
}

/** A number of a job, or what people say of its record without the word for it. */
const OF_A_JOB = /^(?:#?\s?\d{3,9}\b|(?:history|historial|note|nota)\b)/i;

/** Words beside a photo that ask for nothing: what a request would find somewhere in them is what the photo shows. */
function isCaption({ state, aim, library }: Turn, said: string): boolean {
  if (state.walk !== undefined || aim !== undefined) return false;
  const text = normaliseText(said);
  if (OF_A_JOB.test(text) || parseCommand(text) !== undefined) return false;
  return findTopic(foldText(text), library, undefined)?.span?.start !== 0;
}

function noteOf(text: string): JobAct {
  return { kind: "change", change: { kind: "note", text } };
}

/** In the middle of a walk, words that answer nothing say what is on the photo: a note, and the question stands as before. */
function askedAgain({ state, job }: Turn, decision: Decision, said: string): Show | undefined {
  if (job === undefined || state.walk === undefined || decision.kind !== "show") return undefined;
  const isSame = JSON.stringify(decision.state.walk) === JSON.stringify(state.walk);
  const blocks = decision.card.blocks.filter((block) => block.kind !== "text" || block.tone !== "problem");
  if (!isSame || blocks.length === decision.card.blocks.length) return undefined;
  return { ...decision, card: { ...decision.card, blocks }, acts: [noteOf(said)] };
}

/** Words that came to nothing, such as what is to be seen on a photo. */
function isIdle({ library, reader }: Turn, decision: Decision): boolean {
  return decision.kind === "show" && isNotUnderstood(voiceFor(library, reader), decision.card);
}

/** What could not be kept is said before the answer; what was kept, under it, by whoever writes it into the job. */
function noted({ reader, job }: Turn, decision: Decision, files: FilesTaken): Decision {
  const hasJob = job !== undefined || decision.state.job !== undefined || decision.kind === "run";
  const notes = noteFiles(reader.language, files, hasJob);
  if (notes.length === 0) return decision;
  if (decision.kind === "run") return { ...decision, notes: [...notes, ...decision.notes] };
  return { ...decision, card: { ...decision.card, blocks: [...notes, ...decision.card.blocks] } };
}

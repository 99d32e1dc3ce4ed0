import { buildNoticeCard } from "../messages/build-notice-card.ts";
import { quiet } from "../messages/notes.ts";
import { takeBack } from "./past.ts";
import { readAs } from "./preferences.ts";
import type { StepChange } from "./state.ts";
import { buildTableCard, resumeButtons } from "./table.ts";
import type { Decision, Scene, Show } from "./turn.ts";

/** Takes back the last step: walk, answer and preferences are what they were, and what was marked counts as not seen. */
export function undo(scene: Scene): Decision {
  const back = takeBack(scene.state, scene.reader);
  if (back === undefined) return notice(scene, [scene.voice.common.nothingToUndo]);
  const decision = returnTo(scene, back);
  const { marked, entered } = back.changed;
  const takesBack = entered && { takesBack: entered };
  if (decision.kind === "run") return { ...decision, ...takesBack };
  return {
    ...decision,
    ...(marked !== undefined && { marks: marked.map((key) => ({ ...key, act: "unseen" as const })) }),
    ...takesBack,
  };
}

function returnTo(scene: Scene, back: NonNullable<ReturnType<typeof takeBack>>): Decision {
  const before = readAs({ ...scene, state: back.state }, back.reader);
  const said = sayUndone(before, back.changed);
  const table = back.state.walk && buildTableCard(before.voice, back.state.walk, [quiet(said)]);
  if (table !== undefined) return { kind: "show", card: table, state: back.state, reader: back.reader };
  const { last } = back.state;
  if (last === undefined || last === scene.state.last || last.walk === scene.state.last?.walk)
    return notice(before, last === undefined ? [said, before.voice.common.nothingIsOpen] : [said]);
  return {
    kind: "run",
    topic: last.topic,
    facts: last.facts,
    purpose: { kind: "again", walk: last.walk ?? "" },
    notes: [quiet(before.voice.common.undoneToAnswer)],
    before: back.state,
    state: back.state,
    reader: back.reader,
  };
}

function notice(scene: Scene, sentences: readonly [string, ...string[]]): Show {
  const { common } = scene.voice;
  const help = { label: common.help, say: common.say.help() };
  const again = scene.state.last === undefined ? [] : [{ label: common.showAgain, say: common.say.again }];
  const buttons = [...again, ...resumeButtons(scene, scene.state), help];
  const card = buildNoticeCard(common.undoTitle, sentences, buttons);
  return { kind: "show", card, state: scene.state, reader: scene.reader };
}

function sayUndone(scene: Scene, { units, language, marked }: StepChange): string {
  const { common } = scene.voice;
  if (marked !== undefined) return common.undoneMark(marked.map(({ caution }) => caution).join(", "));
  if (units !== undefined) return common.undoneUnits[units];
  return language === undefined ? common.undone : common.undoneLanguage;
}

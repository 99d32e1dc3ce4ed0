import { aboutOf, markOf, sayBriefly, seenButtons } from "../messages/build-caution-blocks.ts";
import { buildNoticeCard } from "../messages/build-notice-card.ts";
import type { Button, Card } from "../messages/card.ts";
import { formatMoment } from "../messages/format-moment.ts";
import type { CautionMark } from "../ports/store.ts";
import { type CautionCommand, parseCautionCommand } from "./caution-command.ts";
import { show } from "./scene.ts";
import type { CautionKey, ShownCaution } from "./state.ts";
import { resumeButtons } from "./table.ts";
import type { CautionTurn, Scene, Show } from "./turn.ts";

/** Records what a message says about a caution that was shown here; nothing when it is about something else. */
export function markCaution(scene: Scene): Show | undefined {
  const command = parseCautionCommand(scene.text, scene.library);
  if (command === undefined) return undefined;
  const { common } = scene.voice;
  const shown = scene.state.shown ?? [];
  const marks = scene.cautions?.marks ?? [];
  const waiting = shown.filter((one) => one.isPast !== true && markOf(one, marks) === undefined);
  const { caution } = command;
  const [only, ...more] = waiting;
  if (caution === "" && command.kind === "seen") {
    if (only === undefined) return notice(scene, common.nothingToSee, []);
    return more.length === 0 ? record(scene, only, command) : ask(scene, common.whichCaution, waiting);
  }
  if (!scene.library.cautions.some(({ id }) => id === caution))
    return ask(scene, common.unknownCaution(caution), waiting);
  const about = shownAs(scene, caution);
  if (about === undefined) return ask(scene, common.cautionNotShown(caution), waiting);
  if (command.kind === "skip-caution" && command.because === "")
    return ask(scene, common.skipNeedsWords(caution), [about]);
  return record(scene, about, command);
}

/** The caution as it was shown: by the answer whose button was pressed, else the last time. */
function shownAs({ state: { shown = [] }, aim }: Scene, caution: string): ShownCaution | undefined {
  return shown.findLast(({ id, walk }) => id === caution && (aim === undefined || walk === aim.walk));
}

function record(scene: Scene, about: ShownCaution, command: CautionCommand): Show {
  if (scene.cautions === undefined) return ask(scene, scene.voice.common.cautionNotShown(about.id), []);
  const key: CautionKey = { caution: about.id, about: aboutOf(about) };
  const { severity, data, local } = about;
  const shown = show(
    scene,
    scene.state,
    recordedCard(scene, scene.cautions, about, command),
    isMark(command) ? { marked: [key] } : {},
  );
  return { ...shown, marks: [{ ...toMark(key, command), shown: { severity, data, ...(local && { local }) } }] };
}

/** True when undo has something to take back: that something counts as not seen is taken back by saying it again. */
function isMark({ kind }: CautionCommand): boolean {
  return kind !== "unsee";
}

function toMark(key: CautionKey, command: CautionCommand): CautionMark {
  switch (command.kind) {
    case "seen":
      return { ...key, act: "seen" };
    case "unsee":
      return { ...key, act: "unseen" };
    case "skip-caution":
      return { ...key, act: "skipped", because: command.because };
  }
}

function recordedCard(
  scene: Scene,
  { speaker, now_ms, timeZone }: CautionTurn,
  about: ShownCaution,
  command: CautionCommand,
): Card {
  const { common } = scene.voice;
  const what = `${common.severities[about.severity]}: ${sayBriefly(scene.voice, about)}`;
  const when = formatMoment(common, now_ms, timeZone);
  const takeBack: Button = { label: common.undo, say: common.say.unsee(about.id) };
  switch (command.kind) {
    case "seen":
      return card(scene, common.recordedSeen(speaker, when, what), [takeBack]);
    case "unsee":
      return card(scene, common.recordedUnseen(what), seenButtons(scene.voice, [about]).buttons);
    case "skip-caution":
      return card(scene, common.recordedSkipped(speaker, when, command.because, what), [takeBack]);
  }
}

function ask(scene: Scene, text: string, cautions: readonly ShownCaution[]): Show {
  return notice(scene, text, cautions.length === 0 ? [] : seenButtons(scene.voice, cautions).buttons);
}

function notice(scene: Scene, text: string, buttons: readonly Button[]): Show {
  return show(scene, scene.state, card(scene, text, buttons));
}

function card(scene: Scene, text: string, buttons: readonly Button[]): Card {
  return buildNoticeCard(scene.voice.common.cautionsTitle, [text], [...buttons, ...resumeButtons(scene, scene.state)]);
}

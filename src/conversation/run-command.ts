import { buildFormCard } from "../messages/build-form-card.ts";
import { buildHelpCard, buildTopicHelpCard } from "../messages/build-help-card.ts";
import { buildNoticeCard } from "../messages/build-notice-card.ts";
import { buildWelcomeCard } from "../messages/build-welcome-card.ts";
import type { Card } from "../messages/card.ts";
import { problem, quiet } from "../messages/notes.ts";
import { sayFactHelp } from "../messages/say-problem.ts";
import { factOf, speakOf } from "../messages/voice.ts";
import { goBack, skip } from "./answer-walk.ts";
import { changeCommand, noAnswerYet } from "./change-command.ts";
import type { Command } from "./commands.ts";
import { findResult, findTopic } from "./find-named.ts";
import { listen } from "./hear.ts";
import { park } from "./past.ts";
import { changeLanguage, changeUnits } from "./preferences.ts";
import { resume } from "./resume.ts";
import { show } from "./scene.ts";
import { onRecord } from "./start-request.ts";
import type { LastAnswer, Walk } from "./state.ts";
import { askAgain, resumeButtons, titleOf } from "./table.ts";
import type { Decision, Scene } from "./turn.ts";
import { undo } from "./undo.ts";

/**
 * Does what a command says; nothing when the words turn out not to be meant as a command.
 * @param aimed the answer whose button was pressed; else "how", "again" and "change" are about the last one
 */
export function runCommand(scene: Scene, command: Command, aimed?: LastAnswer): Decision | undefined {
  const { walk } = scene.state;
  const answer = aimed ?? scene.state.last;
  switch (command.kind) {
    case "back":
      return walk === undefined ? changeCommand(scene, "", aimed) : goBack(scene, walk);
    case "skip":
      return walk === undefined ? notice(scene, scene.voice.common.nothingIsOpen) : skip(scene, walk);
    case "stop":
      return stop(scene);
    case "undo":
      return undo(scene);
    case "again":
      return again(scene, answer);
    case "welcome":
      return welcome(scene);
    case "where":
      return where(scene);
    case "help":
      return help(scene, command.what);
    case "resume":
      return resume(scene, command.what);
    case "how":
      return how(scene, command.what, answer);
    case "change":
      return changeCommand(scene, command.what, aimed);
    case "form":
      return form(scene, command.what, answer);
    case "units":
      return changeUnits(scene, command.units);
    case "language":
      return changeLanguage(scene, command.language);
    case "link":
      return undefined;
  }
}

function notice(scene: Scene, text: string): Decision {
  return show(scene, scene.state, buildNoticeCard(text, [text], resumeButtons(scene, scene.state)));
}

function stop(scene: Scene): Decision {
  const { common } = scene.voice;
  const { walk } = scene.state;
  if (walk === undefined) {
    const card = buildNoticeCard(common.stoppedTitle, [common.nothingToStop], resumeButtons(scene, scene.state));
    return show(scene, scene.state, card);
  }
  const card = buildNoticeCard(
    common.stoppedTitle,
    [common.stopped(titleOf(scene.voice, walk))],
    [
      { label: common.resume, say: common.say.resume(walk.topic), style: "primary" },
      { label: common.help, say: common.say.help() },
    ],
  );
  return show(scene, park(scene.state), card);
}

function again(scene: Scene, answer: LastAnswer | undefined): Decision {
  if (answer === undefined) return noAnswerYet(scene);
  const { topic, facts, walk = "" } = answer;
  const { state, before, reader } = scene;
  return { kind: "run", topic, facts, purpose: { kind: "again", walk }, notes: [], before, state, reader };
}

function how(scene: Scene, what: string, answer: LastAnswer | undefined): Decision | undefined {
  if (answer === undefined) return what === "" ? noAnswerYet(scene) : undefined;
  const { topic, facts, walk = "" } = answer;
  const result = findResult(speakOf(scene.voice, topic), what);
  if (what !== "" && result === undefined) return undefined;
  const { state, before, reader } = scene;
  const purpose = { kind: "how" as const, walk, ...(result !== undefined && { result }) };
  return { kind: "run", topic, facts, purpose, notes: [], before, state, reader };
}

function welcome(scene: Scene): Decision {
  const { walk } = scene.state;
  const notes = walk === undefined ? [] : [quiet(scene.voice.common.stillOpen)];
  const card = buildWelcomeCard(scene.voice, scene.company, notes, resumeButtons(scene, scene.state));
  return show(scene, scene.state, card);
}

/** Says how the company's books name this channel, for those who fill them in. */
function where(scene: Scene): Decision {
  const { common } = scene.voice;
  const { channel } = scene;
  const sentence = channel === undefined ? common.whereNoChannel : common.whereChannel(channel.door, channel.id);
  return show(scene, scene.state, buildNoticeCard(common.whereTitle, [sentence], resumeButtons(scene, scene.state)));
}

function help(scene: Scene, what: string): Decision {
  const { walk } = scene.state;
  if (what === "" && walk !== undefined && walk.unsettled === undefined) return helpQuestion(scene, walk);
  const topic = what === "" ? undefined : (findTopic(scene.library, what) ?? listen(scene, what).topic);
  const offers = resumeButtons(scene, scene.state);
  if (topic !== undefined) return show(scene, scene.state, buildTopicHelpCard(speakOf(scene.voice, topic), offers));
  return show(scene, scene.state, noteOnTop(scene, buildHelpCard(scene.voice, offers), what));
}

const EVERYTHING = ["", "all", "todo", "topics", "temas", "me"];

function noteOnTop(scene: Scene, card: Card, what: string): Card {
  if (EVERYTHING.includes(what)) return card;
  const note = problem(scene.voice.common.unknownTopic(what));
  return { ...card, blocks: [note, ...card.blocks], summary: `${note.text} ${card.summary}` };
}

function helpQuestion(scene: Scene, walk: Walk): Decision {
  const [fact] = walk.toAsk;
  if (fact === undefined) return askAgain(scene, walk, []);
  const voice = speakOf(scene.voice, walk.topic);
  const [title, steer] = [sayFactHelp(voice, factOf(voice, fact)), scene.voice.common.steer];
  return askAgain(scene, walk, [quiet(title), quiet(steer)]);
}

function form(scene: Scene, what: string, answer: LastAnswer | undefined): Decision {
  const { walk } = scene.state;
  const named = what === "" ? (walk ?? answer)?.topic : (findTopic(scene.library, what) ?? listen(scene, what).topic);
  if (named === undefined) {
    const card = buildHelpCard(scene.voice, resumeButtons(scene, scene.state));
    return show(scene, scene.state, noteOnTop(scene, card, what));
  }
  const known = [walk, answer].find((one) => one?.topic === named);
  return show(
    scene,
    scene.state,
    buildFormCard(speakOf(scene.voice, named), { facts: known?.facts ?? onRecord(scene, named) }),
  );
}

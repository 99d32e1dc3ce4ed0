import { buildNoticeCard } from "../messages/build-notice-card.ts";
import type { Aim, Button } from "../messages/card.ts";
import { problem } from "../messages/notes.ts";
import { factOf, showValue, speakOf } from "../messages/voice.ts";
import { answerWalk, skip, takeCandidate, takeGiven } from "./answer-walk.ts";
import { type Command, parseCommand } from "./commands.ts";
import { hearAbout, saysNothing } from "./hear.ts";
import { findAnswer, unpark } from "./past.ts";
import { readAnswer } from "./read-answer.ts";
import { runCommand } from "./run-command.ts";
import { show } from "./scene.ts";
import { revise } from "./start-request.ts";
import type { LastAnswer, Walk } from "./state.ts";
import { askAgain, parkedNote, resumeButtons, titleOf } from "./table.ts";
import type { Decision, Scene } from "./turn.ts";

/** Takes a pressed button: it knows which walk or answer it was offered for, and which fact. */
export function takeAimed(scene: Scene, aim: Aim): Decision {
  const command = parseCommand(scene.text);
  const { walk, parked = [] } = scene.state;
  if (walk?.id === aim.walk) return takeForWalk(scene, walk, aim, command);
  const waiting = parked.find((one) => one.id === aim.walk);
  if (waiting !== undefined) return takeForParked(scene, waiting, aim, command);
  const answer = findAnswer(scene.state, aim.walk);
  if (answer !== undefined) return takeForAnswer(scene, answer, aim, command);
  const isAboutAnswer = command?.kind === "how" || command?.kind === "change";
  return refuse(scene, isAboutAnswer ? scene.voice.common.oldAnswer : scene.voice.common.unknownButton, []);
}

function takeForParked(scene: Scene, waiting: Walk, aim: Aim, command: Command | undefined): Decision {
  const returned: Scene = { ...scene, state: unpark(scene.state, waiting.id) };
  const open = scene.state.walk;
  const decision = takeForWalk(returned, waiting, aim, command);
  if (open === undefined || decision.kind === "run") return decision;
  const { card } = decision;
  return { ...decision, card: { ...card, blocks: [parkedNote(scene.voice, open), ...card.blocks] } };
}

function takeForWalk(scene: Scene, walk: Walk, aim: Aim, command: Command | undefined): Decision {
  const [open] = walk.unsettled ?? [];
  const onTable = open === undefined ? walk.toAsk[0] : "*";
  const isOfWalk = [...walk.toAsk, ...walk.asked].includes(aim.fact);
  if (command?.kind === "back" && aim.fact !== onTable)
    return askAgain(scene, walk, [problem(scene.voice.common.earlierButton)]);
  if (command?.kind === "skip" && aim.fact !== onTable)
    return isOfWalk && open === undefined
      ? skip(scene, walk, aim.fact)
      : askAgain(scene, walk, [problem(scene.voice.common.earlierButton)]);
  const steered = command && runCommand(scene, command);
  if (steered !== undefined) return steered;
  if (open?.kind === "ambiguous" && open.candidates.includes(aim.fact) && open.typed === scene.text)
    return takeCandidate(scene, walk, aim.fact, open.typed);
  if (!isOfWalk) return answerWalk(scene, walk);
  const read = readAnswer(scene, walk.topic, aim.fact, scene.text);
  return read.ok ? takeGiven(scene, walk, aim.fact, read.known) : answerWalk(scene, walk);
}

/** A button of something that is answered: "how" and changes act on that answer, an old question says so and offers. */
function takeForAnswer(scene: Scene, answer: LastAnswer, aim: Aim, command: Command | undefined): Decision {
  if (command?.kind === "how" || command?.kind === "change") {
    const done = runCommand(scene, command, answer);
    if (done !== undefined) return done;
  }
  if (scene.text.includes("=")) {
    const heard = hearAbout(scene, answer.topic, scene.text);
    if (!("topic" in heard || saysNothing(heard))) return revise(scene, answer, heard);
  }
  const voice = speakOf(scene.voice, answer.topic);
  if (!Object.hasOwn(voice.topic.facts, aim.fact)) return refuse(scene, scene.voice.common.unknownButton, []);
  const { label } = factOf(voice, aim.fact).words;
  const said = scene.voice.common.questionAnswered(label, titleOf(scene.voice, answer));
  return refuse(scene, said, offersFor(scene, answer, aim));
}

function offersFor(scene: Scene, answer: LastAnswer, aim: Aim): readonly Button[] {
  const { common } = scene.voice;
  const fact = factOf(speakOf(scene.voice, answer.topic), aim.fact);
  const read = readAnswer(scene, answer.topic, aim.fact, scene.text);
  const change = { label: common.change(fact.words.label), say: common.say.change(fact.id), aim };
  if (!read.ok) return [change];
  const { value } = read.known;
  const say = `${fact.id}=${typeof value === "string" ? value : scene.text}`;
  return [{ label: common.answerWith(fact.words.label, showValue(scene.voice, fact, value)), say, aim }, change];
}

function refuse(scene: Scene, said: string, offers: readonly Button[]): Decision {
  const { common } = scene.voice;
  const help = { label: common.help, say: common.say.help() };
  const card = buildNoticeCard(common.oldButtonTitle, [said], [...offers, ...resumeButtons(scene, scene.state), help]);
  return show(scene, scene.state, card);
}

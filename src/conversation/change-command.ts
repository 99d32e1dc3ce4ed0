import { listedFacts } from "../declaration/run-topic.ts";
import { buildNoticeCard } from "../messages/build-notice-card.ts";
import type { Button, Card } from "../messages/card.ts";
import { factOf, speakOf } from "../messages/voice.ts";
import { takeAll } from "./answer-walk.ts";
import { findFact } from "./find-named.ts";
import { type Heard, hearAbout, saysNothing } from "./hear.ts";
import { withoutWalk } from "./past.ts";
import { show } from "./scene.ts";
import { changeFact, revise } from "./start-request.ts";
import type { LastAnswer, Walk } from "./state.ts";
import { proceed, resumeButtons } from "./table.ts";
import type { Decision, Scene } from "./turn.ts";
import { askNext } from "./walk-steps.ts";

/**
 * Changes one fact of the open walk or else of the last answer: "change cold", "change cold to 45F", or a choice.
 * @param aimed the answer whose button was pressed
 */
export function changeCommand(scene: Scene, what: string, aimed: LastAnswer | undefined): Decision {
  const walk = aimed === undefined ? scene.state.walk : undefined;
  const answer = aimed ?? scene.state.last;
  const inWalk = walk && changeInWalk(scene, walk, what);
  const changed = inWalk ?? (answer && changeInAnswer(scene, answer, what));
  if (changed !== undefined) return changed;
  const about = walk ?? answer;
  if (about === undefined) return noAnswerYet(scene);
  return show(scene, scene.state, whichFactCard(scene, about, what));
}

/** Says that there is no answer to change or explain. */
export function noAnswerYet(scene: Scene): Decision {
  const { common } = scene.voice;
  const help: Button = { label: common.help, say: common.say.help() };
  const buttons = [help, ...resumeButtons(scene, scene.state)];
  return show(scene, scene.state, buildNoticeCard(common.answersTitle, [common.noAnswerYet], buttons));
}

function changeInWalk(scene: Scene, walk: Walk, what: string): Decision | undefined {
  const fact = findFact(speakOf(scene.voice, walk.topic), what);
  if (fact !== undefined) return proceed(scene, withoutWalk(scene.state), askNext(walk, fact), []);
  const heard = what === "" ? undefined : hearChange(scene, walk.topic, what);
  return heard && takeAll(scene, walk, heard);
}

function changeInAnswer(scene: Scene, answer: LastAnswer, what: string): Decision | undefined {
  const fact = findFact(speakOf(scene.voice, answer.topic), what);
  if (fact !== undefined) return changeFact(scene, answer, fact);
  const heard = what === "" ? undefined : hearChange(scene, answer.topic, what);
  return heard && revise(scene, answer, heard);
}

/** What a change says; "to" between fact and value may mean something to the topic, so it is left out only if needed. */
function hearChange(scene: Scene, topic: string, what: string): Heard | undefined {
  const tries = [what, what.replace(/ (to|a|por|=) /, " ")].flatMap((text) => {
    const heard = hearAbout(scene, topic, text);
    return "topic" in heard || saysNothing(heard) ? [] : [heard];
  });
  return tries.find((heard) => heard.unsettled.length === 0) ?? tries[0];
}

function whichFactCard(scene: Scene, about: Walk | LastAnswer, what: string): Card {
  const { common } = scene.voice;
  const voice = speakOf(scene.voice, about.topic);
  const text = what === "" ? common.noQuestionOpen : common.whichFact(what, voice.words.title);
  const buttons = listedFacts(voice.topic).map((id): Button => {
    const { label } = factOf(voice, id).words;
    const walk = "id" in about ? about.id : about.walk;
    return { label, say: common.say.change(id), ...(walk !== undefined && { aim: { walk, fact: id } }) };
  });
  return buildNoticeCard(voice.words.title, [text], [...buttons, ...resumeButtons(scene, scene.state)]);
}

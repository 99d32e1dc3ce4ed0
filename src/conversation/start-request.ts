import type { KnownFacts } from "../declaration/facts.ts";
import { knownFromJob } from "../jobs/shared-facts.ts";
import { buildNotUnderstoodCard } from "../messages/build-problem-card.ts";
import type { TextBlock } from "../messages/card.ts";
import { problem } from "../messages/notes.ts";
import { speakOf } from "../messages/voice.ts";
import { dropFollowUpLead } from "./commands.ts";
import type { ParsedRequest } from "./grammar/parse-request.ts";
import { type Elsewhere, type Heard, hearAbout, listen, opensTopic, saysNothing, sortOut, topicHeard } from "./hear.ts";
import { park } from "./past.ts";
import { show } from "./scene.ts";
import type { ConversationState, LastAnswer } from "./state.ts";
import { parkedNote, proceed, resumeButtons } from "./table.ts";
import type { Decision, Scene } from "./turn.ts";
import { askNext, beginWalk } from "./walk-steps.ts";

const NOTHING_HEARD: Heard = { facts: {}, refused: [], unsettled: [] };

/** Takes a message while no walk is open: a new question, a follow-up to the last answer, or neither. */
export function takeRequest(scene: Scene): Decision {
  const { text } = scene;
  const { last } = scene.state;
  if (last !== undefined && !opensTopic(scene, last.topic, text) && !opensRecords(scene, last)) {
    const heard = hearAbout(scene, last.topic, text);
    if ("topic" in heard) return startRequest(scene, heard);
    if (!saysNothing(heard)) return follow(scene, last, heard);
  }
  const parsed = listen(scene, text);
  if (parsed.topic !== undefined) return startRequest(scene, { topic: parsed.topic, text, parsed });
  const heard = topicHeard(scene.library, text);
  if (heard === undefined) return notUnderstood(scene, parsed);
  return startRequest(scene, { topic: heard, text, parsed: listen(scene, text, heard) });
}

/** "job 1004 note …" after an answer that knows jobs too is about the record; "and job 1004" follows on. */
function opensRecords(scene: Scene, last: LastAnswer): boolean {
  const asksAnew = (topic: string) => scene.library.topics.get(topic)?.asksAnew === true;
  if (asksAnew(last.topic) || dropFollowUpLead(scene.text) !== scene.text) return false;
  const { topic } = listen(scene, scene.text.split(/\s+/, 1).join(""));
  return topic !== undefined && asksAnew(topic);
}

/** What follows an answer changes it; where every message asks anew, it is a question of its own. */
function follow(scene: Scene, last: LastAnswer, heard: Heard): Decision {
  if (scene.library.topics.get(last.topic)?.asksAnew !== true) return revise(scene, last, heard);
  return startRequest(scene, { topic: last.topic, text: scene.text, parsed: listen(scene, scene.text, last.topic) });
}

/** Begins a new question; one that is open is set aside. */
export function startRequest(scene: Scene, { topic, text, parsed }: Elsewhere): Decision {
  const heard = sortOut(scene, text, topic, parsed);
  const walk = beginWalk(speakOf(scene.voice, topic).topic, {
    id: nextId(scene),
    known: onRecord(scene, topic),
    heard,
    isBare: saysNothing(heard) && heard.unsettled.length === 0,
    ...(scene.state.job !== undefined && { job: scene.state.job }),
  });
  return proceed(scene, setAside(scene), walk, openingNotes(scene, heard));
}

/** Asks the question of an earlier answer again with what was changed. */
export function revise(scene: Scene, answer: LastAnswer, heard: Heard): Decision {
  const walk = beginWalk(speakOf(scene.voice, answer.topic).topic, {
    id: nextId(scene),
    known: answer.facts,
    heard,
    isBare: false,
    ...(answer.walk !== undefined && { revises: answer.walk }),
    ...(answer.job !== undefined && { job: answer.job }),
  });
  return proceed(scene, setAside(scene), walk, openingNotes(scene, heard));
}

/** Asks for one fact of an earlier answer again. */
export function changeFact(scene: Scene, answer: LastAnswer, fact: string): Decision {
  const walk = beginWalk(speakOf(scene.voice, answer.topic).topic, {
    id: nextId(scene),
    known: answer.facts,
    heard: NOTHING_HEARD,
    isBare: false,
    ...(answer.walk !== undefined && { revises: answer.walk }),
    ...(answer.job !== undefined && { job: answer.job }),
  });
  return proceed(scene, setAside(scene), askNext(walk, fact), openingNotes(scene, NOTHING_HEARD));
}

/**
 * What the open job knows that the topic has facts for; and what the records say of who asks, for a guided topic alone:
 * what others are not told they assume, and say so.
 */
export function onRecord({ record = {}, library, job, books, state }: Scene, topicId: string): KnownFacts {
  const topic = library.topics.get(topicId);
  if (topic === undefined) return {};
  const isClosed = job === undefined || books === undefined || job.number !== state.job;
  const ofJob = isClosed ? {} : knownFromJob(topic, job, books);
  if (topic.guide === undefined) return ofJob;
  const ofRecord = Object.entries(record).filter(([fact]) => Object.hasOwn(topic.facts, fact));
  return { ...Object.fromEntries(ofRecord), ...ofJob };
}

/** Id of the walk or answer that this message starts. */
export function nextId(scene: Scene): string {
  return `w${scene.state.walksStarted + 1}-${scene.newId}`;
}

/** The state in which a new walk may begin: the open one set aside, and the new one counted. */
function setAside(scene: Scene): ConversationState {
  return { ...park(scene.state), walksStarted: scene.state.walksStarted + 1 };
}

function openingNotes(scene: Scene, heard: Heard): readonly TextBlock[] {
  const { walk } = scene.state;
  return [
    ...(walk === undefined ? [] : [parkedNote(scene.voice, walk)]),
    ...heard.refused.map(({ why }) => problem(why)),
  ];
}

function notUnderstood(scene: Scene, request: ParsedRequest): Decision {
  const unknown = request.problems.find((one) => one.kind === "unknown-word");
  const card = buildNotUnderstoodCard(scene.voice, scene.text, unknown, resumeButtons(scene, scene.state));
  return show(scene, scene.state, card);
}

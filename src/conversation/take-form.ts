import type { KnownFact } from "../declaration/facts.ts";
import { isNeeded, listedFacts } from "../declaration/run-topic.ts";
import { buildFormCard } from "../messages/build-form-card.ts";
import { buildNotUnderstoodCard } from "../messages/build-problem-card.ts";
import { exampleOf } from "../messages/say-problem.ts";
import { factOf, speakOf } from "../messages/voice.ts";
import { normaliseText } from "../units/normalise-text.ts";
import { park, withoutWalk } from "./past.ts";
import { readAnswer } from "./read-answer.ts";
import { show } from "./scene.ts";
import { nextId } from "./start-request.ts";
import { parkedNote } from "./table.ts";
import type { Decision, Scene, SentForm } from "./turn.ts";

type Field =
  | { readonly fact: string; readonly typed: string; readonly known: KnownFact | undefined }
  | { readonly fact: string; readonly typed: string; readonly why: string };

/** Takes a form that was sent: answers it, or shows it again with what is wrong beside each field. */
export function takeForm(scene: Scene, form: SentForm): Decision {
  if (!scene.library.topics.has(form.topic))
    return show(scene, scene.state, buildNotUnderstoodCard(scene.voice, "", undefined, []));
  const voice = speakOf(scene.voice, form.topic);
  const fields = listedFacts(voice.topic).map((fact) => readField(scene, form, fact));
  const problems = Object.fromEntries(fields.flatMap((field) => ("why" in field ? [[field.fact, field.why]] : [])));
  if (Object.keys(problems).length > 0) {
    const typed = Object.fromEntries(fields.map((field) => [field.fact, field.typed]));
    return show(scene, scene.state, buildFormCard(voice, { facts: {}, typed, problems }));
  }
  const known = fields.flatMap((field): [string, KnownFact][] =>
    "why" in field || field.known === undefined ? [] : [[field.fact, field.known]],
  );
  return answerForm(scene, form.topic, Object.fromEntries(known));
}

function answerForm(scene: Scene, topic: string, facts: Readonly<Record<string, KnownFact>>): Decision {
  const { walk, last } = scene.state;
  const isOther = walk !== undefined && walk.topic !== topic;
  const state = isOther ? park(scene.state) : withoutWalk(scene.state);
  const revises = last?.topic === topic ? last.walk : undefined;
  return {
    kind: "run",
    topic,
    facts,
    purpose: { kind: "answer", walk: nextId(scene), ...(revises !== undefined && { revises }) },
    ...(state.job !== undefined && { job: state.job }),
    notes: isOther ? [parkedNote(scene.voice, walk)] : [],
    before: scene.before,
    state: { ...state, walksStarted: scene.state.walksStarted + 1 },
    reader: scene.reader,
  };
}

function readField(scene: Scene, form: SentForm, factId: string): Field {
  const voice = speakOf(scene.voice, form.topic);
  const fact = factOf(voice, factId);
  const text = normaliseText(form.fields[factId] ?? "");
  if (text === "") {
    const empty = { fact: factId, typed: "" };
    const isFilled = (other: string) => normaliseText(form.fields[other] ?? "") !== "";
    if (!isNeeded(fact.spec, isFilled)) return { ...empty, known: undefined };
    return { ...empty, why: scene.voice.common.fieldNeeded(exampleOf(voice, fact)) };
  }
  const read = readAnswer(scene, form.topic, factId, text);
  return read.ok ? { fact: factId, typed: text, known: read.known } : { fact: factId, typed: text, why: read.why };
}

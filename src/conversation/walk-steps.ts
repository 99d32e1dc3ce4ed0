import type { FactSpec, KnownFact, KnownFacts } from "../declaration/facts.ts";
import { missingFacts } from "../declaration/run-topic.ts";
import { PASSED_OVER, type Topic } from "../declaration/topic.ts";
import type { Heard } from "./hear.ts";
import type { Unsettled, Walk } from "./state.ts";

/** What a new walk starts from. */
export interface Beginning {
  readonly id: string;
  readonly known: KnownFacts;
  readonly heard: Heard;
  /** True: the topic was named and nothing else, so the facts marked `ask` are asked too. */
  readonly isBare: boolean;
  readonly revises?: string;
  readonly job?: string;
}

/** A walk that asks again what was refused, then what is missing. */
export function beginWalk(topic: Topic, beginning: Beginning): Walk {
  const facts = without(
    { ...withoutTwins(topic, beginning.known, Object.keys(beginning.heard.facts)), ...beginning.heard.facts },
    beginning.heard.refused.map(({ fact }) => fact),
  );
  const missing = new Set(missingFacts(topic, facts));
  const asked = Object.entries(topic.facts)
    .filter(([id, spec]) => missing.has(id) || (beginning.isBare && spec.ask === true && facts[id] === undefined))
    .map(([id]) => id);
  return withUnsettled(
    {
      id: beginning.id,
      topic: topic.id,
      facts,
      toAsk: unique([...beginning.heard.refused.map(({ fact }) => fact), ...asked]),
      asked: [],
      ...(beginning.revises !== undefined && { revises: beginning.revises }),
      ...(beginning.job !== undefined && { job: beginning.job }),
    },
    beginning.heard.unsettled,
  );
}

/** Takes an answer: the fact is known and asked, wherever in the walk it stood. */
export function takeAnswer(walk: Walk, fact: string, known: KnownFact): Walk {
  return moveToAsked({ ...walk, facts: { ...walk.facts, [fact]: known } }, fact);
}

/** Takes everything that a message said: its facts are known, refused ones are asked next. */
export function takeHeard(walk: Walk, heard: Heard): Walk {
  const refused = heard.refused.map(({ fact }) => fact);
  const told = Object.entries(heard.facts).reduce((so, [fact, known]) => takeAnswer(so, fact, known), walk);
  return withUnsettled(
    {
      ...told,
      facts: without(told.facts, refused),
      toAsk: unique([...refused, ...told.toAsk]),
      asked: told.asked.filter((fact) => !refused.includes(fact)),
    },
    [...(walk.unsettled ?? []), ...heard.unsettled],
  );
}

/** Asks for what a change of facts made necessary, and no longer for what it made needless. */
export function followFacts(topic: Topic, before: Walk, after: Walk): Walk {
  const [was, is] = [missingFacts(topic, before.facts), missingFacts(topic, after.facts)];
  const needed = is.filter((fact) => !was.includes(fact));
  const needless = was.filter((fact) => !is.includes(fact));
  return { ...after, toAsk: unique([...needed, ...after.toAsk.filter((fact) => !needless.includes(fact))]) };
}

/** Leaves a fact to its default, or open. */
export function leaveOut(walk: Walk, fact: string): Walk {
  return moveToAsked({ ...walk, facts: without(walk.facts, [fact]) }, fact);
}

/** Leaves a question of a guide open for good, so that it is not asked again. */
export function passOver(walk: Walk, fact: string): Walk {
  const before = walk.facts[PASSED_OVER]?.value;
  const passed = unique([...(typeof before === "string" ? before.split(",") : []), fact]);
  const open = leaveOut(walk, fact);
  return { ...open, facts: { ...open.facts, [PASSED_OVER]: { value: passed.join(","), from: "asked" } } };
}

/** A choice and the reading that may answer it instead are one answer: the newer one stands. */
export function dropTwin(topic: Topic, walk: Walk, fact: string): Walk {
  return { ...walk, facts: without(walk.facts, twinsOf(topic, fact)) };
}

/** The same for everything that one message said. */
export function dropTwins(topic: Topic, walk: Walk, said: readonly string[]): Walk {
  return { ...walk, facts: withoutTwins(topic, walk.facts, said) };
}

function withoutTwins(topic: Topic, facts: KnownFacts, said: readonly string[]): KnownFacts {
  const twins = said.flatMap((fact) => twinsOf(topic, fact));
  return without(
    facts,
    twins.filter((twin) => !said.includes(twin)),
  );
}

function twinsOf({ facts }: Topic, fact: string): readonly string[] {
  return Object.entries(facts).flatMap(([id, spec]) => {
    const twin = twinOf(spec);
    if (twin === undefined) return [];
    if (id === fact) return [twin];
    return twin === fact ? [id] : [];
  });
}

/** Asks this fact next, whatever was known of it; what was said stays as the answer that may be kept. */
export function askNext(walk: Walk, fact: string): Walk {
  return {
    ...walk,
    toAsk: unique([fact, ...walk.toAsk]),
    asked: walk.asked.filter((other) => other !== fact),
  };
}

/** Counts a fact as asked although its value stays as it was. */
export function moveToAsked(walk: Walk, fact: string): Walk {
  const wasAsked = walk.asked.includes(fact) || !walk.toAsk.includes(fact);
  return {
    ...walk,
    toAsk: walk.toAsk.filter((other) => other !== fact),
    asked: wasAsked ? walk.asked : [...walk.asked, fact],
  };
}

/** Takes what is on the table away, settled or left out. */
export function dropUnsettled(walk: Walk): Walk {
  return withUnsettled(walk, (walk.unsettled ?? []).slice(1));
}

function withUnsettled(walk: Walk, unsettled: readonly Unsettled[]): Walk {
  const { unsettled: _, ...rest } = walk;
  return unsettled.length === 0 ? rest : { ...rest, unsettled };
}

function without(facts: KnownFacts, left: readonly string[]): KnownFacts {
  return Object.fromEntries(Object.entries(facts).filter(([fact]) => !left.includes(fact)));
}

function unique(facts: readonly string[]): readonly string[] {
  return [...new Set(facts)];
}

function twinOf(spec: FactSpec): string | undefined {
  if (spec.type === "choice") return spec.orReading;
  return spec.type === "name" ? spec.insteadOf : undefined;
}

import type { FactSpec } from "../../src/declaration/facts.ts";
import type { Topic } from "../../src/declaration/topic.ts";

/** Ids are a public interface: small letters, digits and underscores. */
const PUBLIC_ID = /^[a-z][a-z0-9_]*$/;

/** What the compiler cannot see in a topic's declaration. */
export function checkTopic(topic: Topic, name: string): readonly string[] {
  const ids = [
    ...Object.keys(topic.facts).map((id) => `fact ${id}`),
    ...topic.results.map((id) => `result ${id}`),
    ...Object.keys(topic.findings).map((id) => `finding ${id}`),
    ...Object.keys(topic.tables ?? {}).map((id) => `table ${id}`),
    ...Object.keys(topic.charts ?? {}).map((id) => `chart ${id}`),
  ];
  return [
    ...(topic.id === name ? [] : [`its id is "${topic.id}", but the file is called ${name}`]),
    ...ids
      .filter((id) => !PUBLIC_ID.test(id.slice(id.indexOf(" ") + 1)))
      .map((id) => `${id} is not written in small letters, digits and underscores`),
    ...ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `${id} is declared twice`),
    ...Object.entries(topic.facts).flatMap(([id, spec]) =>
      [...checkFact(spec), ...checkExcuse(topic, id, spec)].map((fault) => `fact ${id} ${fault}`),
    ),
  ];
}

function checkExcuse({ facts }: Topic, id: string, { unless }: FactSpec): readonly string[] {
  const isOther = unless === undefined || (unless !== id && Object.hasOwn(facts, unless));
  return isOther ? [] : [`is excused by ${unless}, which is no other fact`];
}

function checkFact(spec: FactSpec): readonly string[] {
  if (spec.type === "choice") {
    const value = spec.default?.value;
    return value === undefined || spec.options.includes(value) ? [] : [`has the default "${value}", not an option`];
  }
  if (spec.type !== "quantity") return [];
  const { min, max, usual = [] } = spec;
  const isInside = (value: number) => value >= min && value <= max;
  const values = [...usual, ...(spec.default ? [spec.default.value] : [])];
  return [
    ...(min < max ? [] : [`has a range from ${min} to ${max}`]),
    ...values.filter((value) => !isInside(value)).map((value) => `offers ${value}, outside its own range`),
  ];
}

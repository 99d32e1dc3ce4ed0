import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parseCommand } from "../../src/conversation/commands.ts";
import { parseRequest } from "../../src/conversation/grammar/parse-request.ts";
import type { Answered, DatumKind, Finding } from "../../src/declaration/answer.ts";
import { missingFacts } from "../../src/declaration/run-topic.ts";
import type { Topic } from "../../src/declaration/topic.ts";
import { LANGUAGES, type Language } from "../../src/messages/language.ts";
import { library } from "../support/ask-library.ts";
import { longestSentence } from "../support/count-words.ts";
import { runOnce } from "../support/run-once.ts";

const ON_DISK = readdirSync(new URL("../../src/topics", import.meta.url))
  .filter((file) => file.endsWith(".ts"))
  .map((file) => file.replace(/\.ts$/, ""));
const SNAKE_CASE = /^[a-z][a-z0-9]*(_[a-z0-9]+)*$/;
const VERDICT_ON_CODE = /complian|comply|complies|cumple con el código/i;
const LONGEST_SENTENCE = 25;

function topicOf(id: string): Topic {
  const topic = library.topics.get(id);
  if (topic === undefined) throw new Error(`no topic ${id}`);
  return topic;
}

function wordsOf(id: string, language: Language) {
  const texts = library.texts[language].topics.get(id);
  if (texts === undefined) throw new Error(`no ${language} sentences for ${id}`);
  return texts;
}

function ask(request: string, language: Language): Answered {
  const { topic, facts, problems } = parseRequest(request, library, { language, units: "us" });
  expect(problems, request).toEqual([]);
  return runOnce(topicOf(topic ?? ""), facts, library);
}

/** Checks that a finding is declared and holds exactly what its declaration says. */
function expectDeclared(topic: Topic, { code, data }: Finding): void {
  const declared = topic.findings[code];
  expect(declared, code).toBeDefined();
  const kinds = Object.entries(data).map(([field, datum]): [string, DatumKind | "text"] => [
    field,
    typeof datum === "string" ? "text" : datum.kind,
  ]);
  const wanted = Object.entries(declared ?? {}).map(([field, kind]) => [
    field,
    ["word", "fact"].includes(kind) ? "text" : kind,
  ]);
  expect(new Map(kinds)).toEqual(new Map(wanted as [string, DatumKind][]));
}

const EXAMPLES = ON_DISK.flatMap((id) =>
  LANGUAGES.flatMap((language) => wordsOf(id, language).examples.map((example) => ({ id, language, example }))),
);

test("every topic on disk is loaded, with its words in both languages", () => {
  expect(ON_DISK.length).toBeGreaterThanOrEqual(4);
  for (const language of LANGUAGES)
    expect([...library.texts[language].topics.keys()].sort()).toEqual([...library.topics.keys()].sort());
  // The fault topic is made from the knowledge, not from a file of its own.
  expect([...library.topics.keys()].sort()).toEqual([...ON_DISK, "fault"].sort());
});

describe.each(ON_DISK)("%s", (id) => {
  const topic = topicOf(id);

  test("has ids in snake_case", () => {
    const ids = [...Object.keys(topic.facts), ...topic.results, ...Object.keys(topic.findings)];
    expect(ids.filter((name) => !SNAKE_CASE.test(name))).toEqual([]);
  });

  test("names the source of every default", () => {
    for (const [fact, { default: assumed }] of Object.entries(topic.facts))
      if (assumed !== undefined) expect(assumed.source.document.length, fact).toBeGreaterThan(2);
  });

  test.each(LANGUAGES)("speaks %s in short sentences and passes no verdict on the code", (language) => {
    const texts = wordsOf(id, language);
    for (const [code, fields] of Object.entries(topic.findings)) {
      const data = Object.fromEntries(Object.keys(fields).map((field) => [field, `<${field}>`]));
      const say = texts.findings[code] as ((data: object) => string) | undefined;
      const sentence = say?.(data) ?? "";
      expect(longestSentence(sentence), sentence).toBeLessThanOrEqual(LONGEST_SENTENCE);
      expect(sentence).not.toMatch(VERDICT_ON_CODE);
      expect(sentence).not.toContain("undefined");
      expect(sentence.length, code).toBeGreaterThan(0);
    }
    for (const { question } of Object.values(texts.facts)) expect(question).toMatch(/\?$/);
  });

  test("says its questions differently in English and Spanish", () => {
    const [en, es] = LANGUAGES.map((language) =>
      Object.values(wordsOf(id, language).facts).map(({ question }) => question),
    );
    expect(en?.filter((question) => es?.includes(question))).toEqual([]);
  });
});

describe.each(EXAMPLES)("$language: $example", { timeout: 120_000 }, ({ id, language, example }) => {
  test("is answered, with declared results, each with equation and source", () => {
    const { topic, result } = ask(example, language);
    expect(topic).toBe(id);
    if (result.kind !== "answer") throw new Error(`not answered: ${JSON.stringify(result)}`);
    // What only looks into the record computes nothing.
    if (topicOf(id).asksAnew !== true) expect(result.results.length).toBeGreaterThan(0);
    for (const { id: name, how } of result.results) {
      expect(topicOf(id).results).toContain(name);
      expect(how.equation.length, name).toBeGreaterThan(0);
      expect(how.sources.length, name).toBeGreaterThan(0);
      for (const { quantity } of how.inputs) expect(Number.isFinite(quantity.value), name).toBe(true);
    }
    const ids = result.results.map(({ id: name }) => name);
    expect(new Set(ids).size).toBe(ids.length);
    for (const finding of [result.headline, ...result.findings, ...(result.next ?? []).map(({ say }) => say)])
      expectDeclared(topicOf(id), finding);
  });

  test("offers next steps that can be typed", () => {
    const { result } = ask(example, language);
    for (const { request } of (result.kind === "answer" && result.next) || []) {
      const command = parseCommand(request);
      if (command?.kind === "form") {
        expect(topicOf(command.what).id).toBe(command.what);
        continue;
      }
      const { topic: next = "", facts, problems } = parseRequest(request, library, { language, units: "us" });
      expect(problems, request).toEqual([]);
      // Long work is only read: every topic's own tests run its next steps.
      if (topicOf(next).work === "long") expect(missingFacts(topicOf(next), facts), request).toEqual([]);
      else expect(["answer", "needs-facts"], request).toContain(ask(request, language).result.kind);
    }
  });
});

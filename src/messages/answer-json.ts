import type { RequestProblem } from "../conversation/grammar/parse-request.ts";
import type {
  Answer,
  Answered,
  Finding,
  FindingDatum,
  NeedsFacts,
  OutOfRange,
  RaisedCaution,
  Result,
  Severity,
  Verdict,
} from "../declaration/answer.ts";
import type { FactOrigin, FactValue, KnownFacts } from "../declaration/facts.ts";
import type { Library } from "../library.ts";
import { QUANTITY_KINDS } from "../units/quantity-kinds.ts";
import { buildCautionBlock } from "./build-caution-blocks.ts";
import { showResult } from "./build-how-card.ts";
import { buildTableBlock } from "./build-table-blocks.ts";
import { sayMissing, sayOutOfRange, sayProblem } from "./say-problem.ts";
import {
  COMMON,
  factOf,
  type Reader,
  sayFinding,
  saySource,
  showValue,
  speakOf,
  type TopicVoice,
  voiceFor,
} from "./voice.ts";

/** A number in its base unit; the ids and this shape are a public interface. */
interface NumberJson {
  readonly value: number;
  readonly unit: string;
}
interface FactJson {
  readonly value: FactValue;
  readonly unit: string;
  readonly from: FactOrigin;
  readonly text: string;
}
interface QuantityJson {
  readonly value: number | string;
  readonly unit: string;
  readonly up_to?: number;
  readonly text: string;
  readonly source: string;
}
interface FindingJson {
  readonly code: string;
  readonly data: Readonly<Record<string, NumberJson | string>>;
  readonly text: string;
}
interface CautionJson {
  readonly id: string;
  readonly severity: Severity;
  readonly cites: readonly string[];
  readonly text: string;
  /** What a local amendment has done to it, and why. */
  readonly local?: { readonly action: string; readonly by: string; readonly because: string };
}
interface TableJson {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}
interface Common {
  readonly topic: string;
  readonly facts: Readonly<Record<string, FactJson>>;
}
export interface AnswerJson extends Common {
  readonly kind: "answer";
  readonly verdict: Verdict;
  readonly headline: FindingJson;
  readonly quantities: Readonly<Record<string, QuantityJson>>;
  readonly findings: readonly FindingJson[];
  readonly cautions: readonly CautionJson[];
  /** Cautions that a local amendment silences, where the topic tells of them. */
  readonly silenced?: readonly CautionJson[];
  readonly tables: Readonly<Record<string, TableJson>>;
}
export interface NeedsFactsJson extends Common {
  readonly kind: "needs-facts";
  /** `unless`: telling this other fact does as well. */
  readonly missing: readonly { readonly fact: string; readonly text: string; readonly unless?: string }[];
  readonly text: string;
}
export interface OutOfRangeJson extends Common {
  readonly kind: "out-of-range";
  readonly fact: string;
  readonly value: number | string;
  readonly unit: string;
  readonly min?: number;
  readonly max?: number;
  readonly text: string;
}
/** A request that could not be read; `topic` is empty when even that is unknown. */
export interface ProblemsJson {
  readonly topic: string;
  readonly kind: "not-understood";
  readonly problems: readonly (RequestProblem & { readonly text: string })[];
  readonly text: string;
}

/** What one question came to, as the object that scripts read. */
export function answerToJson(
  answered: Answered,
  library: Library,
  reader: Reader,
): AnswerJson | NeedsFactsJson | OutOfRangeJson {
  const voice = speakOf(voiceFor(library, reader), answered.topic);
  const { topic, result } = answered;
  const facts = factsJson(voice, answered.facts);
  switch (result.kind) {
    case "answer":
      return { topic, ...answerJson(voice, result, answered, facts) };
    case "needs-facts":
      return { topic, ...needsJson(voice, result), facts };
    case "out-of-range":
      return { topic, ...rangeJson(voice, result), facts };
  }
}

/** What was wrong with a request, as the object that scripts read. */
export function problemsToJson(
  topic: string | undefined,
  problems: readonly RequestProblem[],
  library: Library,
  reader: Reader,
): ProblemsJson {
  const common = COMMON[reader.language];
  const say = (problem: RequestProblem): string => {
    if (topic !== undefined) return sayProblem(speakOf(voiceFor(library, reader), topic), problem);
    return problem.kind === "unknown-word" ? common.unknownWordAlone(problem.word) : common.notUnderstood;
  };
  const worded = problems.map((problem) => ({ ...problem, text: say(problem) }));
  const text = worded.length === 0 ? common.notUnderstood : worded.map((one) => one.text).join(" ");
  return { topic: topic ?? "", kind: "not-understood", problems: worded, text };
}

function answerJson(
  voice: TopicVoice,
  answer: Answer,
  { cautions, silenced }: Answered,
  facts: Common["facts"],
): Omit<AnswerJson, "topic"> {
  return {
    kind: "answer",
    verdict: answer.verdict,
    headline: findingJson(voice, answer.headline),
    facts,
    quantities: Object.fromEntries(answer.results.map((result) => [result.id, quantityJson(voice, result)])),
    findings: answer.findings.map((finding) => findingJson(voice, finding)),
    cautions: cautions.map((caution) => cautionJson(voice, caution)),
    ...(silenced !== undefined && { silenced: silenced.map((caution) => cautionJson(voice, caution)) }),
    tables: Object.fromEntries(
      (answer.tables ?? []).map((table) => {
        const { caption, columns, rows } = buildTableBlock(voice, table);
        return [table.id, { title: caption, columns, rows }];
      }),
    ),
  };
}

function cautionJson(voice: TopicVoice, caution: RaisedCaution): CautionJson {
  const { id, severity, cites, local } = caution;
  return {
    id,
    severity,
    cites: cites.map((source) => saySource(voice, source)),
    text: buildCautionBlock(voice, caution).text,
    ...(local && {
      local: { action: local.action, by: saySource(voice, local.by), because: local.because[voice.language] },
    }),
  };
}

function needsJson(voice: TopicVoice, { missing }: NeedsFacts): Omit<NeedsFactsJson, keyof Common> {
  return {
    kind: "needs-facts",
    missing: missing.map((fact) => {
      const { spec, words } = factOf(voice, fact);
      return { fact, text: words.question, ...(spec.unless !== undefined && { unless: spec.unless }) };
    }),
    text: sayMissing(voice, missing),
  };
}

function rangeJson(voice: TopicVoice, refused: OutOfRange): Omit<OutOfRangeJson, keyof Common> {
  const { fact, value, min, max } = refused;
  return {
    kind: "out-of-range",
    fact,
    ...(typeof value === "string"
      ? { value, unit: "" }
      : { value: value.value, unit: QUANTITY_KINDS[value.kind].base }),
    ...(min !== undefined && { min }),
    ...(max !== undefined && { max }),
    text: sayOutOfRange(voice, refused),
  };
}

function factsJson(voice: TopicVoice, facts: KnownFacts): Readonly<Record<string, FactJson>> {
  return Object.fromEntries(
    Object.entries(facts).map(([id, known]) => {
      const fact = factOf(voice, id);
      const unit = fact.spec.type === "quantity" ? QUANTITY_KINDS[fact.spec.quantity].base : "";
      return [id, { value: known.value, unit, from: known.from, text: showValue(voice, fact, known.value) }];
    }),
  );
}

function quantityJson(voice: TopicVoice, result: Result): QuantityJson {
  const source = result.how.sources.map((one) => saySource(voice, one)).join("; ");
  const text = showResult(voice, result);
  if ("name" in result) return { value: result.name, unit: "", text, source };
  const { kind, value } = result.quantity;
  const unit = QUANTITY_KINDS[kind].base;
  return { value, unit, ...(result.upTo !== undefined && { up_to: result.upTo }), text, source };
}

function findingJson(voice: TopicVoice, finding: Finding): FindingJson {
  const data = Object.entries(finding.data).map(([field, datum]): [string, NumberJson | string] => [
    field,
    datumJson(datum),
  ]);
  return { code: finding.code, data: Object.fromEntries(data), text: sayFinding(voice, finding) };
}

function datumJson(datum: FindingDatum): NumberJson | string {
  return typeof datum === "string" ? datum : { value: datum.value, unit: QUANTITY_KINDS[datum.kind].base };
}

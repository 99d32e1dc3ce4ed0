import type { Answer, Answered, Finding, Result } from "../declaration/answer.ts";
import type { KnownFact, KnownFacts } from "../declaration/facts.ts";
import type { Source } from "../declaration/source.ts";
import type { Quantity } from "../units/quantity-kinds.ts";
import {
  buildCautionBlocks,
  buildSilencedTable,
  buildStandingBlocks,
  type CautionSetting,
} from "./build-caution-blocks.ts";
import { buildFindingHazard } from "./build-hazard-block.ts";
import { buildHistoryBlocks } from "./build-history-blocks.ts";
import { labelOf, showResult } from "./build-how-card.ts";
import { buildJobBlocks } from "./build-job-blocks.ts";
import { buildRecordBlocks } from "./build-record-blocks.ts";
import { buildChartBlock, buildTableBlock } from "./build-table-blocks.ts";
import type { Block, Button, ButtonsBlock, Card, Row, RowsBlock, TableBlock, TextBlock } from "./card.ts";
import { sayDayRead } from "./say-day.ts";
import {
  type FactVoice,
  factOf,
  sayDefaultSource,
  sayFinding,
  showQuantity,
  showValue,
  type TopicVoice,
  wasReadAs,
} from "./voice.ts";

/** What surrounds an answer in a conversation. */
export interface AnswerSetting {
  /** Id that the answer's buttons carry. */
  readonly walk: string;
  /** Said before the answer: what changed, what was set aside. */
  readonly notes: readonly TextBlock[];
  /** The numbers of the answer that this one replaces. */
  readonly before?: Readonly<Record<string, Quantity>>;
  /** What was said and done about cautions here before; left out where there is no conversation. */
  readonly cautions?: CautionSetting;
  /** Offered last, such as going on with a walk that waits. */
  readonly offers: readonly Button[];
}

/** So many assumed facts stand open; more, each with its button, would keep a thumb busy. */
const MOST_OPEN_ASSUMED = 4;

/**
 * Shows an answer: verdict and headline first, then numbers, findings, cautions, what next and what was told; then the
 * pictures and, as details, what the topic calls asides and what was assumed.
 */
export function buildAnswerCard(voice: TopicVoice, answered: Answered, answer: Answer, setting: AnswerSetting): Card {
  const headline = sayFinding(voice, answer.headline);
  const word = voice.common.verdicts[answer.verdict];
  const stops = answered.cautions.filter(({ severity }) => severity === "stop");
  const others = answered.cautions.filter(({ severity }) => severity !== "stop");
  const { results, findings, tables } = partAsides(voice, answer);
  const blocks: Block[] = [
    ...buildStandingBlocks(voice, setting.cautions),
    ...setting.notes,
    { kind: "headline", text: headline },
    // A danger to life comes before any number; the rest follows the findings it belongs to.
    ...stops.flatMap((caution) => buildCautionBlocks(voice, caution, setting.walk, setting.cautions)),
    ...resultRows(voice, results.open, setting.before),
    ...findings.open.map((finding) => buildFindingHazard(voice, finding) ?? plain(sayFinding(voice, finding))),
    ...tables.open.map((table) => buildTableBlock(voice, table)),
    ...others.flatMap((caution) => buildCautionBlocks(voice, caution, setting.walk, setting.cautions)),
    ...buildSilencedTable(voice, answered.silenced ?? []),
    ...(answer.job === undefined ? [] : buildJobBlocks(voice, answer.job)),
    ...(answer.history === undefined ? [] : buildHistoryBlocks(voice, answer.history)),
    ...(answer.record === undefined ? [] : buildRecordBlocks(voice, answer.record)),
    ...lastButtons(voice, answer, setting),
    ...(voice.topic.asksAnew === true ? [] : toldRows(voice, answered.facts)),
    ...(answer.charts ?? []).map((chart) => buildChartBlock(voice, chart)),
    ...resultRows(voice, results.aside, setting.before).map(
      (rows): RowsBlock => ({ ...rows, heading: voice.common.moreNumbers, isDetail: true }),
    ),
    ...sayAsides(voice, findings.aside),
    ...tables.aside.map((table): TableBlock => ({ ...buildTableBlock(voice, table), isDetail: true })),
    ...assumedBlocks(voice, answered.facts, answer.assumed ?? {}, setting.walk),
  ];
  return {
    verdict: { kind: answer.verdict, word },
    title: voice.words.title,
    blocks,
    summary: voice.common.verdictSummary(word, headline),
  };
}

/** What the topic says stands aside, apart from the rest. */
function partAsides({ topic }: TopicVoice, { results, findings, tables = [] }: Answer) {
  const { asides } = topic;
  return {
    results: part(results, asides?.results, ({ id }) => id),
    findings: part(findings, asides?.findings, ({ code }) => code),
    tables: part(tables, asides?.tables, ({ id }) => id),
  };
}

function part<T>(all: readonly T[], asides: readonly string[] = [], idOf: (one: T) => string) {
  const isAside = (one: T) => asides.includes(idOf(one));
  return { open: all.filter((one) => !isAside(one)), aside: all.filter(isAside) };
}

function sayAsides(voice: TopicVoice, findings: readonly Finding[]): readonly TextBlock[] {
  if (findings.length === 0) return [];
  const heading: TextBlock = { kind: "text", tone: "heading", text: voice.common.howCounted };
  return [heading, ...findings.map((finding) => plain(sayFinding(voice, finding)))].map(
    (block): TextBlock => ({ ...block, isDetail: true }),
  );
}

function resultRows(
  voice: TopicVoice,
  results: readonly Result[],
  before: Readonly<Record<string, Quantity>> | undefined,
): RowsBlock[] {
  if (results.length === 0) return [];
  const rows = results.map((result): Row => {
    const value = showResult(voice, result);
    const old = before?.[result.id];
    const was = old === undefined || "name" in result || result.upTo !== undefined ? value : showQuantity(voice, old);
    return { label: labelOf(voice, result), value, ...(was !== value && { note: voice.common.was(was) }) };
  });
  return [{ kind: "rows", rows }];
}

function toldRows(voice: TopicVoice, facts: KnownFacts): RowsBlock[] {
  const told = listedFacts(voice, facts).filter(({ known }) => known.from !== "assumed");
  return rowsUnder(
    voice.common.countedWith,
    told.map(({ fact, known }) => factRow(voice, fact, known, toldNote(voice, fact, known))),
  );
}

function assumedBlocks(
  voice: TopicVoice,
  facts: KnownFacts,
  taken: NonNullable<Answer["assumed"]>,
  walk: string,
): Block[] {
  const assumed = listedFacts(voice, facts).filter(({ known }) => known.from === "assumed");
  const change: Button[] = assumed.map(({ fact }) => ({
    label: voice.common.change(fact.words.label),
    say: voice.common.say.change(fact.id),
    aim: { walk, fact: fact.id },
  }));
  const rows = rowsUnder(
    voice.common.assumed,
    assumed.map(({ fact, known }) => factRow(voice, fact, known, assumedNote(voice, fact, taken[fact.id]?.source))),
  );
  const blocks = [...rows, ...(change.length === 0 ? [] : [buttons(change)])];
  return assumed.length <= MOST_OPEN_ASSUMED ? blocks : blocks.map((block) => ({ ...block, isDetail: true as const }));
}

/** What a guide asked stands in the answer's own table. */
function listedFacts(voice: TopicVoice, facts: KnownFacts) {
  return Object.entries(facts)
    .map(([id, known]) => ({ fact: factOf(voice, id), known }))
    .filter(({ fact }) => fact.spec.unlisted !== true);
}

function rowsUnder(heading: string, rows: readonly Row[]): RowsBlock[] {
  return rows.length === 0 ? [] : [{ kind: "rows", heading, rows }];
}

function factRow(voice: TopicVoice, fact: FactVoice, known: KnownFact, note: string | undefined): Row {
  const value = showValue(voice, fact, known.value);
  return { label: fact.words.label, value, ...(note !== undefined && { note }) };
}

function toldNote(voice: TopicVoice, fact: FactVoice, known: KnownFact): string | undefined {
  if (known.from === "job") return voice.common.fromJob;
  if (known.from === "catalogue") return voice.common.fromCatalogue;
  if (fact.spec.type === "day") return sayDayRead(voice, fact, known);
  if (!wasReadAs(voice, fact, known)) return undefined;
  return voice.common.readAs(known.typed ?? "", showValue(voice, fact, known.value));
}

function assumedNote(voice: TopicVoice, fact: FactVoice, taken: Source | undefined): string | undefined {
  const source = taken ?? fact.spec.default?.source;
  return source === undefined ? undefined : sayDefaultSource(voice, source);
}

function lastButtons(voice: TopicVoice, answer: Answer, setting: AnswerSetting): ButtonsBlock[] {
  const { common } = voice;
  const next = (answer.next ?? []).map(
    (step): Button => ({
      label: sayFinding(voice, step.say),
      say: step.request,
      ...(step.follows && { aim: { walk: setting.walk, fact: "*" } }),
    }),
  );
  const how: Button = { label: common.how, say: common.say.how(), aim: { walk: setting.walk, fact: "*" } };
  return [
    buttons([
      ...next,
      ...(answer.results.length === 0 || voice.topic.asksAnew === true ? [] : [how]),
      ...setting.offers,
    ]),
  ].filter((block) => block.buttons.length > 0);
}

function buttons(list: readonly Button[]): ButtonsBlock {
  return { kind: "buttons", buttons: list };
}

function plain(text: string): TextBlock {
  return { kind: "text", tone: "plain", text };
}

import type { Answer, Answered, Result } from "../declaration/answer.ts";
import type { KnownFact, KnownFacts } from "../declaration/facts.ts";
import type { Source } from "../declaration/source.ts";
import type { Quantity } from "../units/quantity-kinds.ts";
import {
  buildCautionBlocks,
  buildSilencedTable,
  buildStandingBlocks,
  type CautionSetting,
} from "./build-caution-blocks.ts";
import { labelOf, showResult } from "./build-how-card.ts";
import { buildChartBlock, buildTableBlock } from "./build-table-blocks.ts";
import type { Block, Button, ButtonsBlock, Card, Row, RowsBlock, TextBlock } from "./card.ts";
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

/** Shows an answer: verdict and headline first, then numbers, findings, cautions, what next, and what was taken. */
export function buildAnswerCard(voice: TopicVoice, answered: Answered, answer: Answer, setting: AnswerSetting): Card {
  const headline = sayFinding(voice, answer.headline);
  const word = voice.common.verdicts[answer.verdict];
  const stops = answered.cautions.filter(({ severity }) => severity === "stop");
  const others = answered.cautions.filter(({ severity }) => severity !== "stop");
  const blocks: Block[] = [
    ...buildStandingBlocks(voice, setting.cautions),
    ...setting.notes,
    { kind: "headline", text: headline },
    // A danger to life comes before any number; the rest follows the findings it belongs to.
    ...stops.flatMap((caution) => buildCautionBlocks(voice, caution, setting.walk, setting.cautions)),
    ...resultRows(voice, answer.results, setting.before),
    ...answer.findings.map((finding): TextBlock => plain(sayFinding(voice, finding))),
    ...(answer.tables ?? []).map((table) => buildTableBlock(voice, table)),
    ...(answer.charts ?? []).map((chart) => buildChartBlock(voice, chart)),
    ...others.flatMap((caution) => buildCautionBlocks(voice, caution, setting.walk, setting.cautions)),
    ...buildSilencedTable(voice, answered.silenced ?? []),
    ...lastButtons(voice, answer, setting),
    ...factBlocks(voice, answered.facts, answer.assumed ?? {}, setting.walk),
  ];
  return {
    verdict: { kind: answer.verdict, word },
    title: voice.words.title,
    blocks,
    summary: voice.common.verdictSummary(word, headline),
  };
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

function factBlocks(
  voice: TopicVoice,
  facts: KnownFacts,
  taken: NonNullable<Answer["assumed"]>,
  walk: string,
): Block[] {
  // What a guide asked stands in the answer's own table.
  const entries = Object.entries(facts)
    .map(([id, known]) => ({ fact: factOf(voice, id), known }))
    .filter(({ fact }) => fact.spec.unlisted !== true);
  const told = entries.filter(({ known }) => known.from !== "assumed");
  const assumed = entries.filter(({ known }) => known.from === "assumed");
  const change: Button[] = assumed.map(({ fact }) => ({
    label: voice.common.change(fact.words.label),
    say: voice.common.say.change(fact.id),
    aim: { walk, fact: fact.id },
  }));
  return [
    ...rowsUnder(
      voice.common.countedWith,
      told.map(({ fact, known }) => factRow(voice, fact, known, toldNote(voice, fact, known))),
    ),
    ...rowsUnder(
      voice.common.assumed,
      assumed.map(({ fact, known }) => factRow(voice, fact, known, assumedNote(voice, fact, taken[fact.id]?.source))),
    ),
    ...(change.length === 0 ? [] : [buttons(change)]),
  ];
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
  return [buttons([...next, ...(answer.results.length === 0 ? [] : [how]), ...setting.offers])].filter(
    (block) => block.buttons.length > 0,
  );
}

function buttons(list: readonly Button[]): ButtonsBlock {
  return { kind: "buttons", buttons: list };
}

function plain(text: string): TextBlock {
  return { kind: "text", tone: "plain", text };
}

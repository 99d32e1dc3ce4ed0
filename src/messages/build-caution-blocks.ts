import type { RaisedCaution } from "../declaration/answer.ts";
import { citeSource } from "../declaration/source.ts";
import type { KeptMark } from "../ports/store.ts";
import type { Block, Button, ButtonsBlock, CautionBlock, TableBlock } from "./card.ts";
import { formatMoment } from "./format-moment.ts";
import { problem, quiet } from "./notes.ts";
import { saySource, showDatum, type Voice } from "./voice.ts";

/** As much of a caution as its sentence needs. */
type Sayable = Pick<RaisedCaution, "id" | "severity" | "data"> & Partial<Pick<RaisedCaution, "local">>;

/** What was said and done about cautions in a conversation before this answer. */
export interface CautionSetting {
  readonly marks: readonly KeptMark[];
  readonly timeZone: string;
  /** Those that were shown here in full already. */
  readonly before: readonly Shown[];
  /** Stop cautions of earlier answers that still stand: each opens the answer, so that it is not passed over. */
  readonly standing: readonly Shown[];
}
/** A caution with the id of the walk or request whose answer shows it. */
type Shown = Sayable & { readonly walk: string };

/** What a button says of a caution stays this short, so that several fit on a phone [characters]. */
const LONGEST_LABEL = 44;

/** The data of a caution written down: with other data it must be seen anew. */
export function aboutOf({ data }: Pick<RaisedCaution, "data">): string {
  return JSON.stringify(data);
}

/** A caution in words: what it asks, how to show it is met, who says so and who decides. */
export function buildCautionBlock(voice: Voice, caution: RaisedCaution): CautionBlock {
  const { common, language } = voice;
  const { local } = caution;
  const cites = caution.cites.map((source) => saySource(voice, source)).join("; ");
  const because = local && common.localAmendment(citeSource(local.by), local.because[language]);
  return {
    kind: "caution",
    severity: caution.severity,
    word: common.severities[caution.severity],
    text: [sayCaution(voice, caution), ...(because === undefined ? [] : [because])].join(" "),
    show: textsOf(voice, caution).show,
    cites: `${cites}. ${common.deciders[caution.decides]}`,
  };
}

/**
 * A caution on the card of an answer: in full with the button that records it as seen; in one line once that was done,
 * or where a should or a note was said before with the same numbers.
 */
export function buildCautionBlocks(
  voice: Voice,
  caution: RaisedCaution,
  walk: string,
  setting: CautionSetting | undefined,
): readonly Block[] {
  const block = buildCautionBlock(voice, caution);
  if (setting === undefined) return [block];
  const mark = markOf(caution, setting.marks);
  if (mark !== undefined) return [quiet(sayMark(voice, caution, mark, setting.timeZone))];
  const wasSaid = setting.before.some((one) => one.id === caution.id && aboutOf(one) === aboutOf(caution));
  const mayShrink = caution.severity === "should" || caution.severity === "note";
  if (wasSaid && mayShrink) return [quiet(voice.common.saidBefore(block.word, sayBriefly(voice, caution)))];
  return [block, seenButtons(voice, [{ ...caution, walk }])];
}

/** Stop cautions of earlier answers, a line each: with the button, or with who skipped it and why. */
export function buildStandingBlocks(voice: Voice, setting: CautionSetting | undefined): readonly Block[] {
  if (setting === undefined) return [];
  return setting.standing.flatMap((caution): Block[] => {
    const mark = markOf(caution, setting.marks);
    if (mark !== undefined) return [quiet(sayMark(voice, caution, mark, setting.timeZone))];
    const text = voice.common.stillStands(voice.common.severities[caution.severity], sayBriefly(voice, caution));
    return [problem(text), seenButtons(voice, [caution])];
  });
}

/** Cautions that a local amendment silences, with why: nothing is left out without being said. */
export function buildSilencedTable(voice: Voice, silenced: readonly RaisedCaution[]): readonly TableBlock[] {
  if (silenced.length === 0) return [];
  const { common, language } = voice;
  const rows = silenced.map((caution) => [
    sayCaution(voice, { ...caution, local: undefined }),
    caution.local?.because[language] ?? "",
    caution.local === undefined ? "" : saySource(voice, caution.local.by),
  ]);
  return [{ kind: "table", caption: common.silencedTitle, columns: common.silencedColumns, rows }];
}

/** The button of each caution that records it as seen and done. */
export function seenButtons(voice: Voice, cautions: readonly Shown[]): ButtonsBlock {
  const buttons = cautions.map((caution): Button => {
    const { id, walk } = caution;
    const label = cautions.length === 1 ? voice.common.seenDone : voice.common.seenDoneOf(shorten(voice, caution));
    return { label, say: voice.common.say.seen(id), aim: { walk, fact: "*" } };
  });
  return { kind: "buttons", buttons };
}

function shorten(voice: Voice, caution: Sayable): string {
  const said = sayBriefly(voice, caution);
  return said.length <= LONGEST_LABEL ? said : `${said.slice(0, LONGEST_LABEL).trimEnd()}…`;
}

/** The first sentence of a caution: what these facts show. */
export function sayBriefly(voice: Voice, caution: Sayable): string {
  return /^.*?[.!?](?=\s|$)/.exec(sayCaution(voice, caution))?.[0] ?? sayCaution(voice, caution);
}

/** What was last done about a caution with this data, unless it was taken back. */
export function markOf(caution: Sayable, marks: readonly KeptMark[]): KeptMark | undefined {
  const about = aboutOf(caution);
  const mark = marks.find((one) => one.caution === caution.id && one.about === about);
  return mark?.act === "unseen" ? undefined : mark;
}

function sayMark(voice: Voice, caution: Sayable, mark: KeptMark, timeZone: string): string {
  const { common } = voice;
  const what = `${common.severities[caution.severity]}: ${sayBriefly(voice, caution)}`;
  const when = formatMoment(common, mark.at_ms, timeZone);
  return mark.act === "skipped"
    ? common.skippedBy(mark.by, when, mark.because ?? "", what)
    : common.seenBy(mark.by, when, what);
}

function sayCaution(
  voice: Voice,
  caution: Omit<Sayable, "local"> & { readonly local?: Sayable["local"] | undefined },
): string {
  const data = Object.entries(caution.data).map(([field, datum]): [string, string] => [field, showDatum(voice, datum)]);
  const { local } = caution;
  const own = textsOf(voice, caution).ask(Object.fromEntries(data));
  const asks = local?.asks?.[voice.language];
  if (asks === undefined) return own;
  return local?.action === "replace" ? asks : `${own} ${asks}`;
}

function textsOf(voice: Voice, { id }: Pick<RaisedCaution, "id">) {
  const texts = voice.texts.cautions.get(id);
  if (texts === undefined) throw new Error(`no sentences for the caution ${id}`);
  return texts;
}

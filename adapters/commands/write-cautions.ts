import { type AnyCaution, type Citation, raiseCautions, WORST_FIRST } from "../../src/cautions/caution.ts";
import { CODE_AREAS, type Code, LIMITS, type LimitId, underPlumbingFamily } from "../../src/cautions/code.ts";
import { citeSource } from "../../src/declaration/source.ts";
import type { Library } from "../../src/library.ts";
import { buildCautionBlock } from "../../src/messages/build-caution-blocks.ts";
import { type Reader, showQuantity, type Voice, voiceFor } from "../../src/messages/voice.ts";
import { CAUTION_PAGE_TEXTS } from "./caution-page-texts.ts";
import { markdownTable } from "./markdown-table.ts";

/** The page of every caution: what it asks, who says so and how sure we are, who decides, and its own cases. */
export function writeCautionsPage(library: Library, code: Code, reader: Reader): string {
  const voice = voiceFor(library, reader);
  const texts = CAUTION_PAGE_TEXTS[reader.language];
  const adopted = CODE_AREAS.map((area) => [
    texts.areas[area],
    `${code.adopted[area].family} ${code.adopted[area].edition}`,
  ]);
  const sorted = [...library.cautions].sort(
    (a, b) => WORST_FIRST.indexOf(a.severity) - WORST_FIRST.indexOf(b.severity) || a.id.localeCompare(b.id),
  );
  const parts = [
    `# ${texts.title}`,
    texts.intro,
    `## ${texts.adopted}`,
    ...(code.isAssumed ? [texts.assumed] : []),
    markdownTable([texts.area, texts.code], adopted),
    `## ${texts.limits}`,
    markdownTable([texts.limit, texts.value, texts.followed, texts.others], limitRows(voice, code)),
    `## ${texts.cautions(sorted.length)}`,
    ...sorted.map((caution) => writeCaution(voice, code, caution)),
  ];
  return `${parts.join("\n\n")}\n`;
}

/** A caution as it reads in the first of its own examples. */
function writeCaution(voice: Voice, code: Code, caution: AnyCaution): string {
  const { id, decides, examples } = caution;
  const texts = CAUTION_PAGE_TEXTS[voice.language];
  // What a book silences is listed all the same, as it would read.
  const amendments = code.amendments.filter(({ action }) => action !== "silence");
  const [{ site, plumbing }] = examples.fires;
  const [raised] = raiseCautions([caution], site, underPlumbingFamily({ ...code, amendments }, plumbing));
  if (raised === undefined) throw new Error(`the first example of the caution ${id} does not raise it`);
  const block = buildCautionBlock(voice, raised);
  const silenced = code.amendments.find((one) => one.caution === id && one.action === "silence");
  const names = (list: typeof examples.fires) => list.map(({ name }) => name).join("; ");
  return [
    `### ${block.word}: \`${id}\``,
    block.text,
    ...(block.show === undefined ? [] : [block.show]),
    markdownTable(
      [texts.document, texts.basis, texts.checkedOn],
      caution.cites.map((one) => citeRow(voice, one)),
    ),
    [
      `- ${voice.common.deciders[decides]}`,
      `- ${texts.fires}: ${names(examples.fires)}`,
      `- ${texts.silent}: ${names(examples.silent)}`,
      ...(silenced
        ? [`- ${voice.common.silencedTitle}: ${silenced.because[voice.language]} (${citeSource(silenced.cites)})`]
        : []),
    ].join("\n"),
  ].join("\n\n");
}

function citeRow(voice: Voice, cites: Citation): readonly string[] {
  return [citeSource(cites), voice.common.basis[cites.basis], cites.checkedOn];
}

function limitRows(voice: Voice, code: Code): readonly (readonly string[])[] {
  return (Object.keys(LIMITS) as readonly LimitId[]).map((id) => {
    const { value, bound, cites, others = [] } = code.limits[id];
    const show = (number: number) => showQuantity(voice, { kind: LIMITS[id], value: number });
    const texts = CAUTION_PAGE_TEXTS[voice.language];
    const rest = others.map((one) => `${show(one.value)}: ${citeSource(one.cites)}`).join("; ");
    const followed = `${citeSource(cites)} (${voice.common.basis[cites.basis]}, ${cites.checkedOn})`;
    return [`\`${id}\``, texts.bounds[bound](show(value)), followed, rest];
  });
}

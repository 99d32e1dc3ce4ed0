import type { AnyCaution } from "../../src/cautions/caution.ts";
import type { Library } from "../../src/library.ts";
import { buildCautionBlock } from "../../src/messages/build-answer-card.ts";
import { sayAllowed, sayWhenUnsaid } from "../../src/messages/say-problem.ts";
import { factOf, type Reader, speakOf, type TopicVoice, type Voice, voiceFor } from "../../src/messages/voice.ts";
import { MANUAL_TEXTS } from "./manual-texts.ts";

/** The manual of everything in the library, in Markdown: one chapter a topic, then the cautions. */
export function writeManual(library: Library, reader: Reader): string {
  const voice = voiceFor(library, reader);
  const texts = MANUAL_TEXTS[reader.language];
  const topics = [...library.topics.keys()].map((id) => writeTopic(speakOf(voice, id)));
  const cautions = library.cautions.map((caution) => writeCaution(voice, caution));
  const parts = [`# ${texts.title}`, texts.intro, ...topics, `## ${texts.cautions}`, texts.cautionsIntro, ...cautions];
  return `${parts.join("\n\n")}\n`;
}

function writeTopic(voice: TopicVoice): string {
  const { words, topic } = voice;
  const texts = MANUAL_TEXTS[voice.language];
  const facts = Object.keys(topic.facts).map((id) => {
    const fact = factOf(voice, id);
    const said = fact.words.words.join(", ");
    return [code(id), fact.words.label, sayAllowed(voice, fact), sayWhenUnsaid(voice, fact), said];
  });
  const results = topic.results.map((id) => [code(id), words.results[id] ?? ""]);
  return [
    `## ${words.title} (${code(topic.id)})`,
    words.summary,
    ["```", ...words.examples, "```"].join("\n"),
    `### ${texts.facts}`,
    table([texts.id, texts.meaning, texts.allowed, texts.unsaid, texts.words], facts),
    `### ${texts.results}`,
    table([texts.id, texts.meaning], results),
  ].join("\n\n");
}

/** A caution as it reads in the first of its own examples. */
function writeCaution(voice: Voice, caution: AnyCaution): string {
  const { id, severity, cites, decides } = caution;
  const data = caution.check(caution.examples.fires[0].site);
  if (data === undefined) throw new Error(`the first example of the caution ${id} does not raise it`);
  const block = buildCautionBlock(voice, { id, severity, cites, decides, data });
  return [`### ${block.word}: ${code(id)}`, block.text, ...(block.show ? [block.show] : []), block.cites].join("\n\n");
}

function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;
  return [line(heads), line(heads.map(() => "---")), ...rows.map(line)].join("\n");
}

function code(id: string): string {
  return `\`${id}\``;
}

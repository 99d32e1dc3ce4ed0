import { type AnyCaution, raiseCautions } from "../../src/cautions/caution.ts";
import { type Code, underPlumbingFamily } from "../../src/cautions/code.ts";
import { listedFacts } from "../../src/declaration/run-topic.ts";
import type { Library } from "../../src/library.ts";
import { buildCautionBlock } from "../../src/messages/build-caution-blocks.ts";
import { sayAllowed, sayWhenUnsaid } from "../../src/messages/say-problem.ts";
import { factOf, type Reader, speakOf, type TopicVoice, type Voice, voiceFor } from "../../src/messages/voice.ts";
import { MANUAL_TEXTS } from "./manual-texts.ts";
import { markdownTable } from "./markdown-table.ts";

/** The manual of everything in the library, in Markdown: one chapter a topic, then the cautions. */
export function writeManual(library: Library, code: Code, reader: Reader): string {
  const voice = voiceFor(library, reader);
  const texts = MANUAL_TEXTS[reader.language];
  const topics = [...library.topics.keys()].map((id) => writeTopic(speakOf(voice, id)));
  const cautions = library.cautions.map((caution) => writeCaution(voice, { ...code, amendments: [] }, caution));
  const parts = [`# ${texts.title}`, texts.intro, ...topics, `## ${texts.cautions}`, texts.cautionsIntro, ...cautions];
  return `${parts.join("\n\n")}\n`;
}

function writeTopic(voice: TopicVoice): string {
  const { words, topic } = voice;
  const texts = MANUAL_TEXTS[voice.language];
  const facts = listedFacts(topic).map((id) => {
    const fact = factOf(voice, id);
    const said = fact.words.words.join(", ");
    return [codeSpan(id), fact.words.label, sayAllowed(voice, fact), sayWhenUnsaid(voice, fact), said];
  });
  const results = topic.results.map((id) => [codeSpan(id), words.results[id] ?? ""]);
  return [
    `## ${words.title} (${codeSpan(topic.id)})`,
    words.summary,
    ["```", ...words.examples, "```"].join("\n"),
    `### ${texts.facts}`,
    markdownTable([texts.id, texts.meaning, texts.allowed, texts.unsaid, texts.words], facts),
    `### ${texts.results}`,
    markdownTable([texts.id, texts.meaning], results),
  ].join("\n\n");
}

/** A caution as it reads in the first of its own examples. */
function writeCaution(voice: Voice, modelCode: Code, caution: AnyCaution): string {
  const [{ site, plumbing }] = caution.examples.fires;
  const [raised] = raiseCautions([caution], site, underPlumbingFamily(modelCode, plumbing));
  if (raised === undefined) throw new Error(`the first example of the caution ${caution.id} does not raise it`);
  const block = buildCautionBlock(voice, raised);
  return [
    `### ${block.word}: ${codeSpan(caution.id)}`,
    block.text,
    ...(block.show ? [block.show] : []),
    block.cites,
  ].join("\n\n");
}

function codeSpan(id: string): string {
  return `\`${id}\``;
}

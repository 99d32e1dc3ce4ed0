import { listedFacts } from "../declaration/run-topic.ts";
import type { Button, Card, Row } from "./card.ts";
import { sayAllowed, sayWhenUnsaid } from "./say-problem.ts";
import { examplesOf, type FactVoice, factOf, speakOf, type TopicVoice, type Voice } from "./voice.ts";

/** Everything that can be asked, one example each, and the words that steer a conversation. */
export function buildHelpCard(voice: Voice, offers: readonly Button[]): Card {
  const { common } = voice;
  const topics = [...voice.topics.keys()].map((id) => speakOf(voice, id));
  return {
    title: common.helpTitle,
    isPrivate: true,
    blocks: [
      { kind: "text", tone: "plain", text: common.helpIntro },
      {
        kind: "rows",
        heading: common.helpTopics,
        rows: topics.map(({ words, topic }) => {
          const [note] = examplesOf(voice, topic.id);
          return { label: words.title, value: words.summary, ...(note !== undefined && { note }) };
        }),
      },
      { kind: "buttons", buttons: topics.map((topic) => topicButton(topic)) },
      { kind: "rows", heading: common.helpCommands, rows: commandRows(voice) },
      { kind: "buttons", buttons: [...offers, ...preferenceButtons(voice)] },
    ],
    summary: `${common.helpIntro} ${topics.map(({ words }) => words.title).join(", ")}.`,
  };
}

/** One topic: what it answers, what it must know and what it takes for granted, and what it gives back. */
export function buildTopicHelpCard(voice: TopicVoice, offers: readonly Button[]): Card {
  const { common, words, topic } = voice;
  const facts = listedFacts(topic).map((id) => factOf(voice, id));
  return {
    title: words.title,
    isPrivate: true,
    blocks: [
      { kind: "text", tone: "plain", text: words.summary },
      { kind: "rows", heading: common.helpFacts, rows: facts.map((fact) => factRow(voice, fact)) },
      { kind: "text", tone: "quiet", text: common.helpGives(Object.values(words.results).join(", ")) },
      { kind: "text", tone: "plain", text: common.tryOneOf },
      {
        kind: "buttons",
        buttons: [
          ...examplesOf(voice, topic.id).map((example) => ({ label: example, say: example })),
          { label: common.asForm, say: common.say.form(topic.id) },
          ...offers,
        ],
      },
    ],
    summary: `${words.title}: ${words.summary}`,
  };
}

/** Buttons that turn to the other language and the other units. */
export function preferenceButtons({ common, units }: Voice): Button[] {
  const other = units === "us" ? "si" : "us";
  return [
    { label: common.otherLanguage, say: common.sayOtherLanguage },
    { label: common.useUnits[other], say: common.say.units(other) },
  ];
}

function topicButton({ common, words, topic }: TopicVoice): Button {
  return { label: common.helpFor(words.title), say: common.say.help(topic.id) };
}

function commandRows({ common, topics }: Voice): Row[] {
  const [first = ""] = topics.keys();
  return common.commandHelp(first).map(([label, value]) => ({ label, value }));
}

function factRow(voice: TopicVoice, fact: FactVoice): Row {
  const words = [`${fact.id}=`, ...fact.words.words].join(", ");
  return { label: fact.words.label, value: sayAllowed(voice, fact), note: `${words}. ${sayWhenUnsaid(voice, fact)}` };
}

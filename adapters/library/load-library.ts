import { fileURLToPath } from "node:url";
import { freezeDeep } from "../../src/boundary/freeze-deep.ts";
import { readCaution, readCautionTexts, readTopic, readTopicTexts } from "../../src/boundary/library-files.ts";
import type { AnyCaution } from "../../src/cautions/caution.ts";
import type { Topic } from "../../src/declaration/topic.ts";
import type { FaultKnowledge } from "../../src/faults/knowledge.ts";
import { buildFaultTopic } from "../../src/faults/topic/fault-topic.ts";
import type { Library, LibraryTexts } from "../../src/library.ts";
import { buildFaultTexts } from "../../src/messages/fault-texts.ts";
import { LANGUAGES, type Language } from "../../src/messages/language.ts";
import { checkCaution, checkTopicTexts } from "./check-texts.ts";
import { checkTopic } from "./check-topic.ts";
import { Gathering } from "./gathering.ts";
import { loadFaults } from "./load-faults.ts";
import { foldersIn } from "./read-folder.ts";

const SOURCES = fileURLToPath(new URL("../../src", import.meta.url));

/**
 * Loads every topic and caution with its sentences, and what is known of faults: what stands in the folders is what there
 * is, so adding one edits no list. Everything is checked and frozen; all faults are told at once.
 * @param root the folder that holds `topics`, `cautions`, `faults` and `messages`
 */
export async function loadLibrary(root: string = SOURCES): Promise<Library> {
  const gathering = new Gathering(root);
  const reading = loadFaults(root);
  // Awaited below; a fault of the other folders is told first.
  reading.catch(() => undefined);
  const [topics, cautions] = await Promise.all([gatherTopics(gathering), gatherCautions(gathering)]);
  const [en, es] = await Promise.all(LANGUAGES.map((language) => gatherTexts(gathering, language, topics, cautions)));
  gathering.throwFaults();
  if (en === undefined || es === undefined) throw new Error("a language was not read");
  const faults = await reading;
  const fault = faults.causes.length > 0;
  return freezeDeep({
    topics: fault ? new Map([...topics, ["fault", buildFaultTopic(faults)]]) : topics,
    cautions: [...cautions.values()].sort((a, b) => (a.id < b.id ? -1 : 1)),
    faults,
    texts: fault ? { en: withFault(en, faults, "en"), es: withFault(es, faults, "es") } : { en, es },
  } satisfies Library);
}

/** The sentences with those of the fault topic, which are made from the knowledge. */
function withFault(texts: LibraryTexts, faults: FaultKnowledge, language: Language): LibraryTexts {
  return { ...texts, topics: new Map([...texts.topics, ["fault", buildFaultTexts(faults, language)]]) };
}

/** Topics by their file's name, which is their id. */
function gatherTopics(gathering: Gathering): Promise<ReadonlyMap<string, Topic>> {
  return gathering.gather(["topics"], {
    exportedAs: toCamelCase,
    read: readTopic,
    check: checkTopic,
  });
}

/** Cautions by their file's name, whatever area they stand in. */
async function gatherCautions(gathering: Gathering): Promise<ReadonlyMap<string, AnyCaution>> {
  const kind = { exportedAs: () => "caution", read: readCaution, check: checkCaution };
  const areas = await foldersIn(gathering.root, "cautions");
  const found = await Promise.all(areas.map((area) => gathering.gather(["cautions", area], kind)));
  // Told once all are read: the areas are read together, and which comes first is chance.
  const cautions = new Map<string, AnyCaution>();
  for (const [at, area] of areas.entries()) {
    for (const [name, caution] of found[at] ?? []) {
      if (cautions.has(name)) gathering.refuse(["cautions", area], name, `there is a caution ${name} in another area`);
      cautions.set(name, caution);
    }
  }
  return cautions;
}

async function gatherTexts(
  gathering: Gathering,
  language: Language,
  topics: ReadonlyMap<string, Topic>,
  cautions: ReadonlyMap<string, AnyCaution>,
): Promise<LibraryTexts> {
  const ofTopics = await gathering.gather(["messages", language, "topics"], {
    exportedAs: () => "texts",
    read: readTopicTexts,
    check: (texts, name) => {
      const topic = topics.get(name);
      if (topic) return checkTopicTexts(topic, texts);
      return gathering.hasFailed(name) ? [] : [`there is no topic ${name}`];
    },
  });
  gathering.requireAll(["messages", language, "topics"], [...topics.keys()], ofTopics);
  const ofCautions = await gathering.gather(["messages", language, "cautions"], {
    exportedAs: () => "texts",
    read: readCautionTexts,
    check: (_texts, name) => (cautions.has(name) || gathering.hasFailed(name) ? [] : [`there is no caution ${name}`]),
  });
  gathering.requireAll(["messages", language, "cautions"], [...cautions.keys()], ofCautions);
  const byId = [...ofCautions].map(([name, texts]) => [cautions.get(name)?.id ?? name, texts] as const);
  return { topics: ofTopics, cautions: new Map(byId) };
}

function toCamelCase(name: string): string {
  return name.replace(/[-_]([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());
}

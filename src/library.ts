import type { AnyCaution } from "./cautions/caution.ts";
import type { Topic } from "./declaration/topic.ts";
import type { FaultKnowledge } from "./faults/knowledge.ts";
import type { Language } from "./messages/language.ts";
import type { AnyCautionTexts, AnyTopicTexts } from "./messages/topic-texts.ts";

/** Everything that Oldhand can answer and say: loaded once at start-up, then frozen. */
export interface Library {
  readonly topics: ReadonlyMap<string, Topic>;
  readonly cautions: readonly AnyCaution[];
  readonly faults: FaultKnowledge;
  readonly texts: Readonly<Record<Language, LibraryTexts>>;
}
export interface LibraryTexts {
  readonly topics: ReadonlyMap<string, AnyTopicTexts>;
  readonly cautions: ReadonlyMap<string, AnyCautionTexts>;
}

import type { Books } from "../../src/books/books.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import type { Library } from "../../src/library.ts";
import type { TopicRunner } from "../../src/ports/topic-runner.ts";

/** Runs topics right here: for work so short that handing it to another thread would take longer. */
export function createInlineRunner(library: Library, books: Books): TopicRunner {
  return {
    run: async (id, facts, report, signal) => {
      signal.throwIfAborted();
      const topic = library.topics.get(id);
      if (topic === undefined) throw new Error(`there is no topic ${id} in the library`);
      return runTopic(topic, facts, books, library.cautions, report);
    },
  };
}

import { setImmediate } from "node:timers/promises";
import type { Books } from "../../src/books/books.ts";
import { runPart, runTopic } from "../../src/declaration/run-topic.ts";
import type { Library } from "../../src/library.ts";
import type { Solve } from "../../src/ports/solver.ts";
import type { TopicRunner } from "../../src/ports/topic-runner.ts";
import { runParts } from "./run-parts.ts";

/**
 * Runs topics right here: for work so short that handing it to another thread would take longer.
 * @param openSolver opens the solver when the first topic asks for it
 */
export function createInlineRunner(library: Library, own: Books, openSolver?: () => Promise<Solve>): TopicRunner {
  let solver: Promise<Solve> | undefined;
  const lend = async (): Promise<Books> => {
    if (openSolver === undefined) throw new Error("nobody lends this runner a solver");
    solver ??= openSolver();
    return { ...own, solve: await solver };
  };
  return {
    run: async (id, facts, report, signal) => {
      signal.throwIfAborted();
      const topic = library.topics.get(id);
      if (topic === undefined) throw new Error(`there is no topic ${id} in the library`);
      const books = topic.uses === "office" ? await lend() : own;
      if (topic.parts === undefined) return runTopic(topic, facts, books, library.cautions, report);
      // Between two parts whoever waits gets a turn, so that the work can be called off.
      const done = await runParts({ topic, facts, books, report, signal }, 1, async (earlier, part, stop) => {
        await setImmediate();
        stop.throwIfAborted();
        return runPart(topic, facts, books, earlier, part);
      });
      return runTopic(topic, facts, books, library.cautions, report, done);
    },
  };
}

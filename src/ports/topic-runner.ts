import type { Answered } from "../declaration/answer.ts";
import type { KnownFacts } from "../declaration/facts.ts";
import type { ReportProgress } from "../declaration/topic.ts";

/** Runs one topic on facts; long work goes to another thread. */
export interface TopicRunner {
  run(topic: string, facts: KnownFacts, report: ReportProgress, signal: AbortSignal): Promise<Answered>;
}

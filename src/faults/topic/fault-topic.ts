import type { FactValue } from "../../declaration/facts.ts";
import { nameWithUnit } from "../../declaration/run-topic.ts";
import type { Topic } from "../../declaration/topic.ts";
import type { FaultKnowledge } from "../knowledge.ts";
import { buildComplaintBook, matchComplaint } from "../match-complaint.ts";
import { buildModel } from "../model.ts";
import { answerFault } from "./fault-answer.ts";
import { type FaultShelf, type Told, toldOf } from "./fault-case.ts";
import { faultFacts } from "./fault-facts.ts";
import { FAULT_TABLES, faultFindings } from "./fault-findings.ts";
import { nextQuestion } from "./fault-guide.ts";
import { enterSeen, withTrail } from "./fault-trail.ts";

/** From this score on words that nothing is sure of are still about a fault. @source judgement */
const SPOKEN_OF = 0.5;

/** The topic that goes from a person's words to the cause: its facts, sentences and questions are made from the knowledge. */
export function buildFaultTopic(knowledge: FaultKnowledge): Topic {
  const shelf: FaultShelf = {
    knowledge,
    model: buildModel(knowledge),
    complaints: buildComplaintBook(knowledge),
  };
  const facts = faultFacts(knowledge);
  const idOf = new Map(Object.entries(facts).map(([id, spec]) => [nameWithUnit(id, spec), id]));
  const byId = (named: Readonly<Record<string, FactValue>>): Told =>
    Object.fromEntries(Object.entries(named).map(([name, value]) => [idOf.get(name) ?? name, value]));
  return {
    id: "fault",
    work: "short",
    uses: "job",
    facts,
    results: ["confidence"],
    findings: faultFindings(knowledge),
    tables: FAULT_TABLES,
    enters: enterSeen,
    compute: (named: Readonly<Record<string, FactValue>>, books) =>
      withTrail(answerFault(shelf, byId(named), books), byId(named), books),
    guide: {
      next: (known, books) => nextQuestion(shelf, toldOf(known), books),
      hears: (text) => {
        const { sure, offers } = matchComplaint(shelf.complaints, text);
        return sure.length > 0 || offers.some(({ score }) => score >= SPOKEN_OF);
      },
    },
  };
}

import type { CrewChange } from "../crew/crew-event.ts";
import type { AnswerTable, Finding } from "../declaration/answer.ts";
import type { JobChange } from "./job.ts";

/**
 * Something that an answer wants done in the records. The topic only proposes it; the desk asks the rules, and records it
 * in the commit that keeps the answer, or says why it is not done.
 */
export type JobAct =
  /** This job is talked about from now on. */
  | { readonly kind: "open"; readonly job: string }
  /** No job is talked about any more. */
  | { readonly kind: "leave" }
  /** A new job under a number that the desk lent. */
  | {
      readonly kind: "begin";
      readonly job: string;
      readonly customer: string;
      readonly place: string;
      readonly day?: string;
    }
  /** A change of the open job, or of the one that is named; `amends`: number of the event that it puts right. */
  | { readonly kind: "change"; readonly change: JobChange; readonly job?: string; readonly amends?: number }
  /** A change of people, trucks or stock; `amends`: number of the event that is taken back. */
  | { readonly kind: "crew"; readonly change: CrewChange; readonly amends?: number }
  /** The team reads what the message wrote into jobs. */
  | { readonly kind: "announce" }
  /** The team reads what became of the open job. */
  | { readonly kind: "summary" }
  /** How a cause was found is written down, and the team reads it where that is wanted. */
  | {
      readonly kind: "trail";
      /** The topic that words it. */
      readonly topic: string;
      readonly headline: Finding;
      readonly rows: AnswerTable["rows"];
      readonly wantsPost: boolean;
    }
  /** A paper is made and handed over with the answer. */
  | { readonly kind: "paper"; readonly paper: Paper };

/** A paper to hand over: the record of a job, or a sheet of rows that the office goes on working with. */
export type Paper =
  | { readonly kind: "record"; readonly job: string; readonly form: "pdf" | "json" }
  | {
      readonly kind: "sheet";
      /** Name of the file, without what its form adds. */
      readonly name: string;
      readonly columns: readonly string[];
      readonly rows: readonly (readonly string[])[];
    };

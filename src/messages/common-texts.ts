import type { Decider, Severity, Verdict } from "../declaration/answer.ts";
import type { Chart } from "../declaration/chart.ts";
import type { Source } from "../declaration/source.ts";
import type { UnitSystem } from "../units/quantity-kinds.ts";
import type { Language } from "./language.ts";

/** The commands as a person would type them in this language; every button says one of these. */
interface SayTexts {
  readonly help: (topic?: string) => string;
  readonly back: string;
  readonly skip: string;
  readonly stop: string;
  readonly cancel: (work: string) => string;
  readonly undo: string;
  readonly resume: (topic?: string) => string;
  readonly again: string;
  readonly how: (result?: string) => string;
  readonly change: (fact: string) => string;
  readonly form: (topic: string) => string;
  readonly units: (units: UnitSystem) => string;
  readonly language: (language: Language) => string;
  readonly seen: (caution: string) => string;
  readonly unsee: (caution: string) => string;
}

/**
 * Every sentence that belongs to no topic. Both languages have this shape, so a sentence that is missing in one does
 * not compile. Arguments arrive formatted and in the reader's language.
 */
export interface CommonTexts {
  readonly say: SayTexts;
  readonly yes: string;
  readonly no: string;
  /** The word for "or" before this name. */
  readonly or: (next: string) => string;
  readonly between: (low: string, high: string) => string;
  readonly months: readonly string[];
  readonly day: (year: string, month: string, day: string) => string;
  /** Names of the weekdays, Monday first. */
  readonly weekdays: readonly string[];
  readonly weekday: (name: string, day: string) => string;
  /** Said where words may mean another day. */
  readonly otherDay: (day: string) => string;

  readonly verdicts: Readonly<Record<Verdict, string>>;
  readonly verdictSummary: (verdict: string, headline: string) => string;
  readonly severities: Readonly<Record<Severity, string>>;
  readonly deciders: Readonly<Record<Decider, string>>;
  readonly basis: Readonly<Record<Source["basis"], string>>;
  readonly source: (title: string, basis: string) => string;
  readonly axes: Readonly<Record<Chart["xKind"], string>>;
  readonly chartSpan: (name: string, low: string, high: string, from: string, to: string) => string;
  /** Names the table of a chart. */
  readonly chartNumbers: (title: string) => string;
  readonly chartEmpty: (name: string) => string;

  /** A moment of this year: day, name of the month, time of day. */
  readonly moment: (day: string, month: string, time: string) => string;
  readonly seenDone: string;
  readonly seenDoneOf: (caution: string) => string;
  readonly seenBy: (name: string, when: string, what: string) => string;
  readonly skippedBy: (name: string, when: string, because: string, what: string) => string;
  readonly saidBefore: (severity: string, what: string) => string;
  readonly stillStands: (severity: string, what: string) => string;
  readonly localAmendment: (document: string, because: string) => string;
  readonly silencedTitle: string;
  readonly silencedColumns: readonly [asks: string, because: string, by: string];
  readonly cautionsTitle: string;
  readonly recordedSeen: (name: string, when: string, what: string) => string;
  readonly recordedSkipped: (name: string, when: string, because: string, what: string) => string;
  readonly recordedUnseen: (what: string) => string;
  readonly whichCaution: string;
  readonly nothingToSee: string;
  readonly unknownCaution: (word: string) => string;
  readonly cautionNotShown: (caution: string) => string;
  readonly skipNeedsWords: (caution: string) => string;

  /** Numbers that the first screen can do without. */
  readonly moreNumbers: string;
  /** How an answer was come by. */
  readonly howCounted: string;
  readonly countedWith: string;
  readonly assumed: string;
  readonly change: (label: string) => string;
  readonly fromJob: string;
  readonly fromCatalogue: string;
  readonly readAs: (typed: string, value: string) => string;
  readonly was: (value: string) => string;
  readonly changed: (label: string, before: string, after: string) => string;
  readonly nothingChanged: string;
  readonly notSet: string;
  readonly how: string;
  readonly howTitle: (topic: string) => string;
  readonly nothingComputed: string;
  readonly howOf: (result: string) => string;
  readonly workingOn: (topic: string, share: string) => string;
  /** On the button that calls off work that goes on. */
  readonly cancel: string;

  readonly progress: (place: string, of: string) => string;
  /** Where nobody knows how many questions there will be. */
  readonly question: (place: string) => string;
  /** Skips a check that cannot be done or shows nothing. */
  readonly cannotTell: string;
  /** Asked under a stop line. */
  readonly stopDone: string;
  /** A stop line cannot be skipped. */
  readonly stopFirst: string;
  /** Over the precautions before a check. */
  readonly beforeThat: string;
  /** Stands where a caution names its source. */
  readonly hazardsDecide: string;
  readonly noted: (label: string, value: string) => string;
  readonly skipTaking: (value: string) => string;
  readonly skip: string;
  readonly back: string;
  readonly stop: string;
  readonly keep: (value: string) => string;
  readonly skippedTaking: (label: string, value: string, source: string) => string;
  readonly skippedOpen: (label: string) => string;
  readonly skippedKeeping: (label: string, value: string) => string;
  readonly cannotSkip: (label: string, example: string) => string;
  readonly firstQuestion: string;
  readonly wentBack: string;
  readonly parked: (topic: string) => string;
  readonly movedHere: (topic: string) => string;
  readonly resumed: (topic: string) => string;
  readonly stillOpen: string;
  readonly goOnWith: (topic: string) => string;

  readonly unknownWord: (word: string, topic: string) => string;
  readonly unknownWordAlone: (word: string) => string;
  readonly unknownWordHelp: string;
  readonly goOnWithout: string;
  readonly leftOut: (word: string) => string;
  readonly didYouMean: string;
  readonly ambiguous: (typed: string, candidates: string) => string;
  readonly fitsNothing: (typed: string, topic: string) => string;
  readonly ambiguousHelp: string;
  readonly onlyCandidateHelp: string;
  readonly noneOfThese: string;
  readonly saidTwice: (label: string) => string;
  readonly notANumber: (typed: string, label: string, example: string) => string;
  readonly wrongUnit: (typed: string, label: string, example: string) => string;
  readonly leftOver: (typed: string, label: string, example: string) => string;
  readonly unknownOption: (typed: string, label: string, options: string) => string;
  readonly twoReadings: (typed: string, label: string, example: string) => string;
  readonly notADay: (typed: string) => string;
  readonly notWhole: (typed: string, label: string) => string;
  readonly outOfRange: (label: string, value: string, range: string, example: string) => string;
  readonly cannotUse: (value: string, label: string) => string;
  readonly needsFacts: (labels: string) => string;
  readonly notUnderstoodTitle: string;
  readonly notUnderstood: string;
  readonly tooLong: (characters: string) => string;
  readonly tryOneOf: string;

  readonly help: string;
  readonly helpTitle: string;
  readonly helpIntro: string;
  readonly helpTopics: string;
  readonly helpFor: (topic: string) => string;
  readonly helpCommands: string;
  readonly commandHelp: (topic: string) => readonly (readonly [command: string, meaning: string])[];
  readonly helpFacts: string;
  readonly helpGives: (results: string) => string;
  readonly helpQuestion: (label: string, allowed: string, unsaid: string) => string;
  readonly steer: string;
  readonly unsaidTaken: (value: string, source: string) => string;
  readonly unsaidOpen: string;
  readonly unsaidAsked: string;
  /** Asked for, unless this other fact is said. */
  readonly unsaidExcused: (other: string) => string;
  readonly freeValue: Readonly<Record<"name" | "day" | "text", string>>;
  readonly asForm: string;
  readonly unknownTopic: (word: string) => string;

  readonly welcomeTitle: string;
  readonly welcome: string;
  readonly inventedCompany: (name: string) => string;

  readonly unitsTitle: string;
  readonly unitsNow: Readonly<Record<UnitSystem, string>>;
  readonly useUnits: Readonly<Record<UnitSystem, string>>;
  readonly languageTitle: string;
  readonly languageNow: string;
  /** A button to the other language, in that language, and what it says. */
  readonly otherLanguage: string;
  readonly sayOtherLanguage: string;
  readonly showAgain: string;

  readonly stoppedTitle: string;
  readonly stopped: (topic: string) => string;
  readonly nothingToStop: string;
  readonly resume: string;
  readonly nothingToResume: string;
  readonly undo: string;
  readonly undoTitle: string;
  readonly undone: string;
  readonly undoneUnits: Readonly<Record<UnitSystem, string>>;
  readonly undoneLanguage: string;
  readonly undoneMark: (caution: string) => string;
  readonly undoneToAnswer: string;
  readonly nothingIsOpen: string;
  readonly whereTitle: string;
  /** What to write into the company's books so that posts come here. */
  readonly whereChannel: (door: string, id: string) => string;
  readonly whereNoChannel: string;
  readonly nothingToUndo: string;
  readonly noQuestionOpen: string;
  readonly answersTitle: string;
  readonly noAnswerYet: string;
  readonly whichFact: (word: string, topic: string) => string;
  readonly oldButtonTitle: string;
  readonly questionAnswered: (label: string, topic: string) => string;
  readonly answerWith: (label: string, value: string) => string;
  readonly unknownButton: string;
  readonly earlierButton: string;
  readonly oldAnswer: string;

  readonly workItOut: string;
  readonly formFor: (topic: string) => string;
  readonly formHasProblems: string;
  readonly emptyTakes: (value: string) => string;
  readonly fieldNeeded: (example: string) => string;

  readonly linkTitle: string;
  readonly linkCode: (code: string) => string;
  readonly linkHow: (code: string) => string;
  readonly linkDone: (name: string) => string;
  readonly linkRefused: string;
  readonly linkTooMany: string;
  readonly faultTitle: string;
  readonly fault: (id: string) => string;
  readonly cancelled: string;
  readonly cancelledTitle: string;
  readonly cancelledWork: (topic: string) => string;
  readonly nothingToCancel: string;
}

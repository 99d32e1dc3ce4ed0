import type { QuantityKind } from "../units/quantity-kinds.ts";
import {
  AGE_BANDS,
  type Cause,
  type Check,
  type FaultKnowledge,
  type Hazard,
  LEVELS,
  type Level,
} from "./knowledge.ts";
import { problemsOfRanges } from "./knowledge-ranges.ts";

/** What the knowledge is checked against besides itself. */
export interface KnowledgeContext {
  /** Quantity of each expected reading by its id. */
  readonly expected: ReadonlyMap<string, QuantityKind>;
  /** Precaution sentences of each hazard, in each language. */
  readonly precautions: readonly Readonly<Partial<Record<Hazard, readonly string[]>>>[];
}
/** Something that does not hold together: which entry, where in it, and why. */
export interface KnowledgeProblem {
  readonly kind: "symptom" | "cause" | "check" | "group";
  /** Id of the entry; of a group its place, from 0. */
  readonly id: string;
  readonly at: readonly PropertyKey[];
  readonly reason: string;
}
type Row = Readonly<Record<string, Level>>;
type Found = Pick<KnowledgeProblem, "at" | "reason">;

/** A check tells a cause apart when it makes some outcome at least so many times likelier, or less likely, than usual. */
const TELLS_APART = 2;
/** Levels of one row may add up to this before they are brought to one; beyond it their words no longer mean what they say. */
const LEAST_SUM = 0.6;
const MOST_SUM = 2;
/** Live work is for these alone. */
const LIVE_DOERS: readonly string[] = ["qualified", "electrician", "controls", "refrigerant"];

/**
 * Everything in the knowledge that does not hold together.
 * @param knowledge symptoms, causes, checks and groups as read from their files
 * @param context expected readings and precautions that there are
 * @returns problems in the order of the entries; none when all is well
 */
export function findKnowledgeProblems(
  knowledge: FaultKnowledge,
  context: KnowledgeContext,
): readonly KnowledgeProblem[] {
  const { symptoms, causes, checks, groups } = knowledge;
  const checkIds = new Set(checks.map(({ id }) => id));
  return [
    ...symptoms.flatMap((symptom) => [
      ...(symptom.urgency === "stop" && (symptom.words.en.stop === undefined || symptom.words.es.stop === undefined)
        ? [
            {
              kind: "symptom" as const,
              id: symptom.id,
              at: ["urgency"],
              reason: "stops the work, but has no stop line",
            },
          ]
        : []),
      ...(causes.some((cause) => Object.hasOwn(cause.symptoms, symptom.id))
        ? []
        : [{ kind: "symptom" as const, id: symptom.id, at: [], reason: "no cause brings it about" }]),
    ]),
    ...causes.flatMap((cause) =>
      problemsOfCause(cause, knowledge, context).map((found) => ({ kind: "cause" as const, id: cause.id, ...found })),
    ),
    ...checks.flatMap((check) =>
      problemsOfCheck(check, knowledge, context).map((found) => ({ kind: "check" as const, id: check.id, ...found })),
    ),
    ...groups.flatMap((group, place) => [
      ...group.flatMap((id, index) =>
        checkIds.has(id) && group.indexOf(id) === index
          ? []
          : [
              {
                kind: "group" as const,
                id: String(place),
                at: [place, index],
                reason: `${id} is no check of its own here`,
              },
            ],
      ),
      ...(group.length > 1
        ? []
        : [{ kind: "group" as const, id: String(place), at: [place], reason: "a group takes two checks at least" }]),
    ]),
  ];
}

function problemsOfCause(
  cause: Cause,
  { symptoms, checks }: FaultKnowledge,
  context: KnowledgeContext,
): readonly Found[] {
  const known = new Set(symptoms.map(({ id }) => id));
  return [
    ...Object.keys(cause.symptoms)
      .filter((id) => !known.has(id))
      .map((id) => ({ at: ["symptoms", id], reason: "there is no such symptom" })),
    ...(Object.keys(cause.symptoms).length === 0 ? [{ at: ["symptoms"], reason: "brings about nothing" }] : []),
    ...AGE_BANDS.filter((band) => !(cause.prior[band] > 0 && Number.isFinite(cause.prior[band]))).map((band) => ({
      at: ["prior", band],
      reason: "must be above zero: nothing that is seen could bring it back",
    })),
    ...cause.appliesTo
      .filter((kind) => !checks.some((check) => check.appliesTo.includes(kind) && tellsApart(check, cause.id)))
      .map((kind) => ({ at: ["applies_to"], reason: `no check tells it apart in a unit of the kind ${kind}` })),
    ...withoutPrecaution(cause.hazards, context),
  ];
}

function problemsOfCheck(check: Check, { causes }: FaultKnowledge, context: KnowledgeContext): readonly Found[] {
  const known = new Set(causes.map(({ id }) => id));
  const outcomes = check.outcomes.map(({ id }) => id);
  const rows: readonly (readonly [readonly string[], Row])[] = [
    [["usual"], check.usual],
    ...Object.entries(check.byCause).map(([cause, row]) => [["by_cause", cause], row] as const),
  ];
  return [
    ...Object.keys(check.byCause)
      .filter((cause) => !known.has(cause))
      .map((cause) => ({ at: ["by_cause", cause], reason: "there is no such cause" })),
    ...outcomes
      .filter((id, index) => outcomes.indexOf(id) !== index)
      .map((id) => ({ at: ["outcomes"], reason: `${id} stands there twice` })),
    ...rows.flatMap(([at, row]) => problemsOfRow(at, row, outcomes)),
    ...(outcomes.length > 0 && Object.keys(check.byCause).length === 0
      ? [{ at: ["by_cause"], reason: "tells nothing apart" }]
      : []),
    ...check.outcomes.flatMap(({ words }, index) =>
      (["en", "es"] as const)
        .filter((language) => words[language].trim() === "")
        .map((language) => ({ at: ["outcomes", index, language], reason: "has no words" })),
    ),
    ...withoutPrecaution(check.hazards, context),
    ...(check.hazards.includes("live") && !LIVE_DOERS.includes(check.doer)
      ? [{ at: ["doer"], reason: `live work is for ${LIVE_DOERS.join(", ")} only` }]
      : []),
    ...problemsOfReading(check, context),
    ...problemsOfRanges(check),
  ];
}

/** Levels are brought to a sum of one: each outcome needs one, and they must not be far from it as written. */
function problemsOfRow(at: readonly PropertyKey[], row: Row, outcomes: readonly string[]): readonly Found[] {
  const sum = outcomes.reduce((total, id) => total + shareOf(row, id), 0);
  return [
    ...Object.keys(row)
      .filter((id) => !outcomes.includes(id))
      .map((id) => ({ at: [...at, id], reason: "there is no such outcome" })),
    ...outcomes
      .filter((id) => !Object.hasOwn(row, id))
      .map((id) => ({ at, reason: `says nothing of the outcome ${id}` })),
    ...(sum < LEAST_SUM || sum > MOST_SUM
      ? [{ at, reason: `adds up to ${sum.toFixed(2)}, too far from 1 for its words to hold` }]
      : []),
  ];
}

function problemsOfReading({ reading }: Check, { expected }: KnowledgeContext): readonly Found[] {
  if (reading === undefined) return [];
  const quantity = expected.get(reading.expected);
  if (quantity === undefined) return [{ at: ["reading", "expected"], reason: "nothing computes it" }];
  return quantity === reading.quantity
    ? []
    : [{ at: ["reading", "quantity"], reason: `${reading.expected} is a ${quantity}` }];
}

function withoutPrecaution(hazards: readonly Hazard[], { precautions }: KnowledgeContext): readonly Found[] {
  const isSaid = (hazard: Hazard) =>
    precautions.every((texts) => (texts[hazard] ?? []).some((line) => line.trim() !== ""));
  return hazards.flatMap((hazard, index) =>
    precautions.length > 0 && isSaid(hazard)
      ? []
      : [{ at: ["hazards", index], reason: `no precaution is written for ${hazard}` }],
  );
}

/** Whether a check makes some outcome clearly likelier, or clearly less likely, with this cause than usual. */
function tellsApart({ byCause, usual, outcomes }: Check, cause: string): boolean {
  const own = Object.hasOwn(byCause, cause) ? byCause[cause] : undefined;
  if (own === undefined) return false;
  const ids = outcomes.map(({ id }) => id);
  const sumOf = (row: Row) => ids.reduce((total, id) => total + shareOf(row, id), 0);
  const [mine, theirs] = [sumOf(own), sumOf(usual)];
  return ids.some((id) => {
    const ratio = shareOf(own, id) / mine / (shareOf(usual, id) / theirs);
    return ratio >= TELLS_APART || ratio <= 1 / TELLS_APART;
  });
}

function shareOf(row: Row, id: string): number {
  return LEVELS[row[id] ?? "unlikely"];
}

import {
  AGE_BANDS,
  type AgeBand,
  type Cause,
  type Check,
  type FaultKnowledge,
  LEVELS,
  UNIT_KINDS,
  type UnitKind,
} from "../../src/faults/knowledge.ts";
import { drawIndex, type RandomStream } from "../../src/household/random.ts";

/** A fault that is known to nobody but the bench. */
export interface SyntheticFault {
  readonly unitKind: UnitKind;
  readonly age: AgeBand;
  readonly causes: readonly Cause[];
  readonly complaints: readonly string[];
}
/** How answers go wrong. */
export interface Noise {
  /** Share of answers that are another outcome, any of them. */
  readonly wrong: number;
  readonly notSure: number;
}

/** People name a few of the things that bother them. */
const MOST_COMPLAINTS = 3;
/** Share of faults in which somebody also complains of something that has nothing to do with it. */
const STRAY_SHARE = 0.05;
/** Kinds of unit on the job: invented, as is the even split of ages. */
const KIND_WEIGHTS = [60, 15, 25];

/** Draws a unit, its causes by the shipped weights, and what is complained of by the levels of the knowledge. */
export function drawFault(knowledge: FaultKnowledge, random: RandomStream, count: number): SyntheticFault {
  const unitKind = UNIT_KINDS[drawIndex(random, KIND_WEIGHTS)] ?? "integrated";
  const age = AGE_BANDS[drawIndex(random, [1, 1, 1])] ?? "mid";
  const causes: Cause[] = [];
  while (causes.length < count) {
    const left = knowledge.causes.filter((cause) => cause.appliesTo.includes(unitKind) && !causes.includes(cause));
    const cause =
      left[
        drawIndex(
          random,
          left.map(({ prior }) => prior[age]),
        )
      ];
    if (cause === undefined) throw new Error("no cause left to draw");
    causes.push(cause);
  }
  return { unitKind, age, causes, complaints: drawComplaints(knowledge, causes, random) };
}

/** What a check shows when these causes are there: whatever is out of the ordinary shows, whichever it comes from. */
export function drawOutcome(
  check: Check,
  causes: readonly Cause[],
  noise: Noise,
  random: RandomStream,
): string | undefined {
  if (random.next() < noise.notSure) return undefined;
  if (random.next() < noise.wrong)
    return check.outcomes[
      drawIndex(
        random,
        check.outcomes.map(() => 1),
      )
    ]?.id;
  const usual = mostUsual(check);
  const drawn = causes.map((cause) => drawOne(check, cause.id, random));
  const telling = causes.flatMap(({ id }, index) => (check.byCause[id] === undefined ? [] : [drawn[index] ?? usual]));
  return telling.find((outcome) => outcome !== usual) ?? telling[0] ?? drawn[0];
}

function drawComplaints(knowledge: FaultKnowledge, causes: readonly Cause[], random: RandomStream): readonly string[] {
  const perCause = causes.map(({ symptoms }) => {
    const listed = Object.entries(symptoms).sort(([, one], [, other]) => LEVELS[other] - LEVELS[one]);
    const said = listed.filter(([, level]) => random.next() < LEVELS[level]).map(([id]) => id);
    return said.length > 0 ? said : listed.slice(0, 1).map(([id]) => id);
  });
  const first = perCause.flatMap((said) => said.slice(0, causes.length > 1 ? 2 : MOST_COMPLAINTS));
  const stray = knowledge.symptoms[Math.floor(random.next() * knowledge.symptoms.length)];
  const isStray = random.next() < STRAY_SHARE;
  return [...new Set(isStray && stray ? [...first, stray.id] : first)];
}

function drawOne(check: Check, cause: string, random: RandomStream): string {
  const row = check.byCause[cause] ?? check.usual;
  const weights = check.outcomes.map(({ id }) => LEVELS[row[id] ?? "unlikely"]);
  return check.outcomes[drawIndex(random, weights)]?.id ?? "";
}

function mostUsual(check: Check): string {
  const level = (id: string) => LEVELS[check.usual[id] ?? "unlikely"];
  return check.outcomes.map(({ id }) => id).reduce((best, id) => (level(id) > level(best) ? id : best));
}

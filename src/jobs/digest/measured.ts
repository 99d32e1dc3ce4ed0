import type { Quantity } from "../../units/quantity-kinds.ts";
import type { JobReading } from "../job.ts";
import type { Bounds } from "./period.ts";
import { isWithin } from "./period.ts";
import { ENOUGH_FOR_A_MEDIAN, medianOf } from "./share.ts";
import type { Story } from "./story.ts";

/** One step of the start-up over all jobs of a period. */
export interface StepFigure {
  readonly step: string;
  /** Jobs in which it was taken. */
  readonly taken: number;
  /** Of these, how many say what was expected. */
  readonly compared: number;
  /** How far the readings lie from what was expected, in the middle; left out where too few are compared. */
  readonly middle?: Quantity;
  /** The one that lies farthest, with its sign; left out likewise. */
  readonly farthest?: Quantity;
  readonly notAccepted: number;
  readonly stories: readonly Story[];
}
type Reading = Omit<JobReading, "by" | "at_ms">;
interface Taken {
  readonly story: Story;
  readonly reading: Reading;
}

/**
 * What was measured beside what was expected, step by step, in the order in which the steps were first taken. Of a step
 * that was measured again in the same job only the last counts.
 */
export function compareReadings(stories: readonly Story[], bounds: Bounds): readonly StepFigure[] {
  const bySteps = new Map<string, Taken[]>();
  for (const story of stories)
    for (const [step, reading] of lastReadings(story, bounds))
      bySteps.set(step, [...(bySteps.get(step) ?? []), { story, reading }]);
  return [...bySteps].map(([step, taken]) => summarise(step, taken));
}

function lastReadings({ effects }: Story, bounds: Bounds): ReadonlyMap<string, Reading> {
  const last = new Map<string, Reading>();
  for (const { change, at_ms } of effects)
    if (change.kind === "reading" && isWithin(bounds, at_ms)) last.set(change.reading.id, change.reading);
  return last;
}

function summarise(step: string, taken: readonly Taken[]): StepFigure {
  const deviations = taken.flatMap(({ reading }) => deviationOf(reading) ?? []);
  const kind = deviations[0]?.kind;
  const values = deviations.flatMap((one) => (one.kind === kind ? [one.value] : []));
  const middle = values.length < ENOUGH_FOR_A_MEDIAN ? undefined : medianOf(values);
  const farthest = [...values].sort((a, b) => Math.abs(b) - Math.abs(a))[0];
  return {
    step,
    taken: taken.length,
    compared: values.length,
    ...(kind && middle !== undefined && { middle: { kind, value: middle } }),
    ...(kind && middle !== undefined && farthest !== undefined && { farthest: { kind, value: farthest } }),
    notAccepted: taken.filter(({ reading }) => !reading.isAccepted).length,
    stories: taken.map(({ story }) => story),
  };
}

/**
 * How far a reading lies from what was expected: as a share of it, but in degrees for temperatures, whose zero is only
 * where somebody put it.
 */
function deviationOf({ quantity, expected }: Reading): Quantity | undefined {
  if (expected === undefined || expected.kind !== quantity.kind) return undefined;
  const over = quantity.value - expected.value;
  if (quantity.kind === "temperature") return { kind: "temperature_difference", value: over };
  return expected.value === 0 ? undefined : { kind: "share", value: over / Math.abs(expected.value) };
}

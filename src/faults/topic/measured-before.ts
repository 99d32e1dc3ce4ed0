import type { KnownFacts } from "../../declaration/facts.ts";
import type { Job } from "../../jobs/job.ts";

/** Checks that read what a step of the start-up reads too, by the id of the step. */
const CHECK_OF_STEP: Readonly<Record<string, string>> = {
  line_pressure: "line_pressure",
  precharge: "expansion_tank_charge",
  bond: "bonding",
  supply: "voltage_at_rest",
  first_rise: "recovery_rate",
};

/** Steps that read what a fault changes from one moment to the next. */
const OF_THAT_MOMENT: readonly string[] = ["supply", "first_rise"];

type MeasuredJob = Pick<Job, "readings"> & Partial<Pick<Job, "status">>;

/**
 * What the start-up of this job measured, as a fact of the fault topic. It may have changed since, so the reasoning lets it
 * count for less than what is read now. When the customer calls again, that the heater had power and heated when the job was
 * closed says nothing of the fault that came since; the house's pressure, the tank's air and the bond still do.
 */
export function measuredBefore(job: MeasuredJob | undefined): KnownFacts {
  const readings = Object.entries(job?.readings ?? {}).flatMap(([step, { quantity }]) => {
    const check = CHECK_OF_STEP[step];
    const isPast = job?.status === "called_back" && OF_THAT_MOMENT.includes(step);
    return check === undefined || isPast ? [] : [`${check}:${quantity.value}`];
  });
  return readings.length === 0 ? {} : { measured_before: { value: readings.join(","), from: "job" } };
}

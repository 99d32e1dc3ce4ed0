import { commonFacts } from "../../declaration/common-facts.ts";
import type { FactSpec, FactSpecs, QuantityFact } from "../../declaration/facts.ts";
import { PASSED_OVER } from "../../declaration/topic.ts";
import { SITE_TOLD } from "../../household/site-told-facts.ts";
import type { QuantityKind } from "../../units/quantity-kinds.ts";
import { AGE_BANDS, type Check, type FaultKnowledge, UNIT_KINDS } from "../knowledge.ts";
import { mustStop } from "../stops.ts";

/** What may have happened lately, by the ids of the site evidence; "nothing" says that nobody did anything. */
export const LATELY = ["nothing", "new_heater", "new_plumbing", "power_outage", "utility_program"] as const;
/** The only answer to a precaution or a stop line; anything else leaves the question open. */
const DONE = ["done"] as const;
/** A symptom that none of the offered ones is. */
export const OTHER_SYMPTOM = "none_of_these";

/** Ids of the facts that belong to an entry of the knowledge. */
export const readingOf = (check: string) => `${check}_reading`;
export const readyFor = (check: string) => `ready_for_${check}`;
export const stopOf = (symptom: string) => `stop_${symptom}`;
export const notCuredBy = (cause: string) => `not_cured_by_${cause}`;
export const curedBy = (cause: string) => `${CURED_BY}${cause}`;
/** How the facts begin that close a fault. */
export const CURED_BY = "cured_by_";

/** The team is to read how the cause was found. */
export const POST_TRAIL = "post_trail";

/** Widest readings that an instrument of the trade shows, base units. */
const READING_ENDS: Partial<Record<QuantityKind, readonly [number, number]>> = {
  temperature: [-40, 150],
  temperature_difference: [-100, 100],
  resistance: [0, 1e9],
  voltage: [0, 700],
  current: [0, 200],
};
const ANY_READING = [0, 1e6] as const;

const OPTIONAL_NAMED = { optional: true, byNameOnly: true } as const;
const UNLISTED = { optional: true, unlisted: true, byNameOnly: true } as const;

/** What is asked of anybody, whatever the fault. */
const BASE_FACTS = {
  complaint: { type: "text", optional: true },
  unit: { type: "choice", options: UNIT_KINDS, ...OPTIONAL_NAMED },
  age: { type: "choice", options: AGE_BANDS, ...OPTIONAL_NAMED },
  lately: { type: "choice", options: LATELY, ...OPTIONAL_NAMED },
  model: { ...commonFacts.model, optional: true },
  setpoint: { ...commonFacts.setpoint, ...OPTIONAL_NAMED },
  cold: { ...plainQuantity(commonFacts.cold), ...OPTIONAL_NAMED },
  air: { ...commonFacts.air, ...OPTIONAL_NAMED },
  supply: { ...commonFacts.supply, ...OPTIONAL_NAMED },
  people: { ...commonFacts.people, ...OPTIONAL_NAMED },
  line_pressure: { ...commonFacts.line_pressure, ...OPTIONAL_NAMED },
  month: commonFacts.month,
} as const satisfies FactSpecs;

/** What the site says of causes; told to other topics of the same job, or typed by name, but not asked for here. */
export const SITE_FACTS: FactSpecs = Object.fromEntries(
  ["closed", "mixing_valve", "loop", "hardness", "condensate", "fuel_appliance", "room_volume", "exhaust"].map((id) => [
    id,
    unlisted(SITE_TOLD, id),
  ]),
);

function unlisted(specs: FactSpecs, id: string): FactSpec {
  const spec = specs[id];
  if (spec === undefined) throw new Error(`the site's facts have no ${id}`);
  const { ask: _, ...rest } = spec;
  return { ...rest, ...UNLISTED };
}

/** What the records say; nobody types it. */
const RECORD_FACTS = {
  /** What the asker may do, ids with commas between. */
  asker_may: { type: "text", ...UNLISTED },
  /** Tools at hand. */
  asker_tools: { type: "text", ...UNLISTED },
  /** What lies in their truck: English names of the parts book, with bars between. */
  on_truck: { type: "text", ...UNLISTED },
  /** How often this company found each cause: "lower_element_open:3,...". */
  found_before: { type: "text", ...UNLISTED },
  /** What the start-up measured: "line_pressure:380,...", base units. */
  measured_before: { type: "text", ...UNLISTED },
  /** A code on the display of the unit. */
  display_code: { type: "text", ...UNLISTED },
  [PASSED_OVER]: { type: "text", ...UNLISTED },
} as const satisfies FactSpecs;

function plainQuantity({ type, quantity, min, max, usual }: QuantityFact): QuantityFact {
  return { type, quantity, min, max, ...(usual && { usual }) };
}

/** The facts of the fault topic: the base, and what belongs to each symptom, check and cause of the knowledge. */
export function faultFacts({ symptoms, checks, causes }: FaultKnowledge): FactSpecs {
  const symptom: FactSpec = { type: "choice", options: [...symptoms.map(({ id }) => id), OTHER_SYMPTOM], ...UNLISTED };
  return {
    ...BASE_FACTS,
    ...SITE_FACTS,
    symptom,
    ...Object.fromEntries(symptoms.filter(mustStop).map(({ id }) => [stopOf(id), done()])),
    ...Object.fromEntries(checks.flatMap(checkFacts)),
    ...Object.fromEntries(
      causes.flatMap(({ id }) => [notCuredBy(id), curedBy(id)]).map((fact) => [fact, { type: "flag", ...UNLISTED }]),
    ),
    [POST_TRAIL]: { type: "flag", ...UNLISTED },
    ...RECORD_FACTS,
  };
}

/** Facts of the walk that are about the house and its heater rather than about the fault. */
export function isOfHouse(fact: string): boolean {
  return (
    Object.hasOwn(SITE_FACTS, fact) || (Object.hasOwn(BASE_FACTS, fact) && fact !== "complaint" && fact !== "lately")
  );
}

/** Facts that say how the walk went or what the records know, not what was seen. */
export function isSeen(fact: string): boolean {
  return fact !== POST_TRAIL && fact !== "month" && (fact === "display_code" || !Object.hasOwn(RECORD_FACTS, fact));
}

function done(): FactSpec {
  return { type: "choice", options: DONE, ...UNLISTED };
}

function checkFacts({ id, hazards, outcomes, reading }: Check): readonly (readonly [string, FactSpec])[] {
  const options = outcomes.map((outcome) => outcome.id);
  const picked: FactSpec = { type: "choice", options, ...UNLISTED, ...(reading && { orReading: readingOf(id) }) };
  const [min, max] = (reading && READING_ENDS[reading.quantity]) ?? ANY_READING;
  return [
    ...(hazards.length > 0 ? [[readyFor(id), done()] as const] : []),
    [id, picked],
    ...(reading
      ? [[readingOf(id), { type: "quantity", quantity: reading.quantity, min, max, ...UNLISTED }] as const]
      : []),
  ];
}

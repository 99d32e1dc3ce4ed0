import type { Books } from "../books/books.ts";
import type { FactValue } from "../declaration/facts.ts";
import { findByName, findModel } from "../equipment/find-model.ts";
import type { Job } from "../jobs/job.ts";
import { collectKit } from "../jobs/kit.ts";
import type { KitPart } from "../jobs/kit-rule.ts";
import { KIT_RULES } from "../jobs/kit-rules-table.ts";
import { type KitSite, readKitTold } from "../jobs/kit-told-facts.ts";
import { travelTime_s } from "./crew.ts";
import type { SkillId } from "./skills-table.ts";

/** What a job asks of whoever does it. */
export interface JobNeeds {
  readonly skills: readonly SkillId[];
  /** Tools that one of the crew must carry, by id of the book of parts and tools. */
  readonly tools: readonly string[];
  /** How many people it takes. */
  readonly people: number;
  /** Work on site [s]. */
  readonly work_s: number;
  /** From the yard and back [s]. */
  readonly drive_s: number;
  /** What must be loaded, without what is ordered for the job. */
  readonly parts: readonly KitPart[];
}

const HOUR_s = 3600;
/** Hours on site; common practice of the house, said to be so wherever they are shown. */
const WORK_h = { swap: 4, service: 1.5, newCircuit: 1.5, ducts: 2, gas: 0.5, condensatePump: 0.5 } as const;
/** More than this is carried by two; common practice. */
const ONE_PERSON_kg = 25;
const ALWAYS_CARRIED = [
  "voltage-tester",
  "multimeter",
  "lockout-kit",
  "clamp-meter",
  "torque-screwdriver",
  "thermometer",
  "pressure-gauge",
];

/** What the facts of a job's survey tell, with its unit from the catalogue. */
export function siteOf({ model, facts }: Job, { catalogue }: Books): KitSite {
  const values = Object.entries(facts).map(([id, { value }]): [string, FactValue] => [id, value]);
  const told = readKitTold(Object.fromEntries(values));
  const wanted = model ?? told.model;
  const found = wanted === undefined ? undefined : findModel(catalogue, wanted);
  return { ...told, ...(found?.ok && { unit: found.entry }) };
}

/**
 * What a job asks for, from its survey. A call-back asks for somebody who may measure and open the unit, no kit.
 * @limits work hours and what is carried by two are common practice; the survey may know better
 */
export function jobNeeds(job: Job, books: Books): JobNeeds {
  const drive_s = driveTo_s(job.place, books);
  if (job.status === "called_back")
    return {
      skills: ["skill_plumbing", "skill_live_tests", "skill_driving"],
      tools: ALWAYS_CARRIED,
      people: 1,
      work_s: WORK_h.service * HOUR_s,
      drive_s,
      parts: [],
    };
  const site = siteOf(job, books);
  const { lines } = collectKit(KIT_RULES, site);
  return {
    skills: skillsFor(site),
    tools: toolsFor(site),
    people: site.unit !== undefined && site.unit.body.emptyMass_kg <= ONE_PERSON_kg ? 1 : 2,
    work_s: workTime_h(site) * HOUR_s,
    drive_s,
    parts: lines.filter(({ isOrdered }) => !isOrdered).map(({ part, amount }) => ({ part, amount })),
  };
}

function driveTo_s(place: string, { places, crew }: Books): number {
  const known = findByName(places, place);
  return 2 * travelTime_s(crew.travel, crew.travel.yard, known.ok ? known.entry.id : place.toLowerCase());
}

function skillsFor(site: KitSite): readonly SkillId[] {
  const opens = site.refrigerant_work !== undefined && site.refrigerant_work !== "none";
  const when: readonly (readonly [SkillId, boolean])[] = [
    ["skill_plumbing", true],
    ["skill_live_tests", true],
    ["skill_driving", true],
    ["skill_electrical", site.circuit_right === false],
    ["skill_gas", site.replaces === "gas"],
    ["skill_refrigerant", opens],
    ["skill_flammable", opens && site.flammable === true],
    ["skill_combustion", site.air_way === "ducts" && site.fuel_appliance === "natural_draft"],
  ];
  return when.filter(([, isNeeded]) => isNeeded).map(([skill]) => skill);
}

function toolsFor(site: KitSite): readonly string[] {
  const opens = site.refrigerant_work !== undefined && site.refrigerant_work !== "none";
  return [
    ...ALWAYS_CARRIED,
    "stair-dolly",
    "press-tool",
    ...(site.air_way === "ducts" ? ["manometer", "hole-saw"] : []),
    ...(site.fuel_appliance === "natural_draft" ? ["co-meter"] : []),
    ...(opens ? ["refrigerant-gauges"] : []),
  ];
}

function workTime_h({ circuit_right, air_way, replaces, condensate }: KitSite): number {
  return (
    WORK_h.swap +
    (circuit_right === false ? WORK_h.newCircuit : 0) +
    (air_way === "ducts" ? WORK_h.ducts : 0) +
    (replaces === "gas" ? WORK_h.gas : 0) +
    (condensate === "pump" || condensate === "nowhere" ? WORK_h.condensatePump : 0)
  );
}

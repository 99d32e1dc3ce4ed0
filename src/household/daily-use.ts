import type { Source } from "../declaration/source.ts";
import { toBase } from "../units/convert.ts";
import { PEOPLE_BY_BEDROOMS } from "./use-habits-table.ts";

export const BUILDING_AMERICA_USE: Source = {
  basis: "published",
  document: "Building America fixture use (Hendron and Engebrecht), as given by a national laboratory's method page",
  edition: "2010",
  section: "equation 3",
};
/**
 * Mixed water that the fixtures of a home use in a day.
 * @param bedrooms number of bedrooms, 0..12
 * @returns volume at the use temperature [L/day]
 * @source 30 + 10 a bedroom [gal/day]: Building America, equation 3
 * @limits a mean over many homes; one home may use half or twice as much. Leaves out the clothes washer and dishwasher
 */
export function fixtureUse_L(bedrooms: number): number {
  refuseOutside("bedrooms", bedrooms, 0, MOST_BEDROOMS);
  return toBase(30 + 10 * bedrooms, "gal");
}

/**
 * Mixed water that the fixtures of the rating standard's reference home use in a day.
 * @param bedrooms number of bedrooms, 0..12
 * @returns volume at the use temperature, distribution waste included [L/day]
 * @source 14.6 + 10 a bedroom, and waste 9.8 bedrooms^0.43 [gal/day]: ANSI/RESNET 301-2014 Addendum A-2015, 4.2.2.5.1.4
 * @limits runs lower than the Building America line for small homes; both are shown where it matters
 */
export function ratedFixtureUse_L(bedrooms: number): number {
  refuseOutside("bedrooms", bedrooms, 0, MOST_BEDROOMS);
  return toBase(14.6 + 10 * bedrooms + 9.8 * bedrooms ** 0.43, "gal");
}

/** Bedrooms that go with so many people; the inverse of the occupants line, not below zero. */
export function bedroomsFor(people: number): number {
  refuseOutside("people", people, 0, MOST_PEOPLE);
  return Math.max(0, (people - PEOPLE_BY_BEDROOMS.base) / PEOPLE_BY_BEDROOMS.each);
}

/** People who go with so many bedrooms. */
export function peopleFor(bedrooms: number): number {
  refuseOutside("bedrooms", bedrooms, 0, MOST_BEDROOMS);
  return PEOPLE_BY_BEDROOMS.base + PEOPLE_BY_BEDROOMS.each * bedrooms;
}

const MOST_BEDROOMS = 12;
const MOST_PEOPLE = 20;

function refuseOutside(name: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) throw new RangeError(`${name} must lie in ${low}..${high}, got ${value}`);
}

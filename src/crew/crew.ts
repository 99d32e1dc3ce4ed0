import type { Language } from "../messages/language.ts";
import type { CredentialKind } from "./credential-kinds-table.ts";

/** What follows when a credential has run out. "grace": work goes on for some days while the renewal is under way. */
export const LAPSE_RULES = ["stops_work", "grace", "warns"] as const;
export type LapseRule = (typeof LAPSE_RULES)[number];

/** A licence, certificate or card that somebody holds. All days are YYYY-MM-DD in the company's time zone. */
export interface Credential {
  readonly kind: CredentialKind;
  readonly number: string;
  readonly issuer: string;
  /** Last day on which it is valid; none where it does not run out. */
  readonly expires?: string;
  /** What the company or the state says about running out; the kind's own rule where nobody says otherwise. */
  readonly lapse?: LapseRule;
  /** Days after `expires` on which somebody may still work; only with the rule "grace". */
  readonly grace_days?: number;
  /** Day on which somebody last looked it up in the issuer's register. */
  readonly checked?: string;
}
/** Something that was taught and must be taught again. */
export interface Training {
  readonly subject: string;
  readonly done: string;
  /** Last day on which it counts. */
  readonly until?: string;
}
/** A tool that somebody carries. */
export interface Tool {
  /** Id in the book of parts and tools. */
  readonly tool: string;
  readonly id: string;
  /** Last day on which its calibration counts; none where it needs none. */
  readonly calibratedUntil?: string;
}

export const WEEKDAYS = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"] as const;
export type Weekday = (typeof WEEKDAYS)[number];
/** A stretch of a day by the clock on the wall [minutes after midnight]; an end past 1440 lies on the next day. */
export interface Shift {
  readonly from_min: number;
  readonly to_min: number;
}
/** Days on which somebody does not work, both ends included. */
export interface DaysOff {
  readonly from: string;
  readonly to: string;
}

/** Somebody who goes to site. `person` is an id of the people's book. */
export interface CrewMember {
  readonly person: string;
  readonly credentials: readonly Credential[];
  readonly training: readonly Training[];
  readonly tools: readonly Tool[];
  readonly hours: Readonly<Partial<Record<Weekday, readonly Shift[]>>>;
  readonly daysOff: readonly DaysOff[];
  /** Truck that they drive or ride in. */
  readonly truck?: string;
}

/** What lies in a truck, or in the shop, by id of the part: pieces, or metres of what is sold by length. */
export type Stock = Readonly<Record<string, number>>;
export interface Truck {
  readonly id: string;
  readonly name: string;
  readonly stock: Stock;
}
/** The trucks, and the shop that they are loaded from in the morning. */
export interface TruckBook {
  readonly trucks: readonly Truck[];
  readonly shop: Stock;
}

/** A part or tool with its name in both languages. */
export interface Part {
  readonly id: string;
  readonly name: Readonly<Record<Language, string>>;
  readonly group: "part" | "tool";
  /** "each": counted. "length": cut from a roll or a stick [m]. */
  readonly measure: "each" | "length";
}

/** Driving time between two places, the same both ways. */
export interface Leg {
  readonly from: string;
  readonly to: string;
  readonly time_s: number;
}
export interface TravelBook {
  readonly legs: readonly Leg[];
  /** Between two places that no leg names. */
  readonly otherwise_s: number;
  /** Between two sites of the same place. */
  readonly within_s: number;
  /** Where the trucks stand at night. */
  readonly yard: string;
}

/** Everything that a company knows about who can do a job, with what. */
export interface CrewBooks {
  readonly members: readonly CrewMember[];
  readonly trucks: TruckBook;
  readonly parts: readonly Part[];
  readonly travel: TravelBook;
}

/** Driving time that nobody wrote down: common practice in a town and its surroundings. */
const USUAL_DRIVE_s = 30 * 60;
const USUAL_HOP_s = 15 * 60;
/** What a company knows that has written none of these books. */
export const NO_CREW_BOOKS: CrewBooks = {
  members: [],
  trucks: { trucks: [], shop: {} },
  parts: [],
  travel: { legs: [], otherwise_s: USUAL_DRIVE_s, within_s: USUAL_HOP_s, yard: "" },
};

/** Driving time between two places [s]. */
export function travelTime_s({ legs, otherwise_s, within_s }: TravelBook, from: string, to: string): number {
  if (from === to) return within_s;
  const leg = legs.find((one) => (one.from === from && one.to === to) || (one.from === to && one.to === from));
  return leg?.time_s ?? otherwise_s;
}

import type { Source } from "../declaration/source.ts";
import { toBase } from "../units/convert.ts";

/** How one kind of use draws hot water. Flows and volumes at the fixture, mixed where somebody stands in it. */
export interface UseHabit {
  readonly flow_L_s: number;
  readonly flowDeviation_L_s: number;
  readonly duration_s: number;
  readonly durationDeviation_s: number;
  /** True: mixed to the wanted temperature at the fixture; false: an appliance that takes plain hot water. */
  readonly isMixed: boolean;
  readonly source: Source;
}
export const USES = ["shower", "bath", "sink", "dishwasher", "clothes_washer"] as const;
export type Use = (typeof USES)[number];

const EVENT_SCHEDULES: Source = {
  basis: "from_memory",
  document: "Hendron and Burch, Development of Standardized Domestic Hot Water Event Schedules, NREL/CP-550-40874",
  edition: "2007",
  section: "event characteristics",
};
const END_USES: Source = {
  basis: "published",
  document: "Mayer et al., Residential End Uses of Water, as quoted in a table of a water council",
  edition: "1999",
  section: "showers: 8.2 min, 2.2 gpm, 0.67 a person a day",
};

const gpm = (flow: number) => toBase(flow, "gpm");
const minutes = (time: number) => toBase(time, "min");

/** Means and spreads of single events. Spread of shower flow and time are from the event schedules paper. */
export const USE_HABITS: Readonly<Record<Use, UseHabit>> = {
  shower: {
    flow_L_s: gpm(2.2),
    flowDeviation_L_s: gpm(0.68),
    duration_s: minutes(8.2),
    durationDeviation_s: minutes(3.5),
    isMixed: true,
    source: END_USES,
  },
  bath: {
    flow_L_s: gpm(4.4),
    flowDeviation_L_s: gpm(1.17),
    duration_s: minutes(5.65),
    durationDeviation_s: minutes(2.09),
    isMixed: true,
    source: EVENT_SCHEDULES,
  },
  sink: {
    flow_L_s: gpm(1.14),
    flowDeviation_L_s: gpm(0.61),
    duration_s: minutes(0.62),
    durationDeviation_s: minutes(0.67),
    isMixed: true,
    source: EVENT_SCHEDULES,
  },
  dishwasher: {
    flow_L_s: gpm(1.39),
    flowDeviation_L_s: gpm(0.2),
    duration_s: minutes(1.53),
    durationDeviation_s: minutes(0.41),
    isMixed: false,
    source: EVENT_SCHEDULES,
  },
  clothes_washer: {
    flow_L_s: gpm(2.2),
    flowDeviation_L_s: gpm(0.62),
    duration_s: minutes(3.05),
    durationDeviation_s: minutes(1.62),
    isMixed: false,
    source: EVENT_SCHEDULES,
  },
};

/** Showers a person a day. */
export const SHOWERS_A_PERSON = { value: 0.67, source: END_USES } as const;

/**
 * Daily volume by end use, linear in the number of bedrooms [gal/day]: `base + each * bedrooms`.
 * The three mixed lines add to 30 + 10 a bedroom, which is the published total (see `daily-use.ts`).
 */
export const DAILY_VOLUMES = {
  values: {
    bath: { base: 3.5, each: 1.17 },
    sink: { base: 12.5, each: 4.16 },
    dishwasher: { base: 2.26, each: 0.75 },
    clothes_washer: { base: 2.35, each: 0.78 },
  },
  source: {
    basis: "from_memory",
    document: "Building America House Simulation Protocols",
    edition: "2014",
    section: "domestic hot water by end use",
  },
} as const satisfies { values: Record<Exclude<Use, "shower">, { base: number; each: number }>; source: Source };

/** People in a home of so many bedrooms: 0.87 + 0.59 a bedroom. */
export const PEOPLE_BY_BEDROOMS = {
  base: 0.87,
  each: 0.59,
  source: {
    basis: "from_memory",
    document: "Building America House Simulation Protocols",
    edition: "2014",
    section: "number of occupants",
  },
} as const satisfies { base: number; each: number; source: Source };

import type { Source } from "../declaration/source.ts";

/** One end of a scald time: temperature as the source prints it [°F], time [s], who says so. */
export interface ScaldPoint {
  readonly at_F: number;
  readonly time_s: number;
  readonly by: keyof typeof SCALD_SOURCES;
}

export const SCALD_SOURCES = {
  moritz_henriques: {
    basis: "published",
    document: "Burn time table in the tradition of Moritz and Henriques (1947), 2nd and 3rd degree",
    section: "secondary copy read; primary paper not read",
  },
  safety_list: {
    basis: "published",
    document: "Tap water scald list, 3rd degree in adults",
    section: "secondary copy; matches CPSC publication 5098 from memory",
  },
  hospital_list: { basis: "published", document: "Children's hospital scald prevention page, list of burn times" },
  university_list: {
    basis: "published",
    document: "University hospital list of burn times",
    section: "secondary copy read",
  },
  burn_foundation: {
    basis: "published",
    document: "Burn Foundation, times for 3rd degree burns",
    section: "secondary copies read",
  },
} as const satisfies Readonly<Record<string, Source>>;

/** The shortest time that any source gives, hotter last. Where a source gives 2nd degree, that counts. */
export const SHORTEST_POINTS: readonly ScaldPoint[] = [
  { at_F: 113, time_s: 7200, by: "moritz_henriques" },
  { at_F: 116.6, time_s: 1200, by: "moritz_henriques" },
  { at_F: 118.4, time_s: 900, by: "moritz_henriques" },
  { at_F: 120, time_s: 300, by: "safety_list" },
  { at_F: 124, time_s: 120, by: "moritz_henriques" },
  { at_F: 125, time_s: 90, by: "hospital_list" },
  { at_F: 131, time_s: 17, by: "moritz_henriques" },
  { at_F: 140, time_s: 3, by: "moritz_henriques" },
  { at_F: 150, time_s: 1.5, by: "hospital_list" },
  { at_F: 155, time_s: 1, by: "hospital_list" },
];

/** The longest time that any source gives. */
export const LONGEST_POINTS: readonly ScaldPoint[] = [
  { at_F: 113, time_s: 10_800, by: "moritz_henriques" },
  { at_F: 116.6, time_s: 2700, by: "moritz_henriques" },
  { at_F: 118.4, time_s: 1200, by: "moritz_henriques" },
  { at_F: 120, time_s: 600, by: "moritz_henriques" },
  { at_F: 124, time_s: 252, by: "moritz_henriques" },
  { at_F: 131, time_s: 30, by: "moritz_henriques" },
  { at_F: 140, time_s: 6, by: "safety_list" },
  { at_F: 150, time_s: 2, by: "safety_list" },
  { at_F: 156, time_s: 1, by: "burn_foundation" },
];

import type { Source } from "../declaration/source.ts";

export const LOAD_CODES = ["ipc", "upc"] as const;
export type LoadCode = (typeof LOAD_CODES)[number];
/** Who uses the fixtures: one household, or the public. */
export const FIXTURE_USES = ["private", "public"] as const;
export type FixtureUse = (typeof FIXTURE_USES)[number];
/** How toilets flush. */
export const FLUSHES = ["tank", "valve"] as const;
export type Flush = (typeof FLUSHES)[number];

export const FIXTURES = [
  "bath_groups",
  "toilets",
  "lavatories",
  "showers",
  "tubs",
  "kitchen_sinks",
  "dishwashers",
  "clothes_washers",
] as const;
export type Fixture = (typeof FIXTURES)[number];

/** Water supply fixture units: cold pipe, hot pipe, both together. */
export interface FixtureLoad {
  readonly cold: number;
  readonly hot: number;
  readonly total: number;
}
const load = (cold: number, hot: number, total: number): FixtureLoad => ({ cold, hot, total });

type Loads = Readonly<Record<FixtureUse, Readonly<Record<Exclude<Fixture, "toilets" | "bath_groups">, FixtureLoad>>>>;
type FlushLoads = Readonly<Record<FixtureUse, Readonly<Record<Flush, FixtureLoad>>>>;
interface LoadTable {
  readonly source: Source;
  readonly fixtures: Loads;
  readonly toilets: FlushLoads;
  /** A toilet, a lavatory and a tub or shower in one room. */
  readonly bath_groups: FlushLoads;
}

/** IPC Table E103.3(2): private rows down to lavatories read in a copy, the others from memory. The public has no bathroom group there: its parts are added up. */
const IPC: LoadTable = {
  source: {
    basis: "published",
    document: "IPC",
    edition: "2018",
    section: "Table E103.3(2)",
  },
  fixtures: {
    private: {
      lavatories: load(0.5, 0.5, 0.7),
      showers: load(1, 1, 1.4),
      tubs: load(1, 1, 1.4),
      kitchen_sinks: load(1, 1, 1.4),
      dishwashers: load(0, 1.4, 1.4),
      clothes_washers: load(1, 1, 1.4),
    },
    public: {
      lavatories: load(1.5, 1.5, 2),
      showers: load(3, 3, 4),
      tubs: load(3, 3, 4),
      kitchen_sinks: load(3, 3, 4),
      dishwashers: load(0, 1.4, 1.4),
      clothes_washers: load(2.25, 2.25, 3),
    },
  },
  toilets: {
    private: { tank: load(2.2, 0, 2.2), valve: load(6, 0, 6) },
    public: { tank: load(5, 0, 5), valve: load(10, 0, 10) },
  },
  bath_groups: {
    private: { tank: load(2.7, 1.5, 3.6), valve: load(6, 3, 8) },
    public: { tank: load(9.5, 4.5, 11), valve: load(14.5, 4.5, 16) },
  },
};

/** UPC Table 610.3: totals; where a fixture takes both, each pipe counts three quarters of its total. */
const both = (total: number): FixtureLoad => load(0.75 * total, 0.75 * total, total);
const UPC_FIXTURES = {
  lavatories: both(1),
  showers: both(2),
  tubs: both(4),
  kitchen_sinks: both(1.5),
  dishwashers: load(0, 1.5, 1.5),
  clothes_washers: both(4),
};
const UPC: LoadTable = {
  source: { basis: "from_memory", document: "UPC", edition: "2021", section: "Table 610.3 and its notes" },
  fixtures: { private: UPC_FIXTURES, public: UPC_FIXTURES },
  toilets: {
    private: { tank: load(2.5, 0, 2.5), valve: load(5, 0, 5) },
    public: { tank: load(2.5, 0, 2.5), valve: load(5, 0, 5) },
  },
  bath_groups: {
    private: { tank: load(6.25, 3.75, 7.5), valve: load(8.75, 3.75, 10) },
    public: { tank: load(6.25, 3.75, 7.5), valve: load(8.75, 3.75, 10) },
  },
};

export const LOAD_TABLES: Readonly<Record<LoadCode, LoadTable>> = { ipc: IPC, upc: UPC };

/** Hose bibbs of the UPC: the first, and each one more. From memory. */
export const UPC_HOSE_BIBBS = { first: 2.5, more: 1 };
/** Flow of a hose bibb [gpm]. Source: IPC 2018 Table 604.3, read in a copy. */
export const HOSE_BIBB_GPM = 5;

/** One row of a demand table: fixture units, flow [gpm], and whether it was read or is remembered. */
export type DemandRow = readonly [units: number, flow_gpm: number, basis: "read" | "memory"];
interface DemandCurve {
  readonly name: string;
  readonly document: string;
  readonly edition: string;
  readonly section: string;
  readonly rows: Readonly<Record<Flush, readonly DemandRow[]>>;
}

const read = (rows: readonly (readonly [number, number])[]): DemandRow[] => rows.map(([u, q]) => [u, q, "read"]);
const memory = (rows: readonly (readonly [number, number])[]): DemandRow[] => rows.map(([u, q]) => [u, q, "memory"]);
const merge = (...parts: readonly (readonly DemandRow[])[]): readonly DemandRow[] =>
  parts.flat().sort(([a], [b]) => a - b);

/* Rows read: an engineering reference that prints the same numbers. The rest of the table from memory. */
const IPC_TANK = merge(
  read([
    [1, 3],
    [2, 5],
    [4, 8],
    [8, 12.8],
    [15, 17.5],
    [30, 23.3],
    [50, 29.1],
  ]),
  memory([
    [3, 6.5],
    [5, 9.4],
    [6, 10.7],
    [7, 11.8],
    [9, 13.7],
    [10, 14.6],
    [12, 16],
    [14, 17],
    [16, 18],
    [18, 18.8],
  ]),
  memory([
    [20, 19.6],
    [25, 21.5],
    [35, 24.9],
    [40, 26.3],
    [45, 27.7],
    [60, 32],
    [70, 35],
    [80, 38],
    [90, 41],
  ]),
  memory([
    [100, 43.5],
    [120, 48],
    [140, 52.5],
    [160, 57],
    [180, 61],
    [200, 65],
    [225, 70],
    [250, 75],
    [300, 85],
  ]),
);
const IPC_VALVE = merge(
  read([
    [5, 15],
    [7, 19.8],
    [10, 27],
    [15, 31],
    [20, 35],
    [30, 42],
    [50, 50],
  ]),
  memory([
    [6, 17.4],
    [8, 22.2],
    [9, 24.6],
    [12, 28.6],
    [25, 38],
    [35, 44],
    [40, 46],
    [45, 48],
    [60, 54],
    [70, 58],
  ]),
  memory([
    [80, 61.2],
    [90, 64.3],
    [100, 67.5],
    [120, 73],
    [140, 77],
    [160, 81],
    [180, 85.5],
    [200, 90],
    [225, 95.5],
  ]),
  memory([
    [250, 101],
    [300, 108],
  ]),
);

/* Hunter's curve as the National Standard Plumbing Code prints it; 15 to 100 units from memory. */
const HUNTER_TANK = merge(
  read([
    [3, 3],
    [4, 4],
    [5, 4.5],
    [6, 5],
    [7, 6],
    [8, 7],
    [9, 7.5],
    [10, 8],
    [11, 8.5],
    [12, 9],
    [13, 10],
    [14, 10.5],
  ]),
  memory([
    [20, 14],
    [25, 17],
    [30, 20],
    [40, 25],
    [50, 29],
    [60, 33],
    [80, 39],
    [100, 44],
  ]),
  read([
    [120, 49],
    [140, 53],
    [160, 57],
    [180, 61],
    [200, 65],
    [225, 70],
    [250, 75],
    [300, 85],
  ]),
);
const HUNTER_VALVE = merge(
  read([
    [5, 22],
    [6, 23],
    [7, 24],
    [8, 25],
    [9, 26],
    [10, 27],
    [11, 28],
    [12, 29],
    [13, 29.5],
    [14, 30],
  ]),
  memory([
    [20, 35],
    [25, 38],
    [30, 41],
    [40, 47],
    [50, 51],
    [60, 55],
    [80, 62],
    [100, 68],
  ]),
  read([
    [120, 74],
    [140, 78],
    [160, 83],
    [180, 87],
    [200, 91],
    [225, 95],
    [250, 100],
    [300, 110],
  ]),
);

export const DEMAND_CURVES: Readonly<Record<LoadCode, DemandCurve>> = {
  ipc: {
    name: "IPC Table E103.3(3)",
    document: "IPC",
    edition: "2018",
    section: "Table E103.3(3)",
    rows: { tank: IPC_TANK, valve: IPC_VALVE },
  },
  upc: {
    name: "Hunter, UPC Chart A-2",
    document: "National Standard Plumbing Code",
    edition: "as published online",
    section: "Table B.5.4, Hunter's curve; that UPC Charts A-2 and A-3 draw the same curve is from memory",
    rows: { tank: HUNTER_TANK, valve: HUNTER_VALVE },
  },
};
/** Beyond this the tables above are not kept. */
export const MOST_FIXTURE_UNITS = 300;

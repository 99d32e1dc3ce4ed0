import type { Source } from "../declaration/source.ts";
import { toBase } from "../units/convert.ts";
import {
  DEMAND_CURVES,
  type DemandRow,
  FIXTURES,
  type Fixture,
  type FixtureLoad,
  type FixtureUse,
  type Flush,
  HOSE_BIBB_GPM,
  LOAD_TABLES,
  type LoadCode,
  MOST_FIXTURE_UNITS,
  UPC_HOSE_BIBBS,
} from "./fixture-unit-table.ts";
import { requireWithin } from "./require-within.ts";

export type FixtureCounts = Readonly<Record<Fixture, number>>;
const NO_LOAD: FixtureLoad = { cold: 0, hot: 0, total: 0 };
const MOST_FIXTURES = 100;

/** Fixtures whose IPC rows were read; those of the others are remembered. */
const READ_IN_IPC: readonly Fixture[] = ["bath_groups", "lavatories", "tubs", "kitchen_sinks", "dishwashers"];

/** Source of the loads that these counts use: published only where every row of them was read. */
export function loadSource(counts: FixtureCounts, code: LoadCode, use: FixtureUse): Source {
  const used = FIXTURES.filter((fixture) => counts[fixture] > 0);
  const isRead = use === "private" && used.every((fixture) => READ_IN_IPC.includes(fixture));
  const { source } = LOAD_TABLES[code];
  return code === "ipc" && isRead ? source : { ...source, basis: "from_memory" };
}

/** Load of one fixture by the table of a code. */
export function fixtureLoad(fixture: Fixture, code: LoadCode, use: FixtureUse, flush: Flush): FixtureLoad {
  const table = LOAD_TABLES[code];
  if (fixture === "toilets" || fixture === "bath_groups") return table[fixture][use][flush];
  return table.fixtures[use][fixture];
}

/**
 * Fixture units of a house.
 * @param counts how many of each fixture, 0..100 each
 * @param hose_bibbs hose bibbs that may run together, 0..100
 * @param code whose table
 * @param use private or public
 * @param flush how the toilets flush
 * @returns water supply fixture units on the cold pipe, the hot pipe, and both together
 * @source LOAD_TABLES; the IPC counts hose bibbs as steady flow (E102.2), not in units
 */
export function sumFixtureUnits(
  counts: FixtureCounts,
  hose_bibbs: number,
  code: LoadCode,
  use: FixtureUse,
  flush: Flush,
): FixtureLoad {
  const outside = hoseUnits(hose_bibbs, code);
  return FIXTURES.reduce(
    (sum, fixture) => {
      requireWithin(fixture, counts[fixture], 0, MOST_FIXTURES);
      return add(sum, fixtureLoad(fixture, code, use, flush), counts[fixture]);
    },
    add(NO_LOAD, { cold: outside, hot: 0, total: outside }, 1),
  );
}

function hoseUnits(hose_bibbs: number, code: LoadCode): number {
  requireWithin("hose_bibbs", hose_bibbs, 0, MOST_FIXTURES);
  if (code === "ipc" || hose_bibbs === 0) return 0;
  return UPC_HOSE_BIBBS.first + UPC_HOSE_BIBBS.more * (hose_bibbs - 1);
}

function add(sum: FixtureLoad, load: FixtureLoad, times: number): FixtureLoad {
  return {
    cold: sum.cold + times * load.cold,
    hot: sum.hot + times * load.hot,
    total: sum.total + times * load.total,
  };
}

/** Flow that is added to the demand whatever the fixtures do [L/s]: hose bibbs, where the code counts them as steady. */
export function steadyFlow_L_s(hose_bibbs: number, code: LoadCode): number {
  requireWithin("hose_bibbs", hose_bibbs, 0, MOST_FIXTURES);
  return code === "ipc" ? toBase(HOSE_BIBB_GPM * hose_bibbs, "gpm") : 0;
}

/** A demand and how sure its table rows are. */
export interface Demand {
  readonly flow_L_s: number;
  readonly source: Source;
}

/**
 * Most probable demand of a number of fixture units.
 * @param units water supply fixture units, 0..300
 * @param code whose curve
 * @param flush column for toilets with flush tanks or flush valves
 * @returns flow [L/s], between the rows by straight line, and its source: read where both rows were read
 * @source DEMAND_CURVES
 * @limits below the first row its flow is kept; no units, no flow
 */
export function demandFlow(units: number, code: LoadCode, flush: Flush): Demand {
  requireWithin("units", units, 0, MOST_FIXTURE_UNITS);
  const { document, edition, section, rows } = DEMAND_CURVES[code];
  const { flow_gpm, isRead } = interpolate(units, rows[flush]);
  const flow_L_s = units === 0 ? 0 : toBase(flow_gpm, "gpm");
  return { flow_L_s, source: { basis: isRead ? "published" : "from_memory", document, edition, section } };
}

function interpolate(units: number, rows: readonly DemandRow[]): { flow_gpm: number; isRead: boolean } {
  const above = rows.find(([u]) => u >= units);
  const below = rows.findLast(([u]) => u <= units);
  const [u0, q0, basis0] = below ?? above ?? [0, 0, "memory"];
  const [u1, q1, basis1] = above ?? below ?? [0, 0, "memory"];
  const part = u1 === u0 ? 0 : (units - u0) / (u1 - u0);
  return { flow_gpm: q0 + part * (q1 - q0), isRead: basis0 === "read" && basis1 === "read" };
}

import type { BenchRow } from "./bench-row.ts";
import { benchFaults } from "./faults.ts";
import { benchPick } from "./pick.ts";
import { benchSlackAck } from "./slack-ack.ts";
import { benchTankYear } from "./tank-year.ts";
import { benchTeamsEcho } from "./teams-echo.ts";
import { benchTopics } from "./topics.ts";

/** Prints every benchmark as ratios of one run; `npm run bench slack` runs only those whose name begins so. */
const BENCHES: readonly {
  readonly name: string;
  readonly run: () => Promise<{ readonly rows: readonly BenchRow[] }>;
}[] = [
  { name: "tank: a simulated year against a bare loop of the same size", run: benchTankYear },
  { name: "pick: 40 models, 3 setpoints, 4 modes in two threads", run: benchPick },
  { name: "topics: engine time against the budget", run: benchTopics },
  { name: "faults: the reasoning against a checklist and the likeliest cause first", run: benchFaults },
  { name: "slack: signed command against a bare Bolt echo", run: benchSlackAck },
  { name: "teams: authenticated activity against a bare botbuilder echo", run: benchTeamsEcho },
];

const wanted = process.argv[2] ?? "";
for (const { name, run } of BENCHES.filter((bench) => bench.name.startsWith(wanted))) {
  console.log(`\n${name}`);
  const { rows } = await run();
  const cells = [["", "ours", "bare", "ratio", "budget", ""], ...rows.map(toCells)];
  const widths = cells[0]?.map((_, column) => Math.max(...cells.map((row) => row[column]?.length ?? 0))) ?? [];
  for (const row of cells)
    console.log(
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join("  ")
        .trimEnd(),
    );
}

function toCells({ name, unit, door, bare, ratio, budget, isKept }: BenchRow): string[] {
  const figure = (value: number) => `${value >= 100 ? Math.round(value) : value.toPrecision(3)} ${unit}`;
  return [name, figure(door), figure(bare), ratio.toFixed(2), budget, isKept ? "kept" : "NOT kept"];
}

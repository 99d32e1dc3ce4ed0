import { describe, expect, test } from "vitest";
import { sketchChart } from "../../adapters/terminal/sketch-chart.ts";
import type { ChartSeries } from "../../src/declaration/chart.ts";
import type { ChartBlock } from "../../src/messages/card.ts";

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

function block(xKind: "hour_of_day" | "month", series: readonly ChartSeries[], rows: string[][] = []): ChartBlock {
  return {
    kind: "chart",
    units: "us",
    title: "t",
    alt: "a",
    labels: Object.fromEntries(MONTHS.map((name, index) => [`month-${index + 1}`, name])),
    table: { kind: "table", caption: "", columns: [], rows },
    chart: { id: "c", xKind, series },
  };
}
const KINDS: Partial<Record<ChartSeries["mark"], ChartSeries["kind"]>> = { bar: "money", strip: "share" };
const series = (id: string, mark: ChartSeries["mark"], x: number[], y: number[]): ChartSeries => ({
  id,
  mark,
  kind: KINDS[mark] ?? "temperature",
  x,
  y,
});
/** The strip of a line, between its bars. */
const stripOf = (line = "") => line.slice(line.indexOf("|") + 1, line.lastIndexOf("|"));

describe("a day in characters", () => {
  test("puts what happens at one hour into one column, however many points a series has", () => {
    const [setpoint, heat] = sketchChart(
      block("hour_of_day", [
        series("setpoint", "line", [0, 12, 12, 18, 18, 24], [50, 50, 60, 60, 50, 50]),
        series("heat", "strip", [0, 12, 18], [0, 1, 0]),
      ]),
      60,
    );
    const columns = stripOf(heat).length;
    expect([stripOf(heat).indexOf("#"), stripOf(heat).lastIndexOf("#") + 1]).toEqual([columns / 2, (columns * 3) / 4]);
    expect(stripOf(setpoint).slice(columns / 2 + 1, (columns * 3) / 4 - 1)).toMatch(/^#+$/);
    expect(stripOf(setpoint).slice(0, columns / 2 - 1)).toMatch(/^\.+$/);
  });

  test("shades two series of one kind on one scale", () => {
    const [hot, cold] = sketchChart(
      block("hour_of_day", [series("hot", "line", [0, 24], [60, 60]), series("cold", "layer", [0, 24], [10, 10])]),
      60,
    );
    expect([stripOf(hot)[0], stripOf(cold)[0]]).toEqual(["#", "."]);
  });

  test("does not lose a draw of a few minutes, and leaves nothing drawn blank", () => {
    const x = Array.from({ length: 144 }, (_, index) => index / 6);
    const y = x.map((at) => (at === 7 ? 30 : 0));
    const [drawn] = sketchChart(block("hour_of_day", [series("drawn", "bar", x, y)]), 60);
    expect(stripOf(drawn).replaceAll(" ", "")).toBe("#");
  });

  test("has the hours under it, the last one at its end", () => {
    const lines = sketchChart(block("hour_of_day", [series("s", "strip", [0, 24], [1, 0])]), 60);
    expect(lines.at(-1)?.trim().split(/ +/)).toEqual(["0", "6", "12", "18", "24"]);
    expect(lines.at(-1)?.length).toBe((lines[0]?.length ?? 0) - 1);
  });
});

describe("a year in characters", () => {
  const x = MONTHS.map((_, index) => index + 1);
  const rows = x.map((month) => [String(month), `$${month}`, `$${2 * month}`]);
  const year = block(
    "month",
    [
      series("new", "bar", x, x),
      series(
        "old",
        "bar",
        x,
        x.map((month) => 2 * month),
      ),
    ],
    rows,
  );

  test("has columns from zero over the names of the months, the highest value beside the top, and a key", () => {
    const lines = sketchChart(year, 78);
    expect(lines[0]).toMatch(/^\$24 \|.*oo$/);
    expect(lines.at(-2)?.trim().split(/ +/)).toEqual(MONTHS);
    expect(lines.at(-1)?.trim()).toBe("# new   o old");
    const count = (sign: string) => lines.slice(0, 8).filter((line) => line.endsWith(sign)).length;
    // December: 24 is the highest, so 12 is half of the eight rows.
    expect([count("oo"), count("##oo")]).toEqual([8, 4]);
  });

  test("is strips where the screen is too narrow for columns", () => {
    const lines = sketchChart(year, 50);
    expect(lines).toHaveLength(2);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(50);
  });
});

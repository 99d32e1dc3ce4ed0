import { expect, test } from "vitest";
import { declareCaution, raiseCautions, silencedCautions } from "../../src/cautions/caution.ts";
import type { Amendment, Code } from "../../src/cautions/code.ts";
import { isOver } from "../../src/cautions/compare.ts";
import { q } from "../../src/declaration/answer.ts";
import { toBase } from "../../src/units/convert.ts";
import { fixtureBooks } from "../support/fixture-books.ts";

const psi = (value: number) => toBase(value, "psi");
const OWN = { basis: "from_memory", document: "Test code", checkedOn: "2026-11-25" } as const;
const TOWN = { basis: "invented", document: "Testbench rules", section: "3", checkedOn: "2026-11-25" } as const;
const EXAMPLES = { fires: [{ name: "a", site: {} }], silent: [{ name: "b", site: {} }] } as const;

/** Two small cautions of the test bench: one goes by a limit of the code, one is a danger to life. */
const pressure = declareCaution({
  id: "bench_pressure",
  severity: "should",
  cites: [OWN],
  decides: "authority",
  data: { limit: "pressure" },
  check: ({ linePressure_kPa }, { limits }) =>
    linePressure_kPa !== undefined && isOver(linePressure_kPa, limits.line_pressure.value)
      ? { limit: q("pressure", limits.line_pressure.value) }
      : undefined,
  examples: EXAMPLES,
});
const gas = declareCaution({
  id: "bench_gas",
  severity: "stop",
  cites: [OWN],
  decides: "authority",
  data: {},
  check: ({ smellsOfGas }) => (smellsOfGas === true ? {} : undefined),
  examples: EXAMPLES,
});
const ALL = [pressure, gas];

function amended(change: Partial<Amendment> & Pick<Amendment, "action">): Code {
  const because = { en: "the mains surge", es: "la red sube" };
  return { ...fixtureBooks.code, amendments: [{ caution: "bench_pressure", because, cites: TOWN, ...change }] };
}

test("without an amendment a caution is raised as it was declared", () => {
  const [raised] = raiseCautions(ALL, { linePressure_kPa: psi(95) }, fixtureBooks.code);
  expect(raised).toEqual({
    id: "bench_pressure",
    severity: "should",
    data: { limit: q("pressure", psi(80)) },
    cites: [OWN],
    decides: "authority",
  });
});

test("a tightened severity takes its place among the worst, with the town's document beside the code's", () => {
  const site = { linePressure_kPa: psi(95), smellsOfGas: true };
  const [first, second] = raiseCautions(ALL, site, amended({ action: "tighten", severity: "must" }));
  expect(first?.id).toBe("bench_gas");
  expect(second).toMatchObject({ severity: "must", cites: [OWN, TOWN], local: { action: "tighten" } });
});

test("a tightened limit raises the caution where the model code would not, and shows the number that holds here", () => {
  const tighter = amended({ action: "tighten", limit: { id: "line_pressure", value: psi(70) } });
  const site = { linePressure_kPa: psi(75) };
  expect(raiseCautions(ALL, site, fixtureBooks.code)).toEqual([]);
  expect(raiseCautions(ALL, site, tighter)).toMatchObject([{ data: { limit: { value: psi(70) } } }]);
});

test("a replaced caution cites the town instead of the code, and carries its own words", () => {
  const asks = { en: "Log it.", es: "Anótelo." };
  const [raised] = raiseCautions(ALL, { linePressure_kPa: psi(95) }, amended({ action: "replace", asks }));
  expect(raised).toMatchObject({
    cites: [TOWN],
    local: { action: "replace", asks, because: { en: "the mains surge" } },
  });
});

test("a silenced caution is not raised, and is listed with why", () => {
  const site = { linePressure_kPa: psi(95) };
  const silent = amended({ action: "silence" });
  expect(raiseCautions(ALL, site, silent)).toEqual([]);
  expect(silencedCautions(ALL, site, silent)).toMatchObject([
    { id: "bench_pressure", local: { because: { en: "the mains surge" }, by: { document: "Testbench rules" } } },
  ]);
  expect(silencedCautions(ALL, { linePressure_kPa: psi(60) }, silent)).toEqual([]);
});

test("a danger to life is raised even where a book silences it", () => {
  const silent = amended({ action: "silence", caution: "bench_gas" });
  expect(raiseCautions(ALL, { smellsOfGas: true }, silent)).toMatchObject([{ id: "bench_gas", severity: "stop" }]);
  expect(silencedCautions(ALL, { smellsOfGas: true }, silent)).toEqual([]);
});

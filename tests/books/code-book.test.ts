import { cp, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import { codeAt } from "../../src/books/books.ts";
import { toBase } from "../../src/units/convert.ts";

const SEEDS = new URL("../../seeds", import.meta.url).pathname;
const { cautions } = await loadLibrary();
const HEAD = `invented: true
adopted:
  plumbing: { family: IPC, edition: "2021" }
  electrical: { family: NEC, edition: "2023" }
  mechanical: { family: IMC, edition: "2021" }
`;
const AMENDMENT = `amendments:
  - caution: line_pressure_high
    action: silence
    because: the town said so
    document: Town rules
    basis: invented
    checked_on: 2026-11-25
`;

let folder = "";
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-code-"));
  await cp(SEEDS, folder, { recursive: true });
});
afterEach(() => rm(folder, { recursive: true }));

async function loadWith(code: string) {
  await writeFile(join(folder, "code.yaml"), code);
  return await loadBooks(folder, cautions);
}

async function faultOf(code: string): Promise<string> {
  const error: unknown = await loadWith(code).catch((fault: unknown) => fault);
  return error instanceof Error ? error.message.replaceAll(`${folder}/`, "") : "no fault";
}

describe("the demo company's code", () => {
  test("is good against the cautions that there are, frozen, and amends in all three ways", async () => {
    const { code, codes } = await loadBooks(SEEDS, cautions);
    expect(Object.isFrozen(code.limits)).toBe(true);
    expect(new Set(code.amendments.map(({ action }) => action))).toEqual(new Set(["tighten", "replace", "silence"]));
    expect(Object.keys(codes)).toEqual(["ostrowick", "saltmere"]);
  });

  /** Values of the check list: IRC P2903.3.1 80 psi, relief valve 150 psi and 210 °F, IPC 412.5 120 °F, 607.1.2 110 °F. */
  test("sets the numbers that model codes print", async () => {
    const { limits } = (await loadBooks(SEEDS)).code;
    expect(limits.line_pressure.value).toBeCloseTo(toBase(80, "psi"), 9);
    expect(limits.relief_pressure.value).toBeCloseTo(toBase(150, "psi"), 9);
    expect(limits.relief_temperature.value).toBeCloseTo(toBase(210, "F"), 9);
    expect(limits.tub.value).toBeCloseTo(toBase(120, "F"), 9);
    expect(limits.shower.value).toBeCloseTo(toBase(120, "F"), 9);
    expect(limits.public_lavatory.value).toBeCloseTo(toBase(110, "F"), 9);
    expect(limits.pan_depth.value).toBeCloseTo(toBase(1.5, "in"), 9);
  });

  test("holds every limit with a day on which somebody looked", async () => {
    for (const { cites } of Object.values((await loadBooks(SEEDS)).code.limits))
      expect(cites.checkedOn).toMatch(/^20\d\d-\d\d-\d\d$/);
  });

  test("follows the family that each place has adopted", async () => {
    const books = await loadBooks(SEEDS);
    expect(codeAt(books, undefined).limits.tub.cites.document).toBe("IPC");
    expect(codeAt(books, "Saltmere").limits.tub.cites.document).toBe("UPC");
    expect(codeAt(books, "saltmere").adopted.electrical.family).toBe("NEC");
    expect(codeAt(books, "nowhere")).toBe(books.code);
  });
});

describe("which number is followed", () => {
  const row = (values: string) => `${HEAD}limits:\n  tub:\n    area: plumbing\n    values:\n${values}`;
  const value = (who: string, degrees: number) =>
    `      - { ${who}, at_most: ${degrees} F, basis: from_memory, checked_on: 2026-11-25 }\n`;
  const ipc = (edition: number, degrees: number) => value(`family: IPC, edition: "${edition}"`, degrees);
  const followed = async (values: string) => {
    const { tub } = (await loadWith(row(values))).code.limits;
    return { degrees: tub.value, others: tub.others?.map((one) => one.value) ?? [] };
  };

  test("the adopted edition before a nearer one in the list, the other kept beside it", async () => {
    expect(await followed(ipc(2018, 118) + ipc(2021, 119))).toEqual({
      degrees: toBase(119, "F"),
      others: [toBase(118, "F")],
    });
  });

  test("the nearest edition where the adopted one is not listed", async () => {
    expect((await followed(ipc(2012, 115) + ipc(2018, 118))).degrees).toBe(toBase(118, "F"));
  });

  test("the strictest where the adopted family says nothing", async () => {
    const values = value("document: One", 122) + value("document: Two", 117);
    expect((await followed(values)).degrees).toBe(toBase(117, "F"));
  });

  test("the place's own before any model code, and only there", async () => {
    const books = await loadWith(row(ipc(2021, 119) + value("document: Town rules, place: saltmere", 112)));
    expect(codeAt(books, "saltmere").limits.tub.value).toBe(toBase(112, "F"));
    expect(codeAt(books, "ostrowick").limits.tub.value).toBe(toBase(119, "F"));
  });
});

test("a company without code.yaml works under model codes, without amendments, and is known to have said nothing", async () => {
  await rm(join(folder, "code.yaml"));
  const { code, company } = await loadBooks(folder, cautions);
  expect(code).toMatchObject({ isAssumed: true, amendments: [], adopted: { plumbing: { family: "IPC" } } });
  expect(company.isInvented).toBe(true);
});

test("a company that says only what it adopted gets the numbers that come with Oldhand", async () => {
  const { code } = await loadWith(HEAD);
  expect(code.isAssumed).toBeUndefined();
  expect(code.limits.line_pressure.value).toBeCloseTo(toBase(80, "psi"), 9);
});

test("one text serves both languages", async () => {
  const { code } = await loadWith(HEAD + AMENDMENT);
  expect(code.amendments[0]?.because).toEqual({ en: "the town said so", es: "the town said so" });
});

const AT = "code.yaml line 7: amendments.0";
const FAULTS: readonly (readonly [name: string, code: string, fault: string])[] = [
  [
    "a caution that does not exist",
    AMENDMENT.replace("line_pressure_high", "line_presure_high"),
    `${AT}.caution: there is no caution line_presure_high;`,
  ],
  [
    "silence without a reason",
    AMENDMENT.replace("    because: the town said so\n", ""),
    `${AT}.because: is missing: write one text, or en: and es:`,
  ],
  [
    "a silenced danger to life",
    AMENDMENT.replace("line_pressure_high", "smell_of_gas"),
    "code.yaml line 8: amendments.0.action: smell_of_gas is a danger to life and cannot be silenced;",
  ],
  [
    "a severity that loosens",
    AMENDMENT.replace("silence", "tighten\n    severity: should"),
    "code.yaml line 9: amendments.0.severity: should is not severer than must,",
  ],
  [
    "a limit that loosens",
    AMENDMENT.replace("silence", "tighten\n    limit: { line_pressure: 90 psi }"),
    "code.yaml line 9: amendments.0.limit.line_pressure: is not stricter than the code that was adopted",
  ],
  [
    "tighten that tightens nothing",
    AMENDMENT.replace("silence", "tighten"),
    "code.yaml line 8: amendments.0.action: tighten needs",
  ],
  [
    "replace without words",
    AMENDMENT.replace("silence", "replace"),
    "code.yaml line 8: amendments.0.action: replace needs asks",
  ],
  [
    "silence with a severity",
    AMENDMENT.replace("silence", "silence\n    severity: stop"),
    "code.yaml line 8: amendments.0.action: silence takes neither severity nor limit",
  ],
  [
    "a place that is in no book",
    `${AMENDMENT}    place: atlantis\n`,
    "code.yaml line 13: amendments.0.place: atlantis",
  ],
  [
    "a second amendment of the same caution",
    AMENDMENT + AMENDMENT.replace("amendments:\n", ""),
    "code.yaml line 13: amendments.1.caution: line_pressure_high is amended above already",
  ],
  [
    "a limit nobody knows",
    "limits:\n  tubs: { area: plumbing, values: [] }\n",
    "code.yaml line 7: limits.tubs: is not known here",
  ],
  [
    "a number without a unit",
    'limits:\n  tub:\n    area: plumbing\n    values:\n      - { family: IPC, edition: "2021", at_most: 120, basis: published, checked_on: 2026-11-25 }\n',
    'code.yaml line 10: limits.tub.values.0.at_most: "120": write a number with its unit',
  ],
];

test.each(FAULTS)("refuses %s, with the line and what to write", async (_name, code, fault) => {
  expect((await faultOf(HEAD + code)).slice(0, fault.length)).toBe(fault);
});

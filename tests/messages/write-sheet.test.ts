import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { writeSheet } from "../../src/messages/write-sheet.ts";

/** Read back by a library that is not ours. */
const readBack = (sheet: string): string[][] => parse(sheet, { bom: true, record_delimiter: "\r\n" });

describe("a sheet", () => {
  test("is UTF-8 with its mark, lines end as RFC 4180 says, and quotes are doubled", () => {
    const sheet = writeSheet({ columns: ["Job", "Said"], rows: [["1001", 'a "b", ñ\nc']] });
    expect(sheet).toBe('\uFEFFJob,Said\r\n1001,"a ""b"", ñ\nc"\r\n');
  });

  test.each(["=1+1", "+1 555", "-cmd", "@sum", "\t=1", " =1", "\u202E=1", "＝1"])(
    "%j is words and no formula",
    (cell) => {
      expect(readBack(writeSheet({ columns: ["a"], rows: [[cell]] }))[1]).toEqual([`'${cell}`]);
    },
  );

  test.each(["-5", "12.5", "0", "1007"])("%s stays a number", (cell) => {
    expect(readBack(writeSheet({ columns: ["a"], rows: [[cell]] }))[1]).toEqual([cell]);
  });

  test("whatever stands in its cells comes back, at most with an apostrophe before it", () => {
    const cell = fc.string({ unit: "grapheme", minLength: 1, maxLength: 30 });
    const rows = fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(rows, (cells) => {
        const read = readBack(writeSheet({ columns: ["a", "b"], rows: cells })).slice(1);
        const plain = read.map((row) =>
          row.map((one, at) => (one.startsWith("'") && !cells.some((c) => c[at] === one) ? one.slice(1) : one)),
        );
        expect(plain).toEqual(cells);
        for (const one of read.flat()) expect(one).toMatch(/^(?![=+@\t\r])(?!-(?!\d+(\.\d+)?$))/);
      }),
      { seed: 7, numRuns: 200 },
    );
  });
});

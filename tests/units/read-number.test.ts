import { describe, expect, test } from "vitest";
import { type DecimalMark, readNumber } from "../../src/units/read-number.ts";

const read = (text: string, decimal: DecimalMark, isAlone = true) => readNumber(text, 0, { decimal, isAlone });
const BOTH: readonly DecimalMark[] = ["point", "comma"];

describe.each(BOTH)("for readers of the decimal %s", (decimal) => {
  test.each([
    { text: "80", value: 80 },
    { text: "0", value: 0 },
    { text: "57.3", value: 57.3 },
    { text: "57,3", value: 57.3 },
    { text: ".5", value: 0.5 },
    { text: "0.125", value: 0.125 },
    { text: "0,125", value: 0.125 },
    { text: "1,000.5", value: 1000.5 },
    { text: "1.000,5", value: 1000.5 },
    { text: "1,234,567", value: 1_234_567 },
    { text: "1.234.567", value: 1_234_567 },
    { text: "1,000", value: 1000 },
    { text: "12,500", value: 12_500 },
    { text: "1234.5", value: 1234.5 },
    { text: "3/4", value: 0.75 },
    { text: "1-1/2", value: 1.5 },
    { text: "1 1/2", value: 1.5 },
    { text: "1 - 1/2", value: 1.5 },
    { text: "11/16", value: 0.6875 },
    { text: "3 / 4", value: 0.75 },
    { text: "-5", value: -5 },
    { text: "+5", value: 5 },
    { text: "-1/2", value: -0.5 },
    { text: "1.5000", value: 1.5 },
  ])("$text is $value", ({ text, value }) => {
    const match = read(text, decimal);
    expect(match?.number?.value).toBe(value);
    expect(match?.number?.isOpen).toBeUndefined();
    expect(match?.end).toBe(text.length);
  });

  test.each([
    "120/240",
    "208/230",
    "12/2",
    "10/3",
    "4/4",
    "0/4",
    "3/7",
    "120-140",
    "1.2.3",
    "1,2,3",
    "1,00,000",
    "12/1/2026",
    "10:30",
    "1234567890123456",
    "555-123-4567",
  ])("%s is no number", (text) => {
    const match = read(text, decimal);
    expect(match).toBeDefined();
    expect(match?.number).toBeUndefined();
    expect(match?.end).toBe(text.length);
  });

  test.each(["", "gal", "-", ".", ",", "/2", "x3", "½"])("nothing is read from '%s'", (text) => {
    expect(read(text, decimal)).toBeUndefined();
  });
});

describe("one mark with exactly three digits behind it", () => {
  test("1.250 is one and a quarter for readers of the point", () => {
    expect(read("1.250", "point")?.number).toEqual({ value: 1.25 });
  });
  test("1.250 is open for readers of the comma", () => {
    expect(read("1.250", "comma")?.number).toEqual({ value: 1250, other: 1.25, isOpen: true });
  });
  test("1,250 is grouped, and for readers of the comma may be one and a quarter", () => {
    expect(read("1,250", "point")?.number).toEqual({ value: 1250 });
    expect(read("1,250", "comma")?.number).toEqual({ value: 1250, other: 1.25 });
  });
  test("a negative number keeps both readings", () => {
    expect(read("-1,250", "comma")?.number).toEqual({ value: -1250, other: -1.25 });
  });
  test("1234,500 has too long a first group to be grouped", () => {
    expect(read("1234,500", "comma")?.number).toEqual({ value: 1234.5 });
  });
});

describe("a comma inside a sentence", () => {
  test("50,60 is open for readers of the point: it may be two numbers", () => {
    expect(read("50,60", "point", false)?.number?.isOpen).toBe(true);
  });
  test("50,60 is a decimal for readers of the comma", () => {
    expect(read("50,60", "comma", false)?.number).toEqual({ value: 50.6 });
  });
  test("50, 60 ends before the comma", () => {
    expect(read("50, 60", "comma", false)).toEqual({ end: 2, number: { value: 50 } });
  });
});

test("a fraction says that it is one", () => {
  expect(read("3/4", "point")?.number?.isFraction).toBe(true);
  expect(read("0.75", "point")?.number?.isFraction).toBeUndefined();
});

test("the full stop behind a number is no part of it", () => {
  expect(read("80.", "point")).toEqual({ end: 2, number: { value: 80 } });
});

import { expect, test } from "vitest";
import { findOnTruck } from "../../src/faults/parts-on-truck.ts";

const TRUCK = ["Element 4500 W 240 V", "Gaskets for elements", "Válvula mezcladora 3/4"];

test("a part is on the truck when a listed thing has all its words, in any order, number or case", () => {
  expect(findOnTruck(["240 V element", "element gasket"], TRUCK)).toEqual([
    { part: "240 V element", listed: "Element 4500 W 240 V" },
    { part: "element gasket", listed: "Gaskets for elements" },
  ]);
});

test("accents do not matter", () => {
  expect(findOnTruck(["valvula mezcladora"], TRUCK)[0]?.listed).toBe("Válvula mezcladora 3/4");
});

test("what is not listed is said to be missing", () => {
  expect(findOnTruck(["208 V element", "dip tube"], TRUCK)).toEqual([{ part: "208 V element" }, { part: "dip tube" }]);
});

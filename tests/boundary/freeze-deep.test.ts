import { expect, test } from "vitest";
import { freezeDeep } from "../../src/boundary/freeze-deep.ts";

test("a tree is frozen where it stands, to its last branch", () => {
  const tree = { list: [{ deep: { value: 1 } }], map: new Map([["a", { value: 2 }]]) };
  expect(freezeDeep(tree)).toBe(tree);
  for (const branch of [tree, tree.list, tree.list[0], tree.list[0]?.deep, tree.map.get("a")])
    expect(Object.isFrozen(branch)).toBe(true);
});

test("a frozen map can be read and not changed", () => {
  const map = freezeDeep(new Map([["a", 1]]));
  expect([map.get("a"), map.size, [...map.keys()]]).toEqual([1, 1, ["a"]]);
  expect(() => map.set("b", 2)).toThrow("this map is frozen");
  expect(() => map.delete("a")).toThrow("this map is frozen");
  expect(() => map.clear()).toThrow("this map is frozen");
  expect([...map]).toEqual([["a", 1]]);
});

test("functions, words and nothing come back as they are", () => {
  const compute = () => 1;
  expect([freezeDeep(compute), freezeDeep("a"), freezeDeep(null), freezeDeep(undefined)]).toEqual([
    compute,
    "a",
    null,
    undefined,
  ]);
});

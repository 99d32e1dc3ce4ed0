/** Freezes a tree of plain data where it stands, maps included, and returns it. */
export function freezeDeep<T>(tree: T): T {
  if (typeof tree !== "object" || tree === null || Object.isFrozen(tree)) return tree;
  if (tree instanceof Map) return freezeMap(tree);
  Object.freeze(tree);
  for (const branch of Object.values(tree)) freezeDeep(branch);
  return tree;
}

function freezeMap<T extends Map<unknown, unknown>>(map: T): T {
  const refuse = () => {
    throw new TypeError("this map is frozen");
  };
  for (const branch of map.values()) freezeDeep(branch);
  return Object.freeze(Object.assign(map, { set: refuse, delete: refuse, clear: refuse }));
}

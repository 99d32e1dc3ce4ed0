/** The value at this path of a payload of unknown shape. */
export function valueAt(payload: unknown, ...path: readonly string[]): unknown {
  let value = payload;
  for (const key of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return undefined;
    value = Reflect.get(value, key);
  }
  return value;
}

/** The text at this path, when it is one and is not empty. */
export function textAt(payload: unknown, ...path: readonly string[]): string | undefined {
  const value = valueAt(payload, ...path);
  return typeof value === "string" && value !== "" ? value : undefined;
}

/** The object at this path, when it is one. */
export function recordAt(payload: unknown, ...path: readonly string[]): object | undefined {
  const value = valueAt(payload, ...path);
  return typeof value === "object" && value !== null && !Array.isArray(value) ? value : undefined;
}

/** The list at this path, or an empty one. */
export function listAt(payload: unknown, ...path: readonly string[]): readonly unknown[] {
  const value = valueAt(payload, ...path);
  return Array.isArray(value) ? value : [];
}

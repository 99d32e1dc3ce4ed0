/**
 * Reads an array that is known to be long enough. The compiler does not know lengths; the fallback is never taken, and
 * the optimiser removes it. One function for each kind of array, because the optimiser keeps one memory of kinds for each
 * function, and a function that sees several kinds is three times as slow.
 */
export function cell(values: Float64Array, index: number): number {
  return values[index] ?? 0;
}

/** Reads a small whole number, such as a switch or the number of a source. */
export function byte(values: Uint8Array, index: number): number {
  return values[index] ?? 0;
}

/** Reads a place among slugs or in a list. */
export function whole(values: Int32Array, index: number): number {
  return values[index] ?? 0;
}

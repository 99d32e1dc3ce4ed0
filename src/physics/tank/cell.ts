/**
 * Reads an array that is known to be long enough. The compiler does not know lengths; the fallback is never taken, and
 * the optimiser removes it. It keeps the layer loops free of branches, boxes and assertions.
 */
export function cell(values: Float64Array | Uint8Array | Int32Array, index: number): number {
  return values[index] ?? 0;
}

/**
 * Cuts a list into runs of at most `mostItems` items and `mostSize` of size; an item that is larger stands alone.
 * @param sizeOf size of one item, in the unit of `mostSize`
 */
export function chunk<T>(
  items: readonly T[],
  { mostItems, mostSize }: { readonly mostItems: number; readonly mostSize: number },
  sizeOf: (item: T) => number,
): readonly (readonly T[])[] {
  const runs: T[][] = [];
  let run: T[] = [];
  let size = 0;
  for (const item of items) {
    const more = sizeOf(item);
    if (run.length > 0 && (run.length >= mostItems || size + more > mostSize)) {
      runs.push(run);
      run = [];
      size = 0;
    }
    run.push(item);
    size += more;
  }
  return run.length > 0 ? [...runs, run] : runs;
}

/** Characters that a value takes when it is sent. */
export function jsonSize(value: unknown): number {
  return JSON.stringify(value).length;
}

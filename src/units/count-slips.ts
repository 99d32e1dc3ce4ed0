/** Short words must match closely, or everything looks like everything. */
export function slipsAllowed(length: number): number {
  if (length <= 2) return 0;
  return length <= 5 ? 1 : 2;
}

/**
 * Letters that were missed, added, changed or swapped with their neighbour between two words (optimal string
 * alignment); nothing when there are more than `most`.
 */
export function countSlips(from: string, to: string, most: number): number | undefined {
  if (Math.abs(from.length - to.length) > most) return undefined;
  let beforeLast: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let row = 1; row <= from.length; row++) {
    const current = [row];
    for (let column = 1; column <= to.length; column++) {
      const isSame = from[row - 1] === to[column - 1];
      const changed = at(last, column - 1) + (isSame ? 0 : 1);
      const isSwap = row > 1 && column > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      const swapped = isSwap ? at(beforeLast, column - 2) + 1 : changed;
      current.push(Math.min(changed, swapped, at(last, column) + 1, at(current, column - 1) + 1));
    }
    if (Math.min(...current) > most) return undefined;
    beforeLast = last;
    last = current;
  }
  const slips = at(last, to.length);
  return slips <= most ? slips : undefined;
}

function at(row: readonly number[], column: number): number {
  return row[column] ?? Number.POSITIVE_INFINITY;
}

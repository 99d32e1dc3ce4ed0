const FIRST_ms = 1000;
const MOST_ms = 30_000;

/**
 * How long to wait before a message is sent again: doubling from a second to half a minute, spread a little so that
 * many phones that come back into signal do not all send at once.
 * @param {number} tries how often it was tried, >= 1
 * @param {number} chance 0..1
 * @returns {number} [ms]
 */
export function backOff_ms(tries, chance) {
  const wait_ms = Math.min(MOST_ms, FIRST_ms * 2 ** (tries - 1));
  return wait_ms * (0.8 + 0.4 * chance);
}

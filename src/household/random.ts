/** A stream of numbers that looks random and is the same every time for the same seed. */
export interface RandomStream {
  /** The next number, 0 <= x < 1. */
  next(): number;
}

/**
 * A seeded stream; every (seed, day) pair has its own, so that one day can be drawn again alone.
 * @param seed any whole number
 * @param day index of the day, any whole number
 * @source mulberry32, a 32-bit mixing generator in the public domain (from memory); statistics checked in the tests
 * @limits period 2^32; for sampling days, not for secrets
 */
export function openRandomStream(seed: number, day: number): RandomStream {
  let state = mix(mix(seed) ^ mix(day + GOLDEN_STEP));
  return {
    next: () => {
      state = (state + GOLDEN_STEP) >>> 0;
      return mix(state) / 2 ** 32;
    },
  };
}

/** 2^32 divided by the golden ratio, so that neighbouring seeds lie far apart. */
const GOLDEN_STEP = 0x6d2b79f5;

function mix(value: number): number {
  let mixed = Math.imul(value ^ (value >>> 15), value | 1);
  mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
  return (mixed ^ (mixed >>> 14)) >>> 0;
}

/**
 * A count from the Poisson distribution.
 * @param mean mean count, 0..200
 * @source Knuth, multiplication of uniform numbers (exact; time grows with the mean)
 */
export function drawCount(random: RandomStream, mean: number): number {
  const limit = Math.exp(-mean);
  let product = random.next();
  let count = 0;
  while (product > limit) {
    product *= random.next();
    count++;
  }
  return count;
}

/**
 * A positive number from the log-normal distribution with this mean and standard deviation.
 * @param mean mean, > 0
 * @param deviation standard deviation, >= 0
 * @source Box-Muller; parameters by the method of moments
 */
export function drawPositive(random: RandomStream, mean: number, deviation: number): number {
  const variance = Math.log(1 + (deviation / mean) ** 2);
  const normal = Math.sqrt(-2 * Math.log(1 - random.next())) * Math.cos(2 * Math.PI * random.next());
  return Math.exp(Math.log(mean) - variance / 2 + Math.sqrt(variance) * normal);
}

/** An index drawn with these weights, which need not add up to one. */
export function drawIndex(random: RandomStream, weights: readonly number[]): number {
  // Plain loops: a year asks 20,000 times.
  let total = 0;
  for (let i = 0; i < weights.length; i++) total += weights[i] ?? 0;
  let left = random.next() * total;
  for (let i = 0; i < weights.length; i++) {
    left -= weights[i] ?? 0;
    if (left < 0) return i;
  }
  return weights.length - 1;
}

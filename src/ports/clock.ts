/** The time of day, so that nothing inside `src` has to know it. */
export interface Clock {
  /** Milliseconds since 1970-01-01 UTC. */
  now_ms(): number;
}

/**
 * Share of a day's hot water in each hour, hour 0 first. As published the weekday adds to 1.002: normalise before use.
 * Source: California residential compliance water-heating schedule, weekday and weekend fractions, as carried in a public
 * test file (published).
 */
export const HOURLY_SHARES = {
  weekday: [
    0.014, 0.008, 0.009, 0.011, 0.02, 0.044, 0.089, 0.107, 0.089, 0.066, 0.052, 0.038, 0.036, 0.033, 0.032, 0.026,
    0.042, 0.048, 0.052, 0.047, 0.042, 0.039, 0.036, 0.022,
  ],
  weekend: [
    0.018, 0.01, 0.009, 0.008, 0.015, 0.023, 0.026, 0.047, 0.077, 0.083, 0.074, 0.061, 0.051, 0.043, 0.039, 0.039,
    0.052, 0.058, 0.056, 0.052, 0.047, 0.044, 0.04, 0.028,
  ],
} as const;

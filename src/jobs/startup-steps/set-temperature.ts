import { toBase } from "../../units/convert.ts";
import { STARTUP_HABIT, type StartupStep } from "../startup-step.ts";

/** What a display rounds away [K]. */
const ROUNDING_K = 1;

export const step: StartupStep = {
  id: "set_temperature",
  isCritical: false,
  hazards: [],
  reading: {
    quantity: "temperature",
    min: 0,
    max: toBase(212, "F"),
    usual: [120, 130, 140].map((degrees) => toBase(degrees, "F")),
    accepts: ({ setpoint_C }) =>
      setpoint_C === undefined
        ? undefined
        : { low: setpoint_C - ROUNDING_K, high: setpoint_C + ROUNDING_K, expected: setpoint_C },
  },
  source: { ...STARTUP_HABIT, section: "as planned, but for what a display rounds away" },
  cases: [
    { name: "as planned", site: { setpoint_C: 60 }, reading: 60, isAccepted: true },
    { name: "left as it came out of the box", site: { setpoint_C: 60 }, reading: toBase(120, "F"), isAccepted: false },
    { name: "nobody planned it", site: {}, reading: 60 },
  ],
};

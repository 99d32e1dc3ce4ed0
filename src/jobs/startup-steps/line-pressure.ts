import { toBase } from "../../units/convert.ts";
import type { StartupStep } from "../startup-step.ts";

/** Below this showers get thin; common practice. */
const LEAST_kPa = toBase(20, "psi");

export const step: StartupStep = {
  id: "line_pressure",
  isCritical: true,
  hazards: ["pressure"],
  reading: {
    quantity: "pressure",
    min: 0,
    max: toBase(300, "psi"),
    usual: [60, 70, 50].map((psi) => toBase(psi, "psi")),
    accepts: ({ line_kPa, mostLine_kPa }) => ({
      low: LEAST_kPa,
      high: mostLine_kPa,
      ...(line_kPa !== undefined && { expected: line_kPa }),
    }),
  },
  source: { basis: "published", document: "IRC", edition: "2021", section: "P2903.3.1: 80 psi at most" },
  cases: [
    { name: "66 psi", site: {}, reading: toBase(66, "psi"), isAccepted: true },
    { name: "exactly 80 psi", site: {}, reading: toBase(80, "psi"), isAccepted: true },
    { name: "95 psi", site: {}, reading: toBase(95, "psi"), isAccepted: false },
    {
      name: "a stricter place, 75 psi allowed",
      site: { mostLine_kPa: toBase(75, "psi") },
      reading: toBase(80, "psi"),
      isAccepted: false,
    },
  ],
};

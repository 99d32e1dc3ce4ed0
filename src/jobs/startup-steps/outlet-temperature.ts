import { asPrinted_C } from "../../cautions/compare.ts";
import { toBase } from "../../units/convert.ts";
import type { StartupStep } from "../startup-step.ts";

/** Below this a shower feels cool; common practice. */
const LEAST_C = toBase(100, "F");

export const step: StartupStep = {
  id: "outlet_temperature",
  isCritical: true,
  hazards: ["scald"],
  reading: {
    quantity: "temperature",
    min: 0,
    max: toBase(212, "F"),
    usual: [118, 115, 110].map((degrees) => toBase(degrees, "F")),
    accepts: ({ mostAtTap_C }, value) => {
      const isAsPrinted = value > mostAtTap_C && value <= asPrinted_C(mostAtTap_C);
      return { low: LEAST_C, high: isAsPrinted ? value : mostAtTap_C };
    },
  },
  source: { basis: "published", document: "IPC", edition: "2021", section: "412.5: 120 °F at tubs" },
  cases: [
    { name: "119 °F", site: {}, reading: toBase(119, "F"), isAccepted: true },
    { name: "exactly 120 °F", site: {}, reading: toBase(120, "F"), isAccepted: true },
    { name: "49 °C, which the codes print beside 120 °F", site: {}, reading: 49, isAccepted: true },
    { name: "128 °F", site: {}, reading: toBase(128, "F"), isAccepted: false },
    { name: "90 °F", site: {}, reading: toBase(90, "F"), isAccepted: false },
  ],
};

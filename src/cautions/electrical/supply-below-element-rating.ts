import { q } from "../../declaration/answer.ts";
import { VOLTAGE_BAND } from "../../physics/circuit-plan.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

export const caution = declareCaution({
  id: "supply_below_element_rating",
  severity: "note",
  cites: [
    { basis: "computed", document: "Ohm's law, power falls with the square of the voltage", checkedOn: "2026-11-25" },
    { basis: "from_memory", document: "ANSI C84.1", section: "service voltage within 5 %", checkedOn: "2026-11-25" },
  ],
  decides: "electrician",
  data: { supply: "voltage", rated: "voltage", share: "share" },
  check: ({ supply_V, ratedVoltage_V }) => {
    if (supply_V === undefined || ratedVoltage_V === undefined) return undefined;
    if (!isUnder(supply_V, ratedVoltage_V * (1 - VOLTAGE_BAND))) return undefined;
    return {
      supply: q("voltage", supply_V),
      rated: q("voltage", ratedVoltage_V),
      share: q("share", (supply_V / ratedVoltage_V) ** 2),
    };
  },
  examples: {
    fires: [{ name: "208 V on a 240 V element", site: { supply_V: 208, ratedVoltage_V: 240 } }],
    silent: [
      { name: "240 V on a 240 V element", site: { supply_V: 240, ratedVoltage_V: 240 } },
      { name: "228 V on a 240 V element, 5 % low", site: { supply_V: 228, ratedVoltage_V: 240 } },
      { name: "rating not known", site: { supply_V: 208 } },
    ],
  },
});

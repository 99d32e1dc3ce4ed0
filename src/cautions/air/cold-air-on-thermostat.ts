import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

const AWAY_m = toBase(10, "ft");

export const caution = declareCaution({
  id: "cold_air_on_thermostat",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "ENERGY STAR heat pump water heater installation practices, trade reprint",
      edition: "2024",
      section: "exhaust 10 ft from a room thermostat",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "household",
  data: { distance: "length", limit: "length" },
  check: ({ exhaustToThermostat_m }) =>
    exhaustToThermostat_m !== undefined && isUnder(exhaustToThermostat_m, AWAY_m)
      ? { distance: q("length", exhaustToThermostat_m), limit: q("length", AWAY_m) }
      : undefined,
  examples: {
    fires: [{ name: "4 ft away", site: { exhaustToThermostat_m: toBase(4, "ft") } }],
    silent: [
      { name: "exactly 10 ft away", site: { exhaustToThermostat_m: toBase(10, "ft") } },
      { name: "thermostat not looked for", site: {} },
    ],
  },
});

import { tankRiseInAnHour } from "../../faults/expected/tank.ts";
import { toBase } from "../../units/convert.ts";
import { STARTUP_HABIT, type StartupSite, type StartupStep } from "../startup-step.ts";

/** So far from what is expected, as a share, is still accepted: thermometer, layers and air that nobody measured. */
const BAND = 0.35;
/** Water that comes in and humidity of the air where nobody told; both are said with the judgement. */
export const COLD_C = toBase(50, "F");
const HUMIDITY = 0.5;

export const step: StartupStep = {
  id: "first_rise",
  isCritical: false,
  hazards: ["scald"],
  reading: {
    quantity: "temperature_difference",
    min: 0,
    max: 80,
    usual: [5, 10, 20, 40].map((degrees) => degrees / 1.8),
    accepts: (site) => {
      const expected = expectedRise_K(site);
      return expected === undefined ? undefined : { low: (1 - BAND) * expected, high: (1 + BAND) * expected, expected };
    },
  },
  source: { ...STARTUP_HABIT, section: "heat of the unit's sheet over an hour, 35 % either way" },
  cases: [{ name: "nobody knows the unit", site: {}, reading: 5 }],
};

/** What the sheet of the unit gives in the first hour, on the source that its mode runs; nothing where too little is known. */
function expectedRise_K({ unit, air_C, cold_C = COLD_C, setpoint_C, supply_V, mode }: StartupSite): number | undefined {
  if (unit === undefined) return undefined;
  const runsElements = unit.heater.heatPump === undefined || mode === "elements_only";
  const rise = tankRiseInAnHour.compute({
    unit: unit.heater,
    running: runsElements ? "elements" : "heat_pump",
    plate_V: supply_V ?? unit.circuit.supplies_V[0],
    cold_C,
    water_C: cold_C,
    airHumidity: HUMIDITY,
    ...(air_C !== undefined && { air_C }),
    ...(setpoint_C !== undefined && { setpoint_C }),
  });
  return rise?.quantity.value;
}

import type { StartupStep } from "./startup-step.ts";
import { step as airClear } from "./startup-steps/air-clear.ts";
import { step as bond } from "./startup-steps/bond.ts";
import { step as condensateRuns } from "./startup-steps/condensate-runs.ts";
import { step as controlsSet } from "./startup-steps/controls-set.ts";
import { step as filled } from "./startup-steps/filled.ts";
import { step as firstRise } from "./startup-steps/first-rise.ts";
import { step as handedOver } from "./startup-steps/handed-over.ts";
import { step as linePressure } from "./startup-steps/line-pressure.ts";
import { step as outletTemperature } from "./startup-steps/outlet-temperature.ts";
import { step as precharge } from "./startup-steps/precharge.ts";
import { step as purged } from "./startup-steps/purged.ts";
import { step as reliefFree } from "./startup-steps/relief-free.ts";
import { step as setTemperature } from "./startup-steps/set-temperature.ts";
import { step as supply } from "./startup-steps/supply.ts";
import { step as tight } from "./startup-steps/tight.ts";

/**
 * The steps in the order in which they are taken: water goes in before power, pressure is read before the air of the
 * expansion tank is set to it, and what gets hot is measured when it is hot.
 */
export const STARTUP_STEPS: readonly StartupStep[] = [
  filled,
  purged,
  tight,
  linePressure,
  precharge,
  reliefFree,
  bond,
  supply,
  airClear,
  condensateRuns,
  setTemperature,
  controlsSet,
  firstRise,
  outletTemperature,
  handedOver,
];

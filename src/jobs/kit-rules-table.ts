import type { KitRule } from "./kit-rule.ts";
import { rule as airDucts } from "./kit-rules/air-ducts.ts";
import { rule as airOpenings } from "./kit-rules/air-openings.ts";
import { rule as circulation } from "./kit-rules/circulation.ts";
import { rule as condensateLine } from "./kit-rules/condensate-line.ts";
import { rule as condensatePump } from "./kit-rules/condensate-pump.ts";
import { rule as connections } from "./kit-rules/connections.ts";
import { rule as drainPan } from "./kit-rules/drain-pan.ts";
import { rule as expansionTank } from "./kit-rules/expansion-tank.ts";
import { rule as gasCap } from "./kit-rules/gas-cap.ts";
import { rule as heatTraps } from "./kit-rules/heat-traps.ts";
import { rule as heater } from "./kit-rules/heater.ts";
import { rule as newCircuit } from "./kit-rules/new-circuit.ts";
import { rule as openFlue } from "./kit-rules/open-flue.ts";
import { rule as outdoorFrost } from "./kit-rules/outdoor-frost.ts";
import { rule as panDrain } from "./kit-rules/pan-drain.ts";
import { rule as pipeInsulation } from "./kit-rules/pipe-insulation.ts";
import { rule as pressureRegulator } from "./kit-rules/pressure-regulator.ts";
import { rule as quietFeet } from "./kit-rules/quiet-feet.ts";
import { rule as reliefDischarge } from "./kit-rules/relief-discharge.ts";
import { rule as reliefValve } from "./kit-rules/relief-valve.ts";
import { rule as sealing } from "./kit-rules/sealing.ts";
import { rule as seismicStraps } from "./kit-rules/seismic-straps.ts";
import { rule as shortAnode } from "./kit-rules/short-anode.ts";
import { rule as shutOff } from "./kit-rules/shut-off.ts";
import { rule as spareFilter } from "./kit-rules/spare-filter.ts";
import { rule as surgeProtection } from "./kit-rules/surge-protection.ts";
import { rule as tempering } from "./kit-rules/tempering.ts";

/** Every rule, in the order in which the kit is loaded. */
export const KIT_RULES: readonly KitRule[] = [
  heater,
  connections,
  shutOff,
  reliefValve,
  reliefDischarge,
  drainPan,
  panDrain,
  expansionTank,
  pressureRegulator,
  tempering,
  condensateLine,
  condensatePump,
  airOpenings,
  airDucts,
  quietFeet,
  seismicStraps,
  newCircuit,
  gasCap,
  openFlue,
  pipeInsulation,
  shortAnode,
  circulation,
  outdoorFrost,
  surgeProtection,
  spareFilter,
  heatTraps,
  sealing,
];

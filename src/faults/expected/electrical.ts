import { q } from "../../declaration/answer.ts";
import { numberResult } from "../../declaration/number-result.ts";
import type { Source } from "../../declaration/source.ts";
import type { ElementSheet } from "../../equipment/water-heater.ts";
import { elementResistance_ohm, OHMS_LAW } from "../../physics/heating-element.ts";
import {
  BETA_EQUATION,
  thermistorResistance_ohm,
  USUAL_THERMISTOR,
  USUAL_THERMISTOR_SOURCE,
} from "../../physics/thermistor.ts";
import type { ExpectedFacts, ExpectedReading } from "./known.ts";

/** Nickel-chromium wire in an element in water has about so much more resistance hot than cold. */
const HOT_OVER_COLD = 1.02;
const WIRE_WARMS: Source = {
  basis: "from_memory",
  document: "Nickel-chromium resistance wire",
  section: "1 to 3 % more resistance at working temperature than cold",
};
const INSULATION_HABIT: Source = {
  basis: "common_practice",
  document: "Element to ground above 1 MΩ; a GFCI trips near 120 V / 5 mA = 24 kΩ",
};
const BOND_HABIT: Source = { basis: "common_practice", document: "Hot to cold to tank to ground below 1 Ω" };
const LEAST_INSULATION_ohm = 1e6;
const MOST_BOND_ohm = 1;

/** Supply that the plate asks for. */
export const supplyVoltage: ExpectedReading = {
  quantity: "voltage",
  compute: ({ plate_V, unit }) =>
    plate_V === undefined
      ? undefined
      : numberResult(
          "supply_voltage",
          q("voltage", plate_V),
          "V = V_plate",
          { V_plate: q("voltage", plate_V) },
          sheetOf(unit),
        ),
};

/** Voltage with the elements on: what was there at rest, since a sound circuit loses next to nothing. */
export const voltageUnderLoad: ExpectedReading = {
  quantity: "voltage",
  compute: ({ supply_V }) =>
    supply_V === undefined
      ? undefined
      : numberResult(
          "voltage_under_load",
          q("voltage", supply_V),
          "V_load ≈ V_rest",
          { V_rest: q("voltage", supply_V) },
          {
            basis: "from_memory",
            document: "NEC",
            section: "210.19(A) informational note: 3 % drop as a reasonable limit",
          },
        ),
};

/** Resistance of an element as an ohmmeter sees it, cold. */
export const elementResistanceCold: ExpectedReading = {
  quantity: "resistance",
  compute: (known) => {
    const element = elementOf(known);
    if (element === undefined) return undefined;
    const { rated_W, rated_V } = element;
    const inputs = { V_rated: q("voltage", rated_V), P_rated: q("power", rated_W), k: q("ratio", HOT_OVER_COLD) };
    const ohms = elementResistance_ohm(rated_W, rated_V) / HOT_OVER_COLD;
    const equation = "R = V_rated² / P_rated / k";
    return numberResult(
      "element_resistance",
      q("resistance", ohms),
      equation,
      inputs,
      OHMS_LAW,
      WIRE_WARMS,
      sheetOf(known.unit),
    );
  },
};

/** Current of an element at the voltage measured, alike on each leg. */
export const elementCurrent: ExpectedReading = {
  quantity: "current",
  compute: (known) => {
    const element = elementOf(known);
    if (element === undefined || known.supply_V === undefined) return undefined;
    const hot_ohm = elementResistance_ohm(element.rated_W, element.rated_V);
    const inputs = { V: q("voltage", known.supply_V), R_hot: q("resistance", hot_ohm) };
    const current_A = known.supply_V / hot_ohm;
    return numberResult(
      "element_current",
      q("current", current_A),
      "I = V / R_hot",
      inputs,
      OHMS_LAW,
      sheetOf(known.unit),
    );
  },
};

/** Sensor ohms at the temperature measured beside it. */
export const sensorResistance: ExpectedReading = {
  quantity: "resistance",
  compute: ({ sensor, sensor_C, unit }) => {
    if (sensor_C === undefined) return undefined;
    const used = sensor ?? USUAL_THERMISTOR;
    const inputs = {
      R25: q("resistance", used.at25_ohm),
      beta: q("count", used.beta_K),
      t: q("temperature", sensor_C),
    };
    const ohms = thermistorResistance_ohm(used, sensor_C);
    const equation = "R = R25 · exp(beta · (1/T − 1/298.15))";
    const whose = sensor === undefined ? USUAL_THERMISTOR_SOURCE : sheetOf(unit);
    return numberResult("sensor_resistance", q("resistance", ohms), equation, inputs, BETA_EQUATION, whose);
  },
};

/** Least resistance from element to ground that counts as sound. */
export const leastInsulation: ExpectedReading = {
  quantity: "resistance",
  compute: () =>
    numberResult("least_insulation", q("resistance", LEAST_INSULATION_ohm), "R ≥ 1 MΩ", {}, INSULATION_HABIT),
};

/** Most resistance between pipes, tank and ground that counts as bonded. */
export const mostBondResistance: ExpectedReading = {
  quantity: "resistance",
  compute: () => numberResult("most_bond_resistance", q("resistance", MOST_BOND_ohm), "R < 1 Ω", {}, BOND_HABIT),
};

/** The element that is meant: the one named, or either of two that are alike. */
function elementOf({ unit, element }: ExpectedFacts): ElementSheet | undefined {
  const [first, ...others] = (unit?.elements ?? []).filter(({ place }) => element === undefined || place === element);
  const alike = others.every(({ rated_W, rated_V }) => rated_W === first?.rated_W && rated_V === first.rated_V);
  return alike ? first : undefined;
}

function sheetOf(unit: ExpectedFacts["unit"]): Source {
  return unit?.source ?? { basis: "common_practice", document: "Plate of the unit" };
}

import { z } from "zod";
import { type CatalogueModel, MODEL_KINDS } from "../equipment/catalogue.ts";
import { POLICIES } from "../equipment/policies.ts";
import { findSheetProblems } from "../equipment/sheet-problems.ts";
import type { HeatPumpSheet, WaterHeater } from "../equipment/water-heater.ts";
import { type BookRead, file, oneOf, read, words } from "./book-schema.ts";
import { sheetNumber, sheetQuantity } from "./sheet-fields.ts";

const MODES = Object.values(POLICIES).map(({ id }) => id);
const SOME_MODES = `write some of ${MODES.join(", ")}`;
const SOME_SUPPLIES = "name at least one supply, such as [240 V]";
const curve = z
  .array(sheetNumber("write six numbers"), { error: "write six numbers: [c1, c2, c3, c4, c5, c6]" })
  .length(6, "write six numbers: [c1, c2, c3, c4, c5, c6]")
  .transform(([c1 = 0, c2 = 0, c3 = 0, c4 = 0, c5 = 0, c6 = 0]) => [c1, c2, c3, c4, c5, c6] as const);
const span = z.tuple([sheetQuantity("temperature"), sheetQuantity("temperature")], {
  error: "write the lowest and the highest, such as [95 F, 144 F]",
});

const element = file({
  power: sheetQuantity("power"),
  at: sheetQuantity("voltage"),
  height: sheetQuantity("dimension"),
});
const heatPump = file({
  heat: sheetQuantity("power"),
  cop: sheetNumber("write a number, such as 3.4"),
  at_wet_bulb: sheetQuantity("temperature"),
  at_water: sheetQuantity("temperature"),
  heat_curve: curve,
  cop_curve: curve,
  fitted_wet_bulb: span,
  fitted_water: span,
  fan: sheetQuantity("power"),
  airflow: sheetQuantity("airflow"),
  coil_bypass: sheetNumber("write a share, such as 0.2"),
  air: span,
  air_comes_back: sheetQuantity("temperature_difference"),
  highest_water: sheetQuantity("temperature"),
  water_comes_back: sheetQuantity("temperature_difference"),
  shortest_run: sheetQuantity("time"),
  shortest_rest: sheetQuantity("time"),
  condenser: file({
    from: sheetQuantity("dimension"),
    to: sheetQuantity("dimension"),
    kind: oneOf(["wrapped", "pumped"]),
    approach: sheetQuantity("temperature_difference"),
  }),
});
const controls = file({
  upper_sensor: sheetQuantity("dimension"),
  lower_sensor: sheetQuantity("dimension"),
  upper_dead_band: sheetQuantity("temperature_difference"),
  lower_dead_band: sheetQuantity("temperature_difference"),
  standby: sheetQuantity("power"),
  setpoint: span,
  modes: z.array(z.enum(MODES, { error: SOME_MODES }), { error: SOME_MODES }).min(1, "name at least one mode"),
});

/** One model as it stands in catalogue.yaml, or in one line of a CSV file with dots between the names. */
export const modelEntry = file({
  id: z
    .string({ error: "write the short name that people type, such as hollin-50" })
    .regex(/^[a-z0-9][a-z0-9-]{0,39}$/, "use small letters, digits and hyphens"),
  name: words("Hollin 50"),
  kind: oneOf(MODEL_KINDS),
  nominal: sheetQuantity("volume"),
  tank: file({
    volume: sheetQuantity("volume"),
    height: sheetQuantity("dimension"),
    heat_loss: sheetQuantity("heat_loss_coefficient"),
    stirred_by_inlet: sheetNumber("write a share, such as 0.1"),
  }),
  elements: file({ upper: element.exactOptional(), lower: element.exactOptional() }).exactOptional(),
  heat_pump: heatPump.exactOptional(),
  controls,
  body: file({
    height: sheetQuantity("dimension"),
    width: sheetQuantity("dimension"),
    weight: sheetQuantity("mass"),
    clearance_above: sheetQuantity("dimension"),
  }),
  circuit: file({
    supplies: z.array(sheetQuantity("voltage"), { error: SOME_SUPPLIES }).min(1, SOME_SUPPLIES),
    breaker: sheetQuantity("current"),
  }),
  smallest_room: sheetQuantity("room_volume").exactOptional(),
  sound: sheetQuantity("sound").exactOptional(),
  changes_a_day: z.int("write a whole number, such as 6").min(0).max(96),
  price: file({ unit: money(), installation: money() }),
  codes: z.record(z.string(), z.string({ error: "write what the code means" })).exactOptional(),
}).superRefine((model, context) => {
  for (const { field, value, min, max } of findSheetProblems(shapeHeater(model)))
    context.addIssue({
      code: "custom",
      path: [...pathOf(field)],
      message: `${field.split(".").at(-1)} comes to ${round(value)}, which must lie in ${round(min)} to ${round(max)}`,
    });
});
type ModelEntry = z.infer<typeof modelEntry>;

const catalogueFile = file({
  invented: z.boolean({ error: "write true when everything in this file is invented, else false" }),
  models: z
    .array(modelEntry, { error: "write a list of models, each starting with a dash" })
    .min(1, "name at least one model")
    .superRefine((models, context) => {
      const seen = new Set<string>();
      for (const [index, { id }] of models.entries()) {
        if (seen.has(id))
          context.addIssue({ code: "custom", path: [index, "id"], message: `${id} stands above already` });
        seen.add(id);
      }
    }),
});

/** Reads what stands in a catalogue. */
export function readCatalogue(contents: unknown): BookRead<{ isInvented: boolean; models: readonly CatalogueModel[] }> {
  return read(catalogueFile, contents, ({ invented, models }) => ({
    isInvented: invented,
    models: models.map((model) => shapeModel(model, invented)),
  }));
}

function money() {
  return sheetNumber("write US dollars, such as 2100").min(0, "is below zero").max(50_000, "is above 50,000");
}

function shapeModel(entry: ModelEntry, isInvented: boolean): CatalogueModel {
  const { id, name, kind, nominal, body, circuit, smallest_room, sound, changes_a_day, price, codes = {} } = entry;
  const [first = 240, ...others] = circuit.supplies;
  return {
    id,
    name,
    kind,
    nominal_L: nominal,
    heater: shapeHeater(entry, isInvented),
    body: {
      height_m: body.height,
      width_m: body.width,
      emptyMass_kg: body.weight,
      clearanceAbove_m: body.clearance_above,
    },
    circuit: { supplies_V: [first, ...others], breaker_A: circuit.breaker },
    ...(smallest_room !== undefined && { smallestRoom_m3: smallest_room }),
    ...(sound !== undefined && { sound_dBA: sound }),
    changesADay: changes_a_day,
    price: { unit_usd: price.unit, installation_usd: price.installation },
    displayCodes: Object.entries(codes).map(([code, meaning]) => ({ code, meaning })),
  };
}

/** The sheet of a catalogue entry in the shape that the simulation takes. */
function shapeHeater(entry: Omit<ModelEntry, "codes">, isInvented = false): WaterHeater {
  const { id, name, tank, elements = {}, heat_pump, controls: control } = entry;
  return {
    id,
    source: {
      basis: isInvented ? "invented" : "published",
      document: isInvented ? `Demo sheet of ${name}` : `Data sheet of ${name}`,
    },
    tank: {
      volume_L: tank.volume,
      height_m: tank.height,
      heatLoss_W_K: tank.heat_loss,
      stirredByInlet: tank.stirred_by_inlet,
    },
    elements: (["upper", "lower"] as const).flatMap((place) => {
      const sheet = elements[place];
      return sheet === undefined ? [] : [{ place, height_m: sheet.height, rated_W: sheet.power, rated_V: sheet.at }];
    }),
    ...(heat_pump && { heatPump: shapeHeatPump(heat_pump) }),
    controls: {
      sensors: { upper_m: control.upper_sensor, lower_m: control.lower_sensor },
      deadBand_K: { upper: control.upper_dead_band, lower: control.lower_dead_band },
      standby_W: control.standby,
      interlocks: elements.upper && elements.lower ? [["upper", "lower"]] : [],
      setpoint_C: control.setpoint,
      policies: control.modes,
    },
  };
}

function shapeHeatPump(sheet: z.infer<typeof heatPump>): HeatPumpSheet {
  const [lowest_C, highest_C] = sheet.air;
  return {
    ratedHeat_W: sheet.heat,
    ratedCop: sheet.cop,
    ratingPoint: { wetBulb_C: sheet.at_wet_bulb, water_C: sheet.at_water },
    heatCurve: sheet.heat_curve,
    copCurve: sheet.cop_curve,
    fitted: { wetBulb_C: sheet.fitted_wet_bulb, water_C: sheet.fitted_water },
    fan_W: sheet.fan,
    airflow_m3_s: sheet.airflow,
    coilBypass: sheet.coil_bypass,
    airLimits: { lowest_C, highest_C, comeBack_K: sheet.air_comes_back },
    waterLimit: { highest_C: sheet.highest_water, comeBack_K: sheet.water_comes_back },
    shortestRun_s: sheet.shortest_run,
    shortestRest_s: sheet.shortest_rest,
    condenser: {
      from_m: sheet.condenser.from,
      to_m: sheet.condenser.to,
      kind: sheet.condenser.kind,
      approach_K: sheet.condenser.approach,
    },
  };
}

/** Where in the file a field of the sheet was written, as near as it can be told. */
function pathOf(field: string): readonly string[] {
  const [room = ""] = field.split(/[. ]/);
  return [{ heatPump: "heat_pump" }[room] ?? room];
}

function round(value: number): string {
  return String(Number(value.toPrecision(4)));
}

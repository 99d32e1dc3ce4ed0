import type { Policy } from "../../equipment/policies.ts";
import type { HeatPumpSheet, WaterHeater } from "../../equipment/water-heater.ts";
import { type HeatPumpMap, prepareMap } from "../heat-pump.ts";
import { powerAtVoltage_W } from "../heating-element.ts";
import { type Ledger, openLedger } from "./books.ts";
import { type ControlState, LOWER, makeSwitches, prepareControl, SOURCES, type Switches, UPPER } from "./control.ts";
import { type Exchange, makeExchange } from "./exchange.ts";
import {
  CONDENSER_FROM,
  CONDENSER_TO,
  LOWER_ELEMENT,
  LOWER_SENSOR,
  type Places,
  preparePlaces,
  UPPER_ELEMENT,
  UPPER_SENSOR,
} from "./places.ts";
import type { AirState, RoomAir, RoomExchange } from "./room-air.ts";
import { buildTankModel, STUDY_WATER, type WaterHeat } from "./tank-model.ts";
import { fillTank, type TankState } from "./tank-state.ts";

/** The heat pump in a tank: its map, where it heats, and what bars it. */
export interface CondenserState {
  readonly sheet: HeatPumpSheet;
  readonly map: HeatPumpMap;
  /** Latches of the lock-outs. */
  isAirCold: boolean;
  isAirHot: boolean;
  isWaterHot: boolean;
  /** True until the map and the coil have been told about the present air. */
  isAirStale: boolean;
  condensate_kg_J: number;
}

/** The step in hand: its length, and what it did before that is written to the books. */
export interface Step {
  seconds: number;
  heatPumpHeat_J: number;
  compressor_J: number;
  /** How far a sensor is past the next switching point; below zero, how near [K]. */
  excess_K: number;
}

/** One unit at one site, in motion. Made by `startEngine`; moved by `drawHotWater` and `advanceTo`. */
export interface Engine {
  readonly unit: WaterHeater;
  readonly tank: TankState;
  /** Copy of the slugs, to take a step back to a switching point. */
  readonly saved_C: Float64Array;
  readonly exchange: Exchange;
  readonly condenser: CondenserState | undefined;
  /** Power of each element at the supply voltage [W]. */
  readonly power_W: Float64Array;
  readonly places: Places;
  readonly switches: Switches;
  readonly ledger: Ledger;
  readonly roomAir: RoomAir;
  readonly air: AirState;
  readonly given: RoomExchange;
  readonly step: Step;
  readonly pace: Pace;
  readonly drawModel: DrawModel;
  control: ControlState;
  /** True where a change of mode asks for a decision. */
  isUndecided: boolean;
  isBarred: boolean;
  /** True where a draw has moved the water since the sensors were read. */
  isMoved: boolean;
  /** Time for which heat flow has waited [s]. */
  owed_s: number;
  inlet_C: number;
  now_s: number;
  nextAir_s: number;
}

/** How water moves in a draw: plug flow, which the product runs, or a chain of fully mixed layers, for comparison. */
export type DrawModel = "plug" | "mixed_layers";

/** Longest steps [s]; shorter ones cost time and change answers by less than the tolerances stated in `advance.ts`. */
export interface Pace {
  readonly idle_s: number;
  readonly heating_s: number;
  readonly drawing_s: number;
  /** While somebody draws, heat flow between slugs and to the room may wait this long and is then made up for. */
  readonly exchange_s: number;
}

export const USUAL_PACE: Pace = { idle_s: 1800, heating_s: 600, drawing_s: 60, exchange_s: 300 };

export interface EngineSettings {
  readonly policy: Policy;
  readonly setpoint_C: number;
  readonly supply_V: number;
  readonly inlet_C: number;
  readonly roomAir: RoomAir;
  /** Temperature of the whole tank at the start [C]. */
  readonly start_C: number;
  readonly layers?: number;
  readonly water?: WaterHeat;
  readonly pace?: Pace;
  readonly drawModel?: DrawModel;
}

/** The number of layers that the product runs. */
export const USUAL_LAYERS = 12;

/**
 * Sets a unit up at a site, at time 0, with a tank of one temperature.
 * @param unit the data sheet
 * @param settings mode, setpoint, supply, air
 * @returns the engine, ready for `advance`
 * @source element power P = rated P (V / rated V)², a resistance on another voltage
 */
export function startEngine(unit: WaterHeater, settings: EngineSettings): Engine {
  const layers = settings.layers ?? USUAL_LAYERS;
  const tank = fillTank(buildTankModel(unit.tank, layers, settings.water ?? STUDY_WATER), settings.start_C);
  const engine: Engine = {
    unit,
    tank,
    saved_C: new Float64Array(layers + 1),
    exchange: makeExchange(layers),
    condenser: unit.heatPump && prepareCondenser(unit.heatPump),
    power_W: new Float64Array(SOURCES),
    places: preparePlaces(layers),
    switches: makeSwitches(),
    ledger: openLedger(SOURCES),
    roomAir: settings.roomAir,
    air: { dryBulb_C: 0, humidityRatio: 0, pressure_kPa: 0, aroundTank_C: 0 },
    given: { released_J: 0, taken_J: 0, condensed_kg: 0, ran_s: 0 },
    step: { seconds: 0, heatPumpHeat_J: 0, compressor_J: 0, excess_K: 0 },
    pace: settings.pace ?? USUAL_PACE,
    drawModel: settings.drawModel ?? "plug",
    control: prepareControl(unit, settings.policy, settings.setpoint_C),
    isUndecided: true,
    isBarred: false,
    isMoved: true,
    owed_s: 0,
    inlet_C: settings.inlet_C,
    now_s: 0,
    nextAir_s: 0,
  };
  placeParts(engine.places, unit, layers);
  engine.places.approach_K = unit.heatPump?.condenser.approach_K ?? 0;
  for (const element of unit.elements) {
    const source = element.place === "upper" ? UPPER : LOWER;
    engine.power_W[source] = powerAtVoltage_W(element.rated_W, element.rated_V, settings.supply_V);
  }
  return engine;
}

/** Puts sensors, elements and condenser at their heights. */
function placeParts({ heights }: Places, unit: WaterHeater, layers: number): void {
  const perMetre = layers / unit.tank.height_m;
  heights[LOWER_SENSOR] = unit.controls.sensors.lower_m * perMetre;
  heights[UPPER_SENSOR] = unit.controls.sensors.upper_m * perMetre;
  heights[CONDENSER_FROM] = (unit.heatPump?.condenser.from_m ?? 0) * perMetre;
  heights[CONDENSER_TO] = (unit.heatPump?.condenser.to_m ?? 0) * perMetre;
  for (const { place, height_m } of unit.elements)
    heights[place === "upper" ? UPPER_ELEMENT : LOWER_ELEMENT] = height_m * perMetre;
}

function prepareCondenser(sheet: HeatPumpSheet): CondenserState {
  return {
    sheet,
    map: prepareMap(sheet),
    isAirCold: false,
    isAirHot: false,
    isWaterHot: false,
    isAirStale: true,
    condensate_kg_J: 0,
  };
}

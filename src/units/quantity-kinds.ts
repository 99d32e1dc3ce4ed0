/**
 * Every quantity that Oldhand knows, with the one unit it has inside `src` (base) and the units people read.
 *
 * `base` is also the suffix of every identifier that holds such a quantity: `tank_L`, `setpoint_C`, `flow_L_s`.
 * An empty base means a pure number. `us` and `si` name the display units; their conversions stand in `unit-table.ts`.
 */
export const QUANTITY_KINDS = {
  volume: { base: "L", us: "gal", si: "L" },
  room_volume: { base: "m3", us: "ft3", si: "m3" },
  temperature: { base: "C", us: "F", si: "C" },
  temperature_difference: { base: "K", us: "F_diff", si: "K" },
  length: { base: "m", us: "ft", si: "m" },
  dimension: { base: "m", us: "in", si: "mm" },
  area: { base: "m2", us: "ft2", si: "m2" },
  opening_area: { base: "m2", us: "in2", si: "cm2" },
  pressure: { base: "kPa", us: "psi", si: "kPa" },
  air_pressure: { base: "Pa", us: "in_wc", si: "Pa" },
  /** Of a house against outdoors; the trade speaks of pascals everywhere. */
  house_pressure: { base: "Pa", us: "Pa", si: "Pa" },
  /** Weight on a floor over the area that it stands on. */
  floor_load: { base: "kPa", us: "lb_ft2", si: "kPa" },
  power: { base: "W", us: "W", si: "W" },
  heat_rate: { base: "W", us: "Btu_h", si: "W" },
  energy: { base: "kWh", us: "kWh", si: "kWh" },
  voltage: { base: "V", us: "V", si: "V" },
  current: { base: "A", us: "A", si: "A" },
  resistance: { base: "ohm", us: "ohm", si: "ohm" },
  water_flow: { base: "L_s", us: "gpm", si: "L_min" },
  recovery: { base: "L_s", us: "gph", si: "L_h" },
  airflow: { base: "m3_s", us: "cfm", si: "m3_h" },
  air_change: { base: "per_h", us: "per_h", si: "per_h" },
  time: { base: "s", us: "time", si: "time" },
  velocity: { base: "m_s", us: "ft_s", si: "m_s" },
  mass: { base: "kg", us: "lb", si: "kg" },
  density: { base: "kg_m3", us: "lb_ft3", si: "kg_m3" },
  heat_loss_coefficient: { base: "W_K", us: "Btu_h_F", si: "W_K" },
  sound: { base: "dBA", us: "dBA", si: "dBA" },
  money: { base: "usd", us: "usd", si: "usd" },
  energy_price: { base: "usd_kWh", us: "usd_kWh", si: "usd_kWh" },
  emission: { base: "kg", us: "lb", si: "kg" },
  share: { base: "", us: "percent", si: "percent" },
  ratio: { base: "", us: "one", si: "one" },
  count: { base: "", us: "one", si: "one" },
} as const satisfies Record<string, { base: string; us: string; si: string }>;

export type QuantityKind = keyof typeof QUANTITY_KINDS;
export type BaseUnitOf<K extends QuantityKind> = (typeof QUANTITY_KINDS)[K]["base"];
export type UnitSystem = "us" | "si";

/** A number that knows what it is: `value` is in the base unit of `kind`. */
export interface Quantity<K extends QuantityKind = QuantityKind> {
  readonly kind: K;
  readonly value: number;
}

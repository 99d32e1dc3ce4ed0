/**
 * What the season, the place and the job record say of causes before anybody has looked: how many times likelier each
 * one is. A cause that the knowledge does not hold is passed over.
 * @source judgement throughout; cold air and cold water weigh on the causes whose physics is cold
 */
export const SITE_EVIDENCE = {
  winter: { cold_season_inlet: 2, air_out_of_range: 2, loop_frozen: 3, defrost_fault: 2 },
  summer: { cold_season_inlet: 0.3, air_out_of_range: 0.7, loop_frozen: 0.1, defrost_fault: 0.5, duct_sweats: 1.5 },
  /** Air at the intake under 5 °C or over 45 °C, where many units stop their compressor. */
  air_out_of_range: { air_out_of_range: 6, defrost_fault: 2 },
  /** Under 20 m³ with no grille or duct. */
  small_room: { starved_of_air: 5 },
  ducted: { duct_restricted: 3, duct_sweats: 3, starved_of_air: 0.3 },
  fuel_appliance_near: { house_depressurised: 4 },
  closed_system: { expansion_unrelieved: 4 },
  /** A regulator, check valve or backflow preventer with an expansion tank that was proved at start-up. */
  expansion_proved: { expansion_unrelieved: 0.3 },
  hard_water: { scale_and_sediment: 3, mixing_valve_stuck: 2 },
  recirculation: { recirculation_check: 4, loop_line_loss: 1.5 },
  no_recirculation: { recirculation_check: 0.02 },
  mixing_valve: { mixing_valve_stuck: 2, mixing_valve_no_checks: 2, hot_without_mixing_valve: 0.2 },
  no_mixing_valve: { mixing_valve_stuck: 0.02, mixing_valve_no_checks: 0.02 },
  condensate_pump: { condensate_pump_failed: 3 },
  no_condensate_pump: { condensate_pump_failed: 0.02 },
  new_plumbing: {
    hot_cold_crossover: 4,
    shower_cartridge: 4,
    mixing_valve_no_checks: 3,
    recirculation_check: 2,
    flow_restricted: 3,
    air_trapped: 3,
  },
  new_heater: {
    reversed_connections: 2,
    dry_fired_element: 2,
    transit_bolts_left: 2,
    wrong_mode: 2,
    first_fill_sweat: 2,
  },
  power_outage: { supply_off: 3, board_failed: 3, lost_leg: 2, network_lost: 2, wrong_mode: 2 },
  utility_program: { held_off: 5 },
} as const satisfies Readonly<Record<string, Readonly<Record<string, number>>>>;

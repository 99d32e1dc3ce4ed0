import { describe, expect, test } from "vitest";
import { library } from "../support/ask-library.ts";

/** Everything that can go wrong with a water heater's place, pipes, wires and air, and the cautions that speak of it. */
const SUBJECTS: Readonly<Record<string, readonly string[]>> = {
  "relief valve": ["relief_missing_or_plugged", "relief_setting_high"],
  "relief discharge pipe": [
    "relief_discharge_missing",
    "relief_discharge_reduced",
    "relief_discharge_can_block",
    "relief_discharge_ends_high",
    "relief_discharge_into_pan",
  ],
  "expansion and check valves": [
    "closed_without_expansion_control",
    "relief_as_expansion_control",
    "precharge_off",
    "expansion_tank_cut_off",
  ],
  "mixing valve": ["hot_storage_without_mixing_valve", "fixtures_not_limited"],
  "highest temperature by fixture": ["tap_above_limit", "storage_above_tap_limit", "public_lavatory_hot", "bidet_hot"],
  "storage temperature and hygiene": [
    "storage_in_growth_range",
    "storage_below_hygiene_advice",
    "dead_leg",
    "water_stood_long",
  ],
  "people whom hot water hurts sooner": ["occupants_burn_sooner", "storage_low_for_the_frail"],
  "pan and its drain": ["pan_missing", "pan_drain_missing", "pan_shallow", "pan_drain_small"],
  condensate: [
    "condensate_nowhere",
    "condensate_flat",
    "condensate_into_pan",
    "condensate_pump_without_float",
    "condensate_joined_to_sewer",
  ],
  "earthquake straps": ["straps_too_few", "straps_need_design", "strap_near_controls"],
  "support and floor load": ["floor_overloaded", "wood_floor_unchecked"],
  "clearances, anode and filter": [
    "no_headroom_for_anode",
    "air_side_too_close",
    "no_room_to_service",
    "filter_out_of_reach",
  ],
  "doorways and lifting": ["doorway_too_narrow", "heavy_to_lift", "laid_on_its_side"],
  "room volume and air path": ["room_too_small", "breathes_its_own_air", "cold_air_on_thermostat"],
  "ducts and house pressure": ["duct_resists_fan", "exhaust_duct_bare", "blows_house_air_out"],
  "fuel appliances nearby": ["flue_may_backdraft", "flue_left_alone"],
  garages: ["garage_impact", "garage_sparks_low"],
  attics: ["attic_access"],
  "crawl spaces": ["crawl_space_access"],
  "freezing rooms": ["room_may_freeze", "air_too_cold_for_heat_pump", "outdoor_lines_may_freeze"],
  sound: ["sound_at_bedroom", "bedroom_wall"],
  circuit: [
    "breaker_above_limit",
    "breaker_below_continuous_load",
    "breaker_not_listed",
    "feeder_short",
    "supply_above_element_rating",
    "supply_below_element_rating",
    "voltage_drop_high",
    "power_before_water",
  ],
  conductor: ["wire_below_continuous_load", "aluminium_conductor"],
  disconnect: ["disconnect_out_of_sight"],
  "working space": ["working_space_tight"],
  bonding: ["bond_broken"],
  "wet places": ["wet_place"],
  "lock-out": ["not_locked_out"],
  "dielectric joints and materials": ["unlike_metals"],
  "lead-free": ["not_marked_lead_free"],
  backflow: ["backflow_not_stopped"],
  "shut-off": ["shut_off_missing"],
  drain: ["drain_valve_missing", "drain_water_hot"],
  "pipe insulation and heat traps": ["hot_pipe_bare", "heat_traps_missing"],
  "circulation loops": ["loop_always_on", "loop_without_check", "loop_return_cool"],
  "pipe size": ["hot_velocity_high", "cold_velocity_high", "hot_water_waits_in_pipe"],
  "water quality": ["very_hard_water", "softened_water_eats_anode", "well_water_untested"],
  "line pressure": ["line_pressure_high"],
  "gas lines": ["smell_of_gas", "gas_line_open", "gas_line_to_cap"],
  "disposal of the old heater": ["old_heater_leaves", "recover_before_scrap", "asbestos_suspected"],
  refrigerant: ["opens_circuit_without_card", "flammable_refrigerant"],
  "permits and inspection": ["permit_missing", "inspection_open"],
  "hand-over": ["owner_not_shown"],
};

describe.each(Object.entries(SUBJECTS))("%s", (_subject, ids) => {
  test.each(ids)("is spoken of by %s", (id) => {
    expect(library.cautions.map((caution) => caution.id)).toContain(id);
  });
});

test.each([
  "flue_may_backdraft",
  "gas_line_open",
  "hot_storage_without_mixing_valve",
  "not_locked_out",
  "relief_discharge_missing",
  "relief_missing_or_plugged",
  "smell_of_gas",
])("%s stops the work, as a danger to life", (id) => {
  expect(library.cautions.find((caution) => caution.id === id)?.severity).toBe("stop");
});

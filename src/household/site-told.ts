import type { SiteFacts } from "../cautions/site-facts.ts";
import type { CatalogueModel } from "../equipment/catalogue.ts";
import type { SiteTold } from "./site-told-facts.ts";

/** One litre of water, near enough for what a floor carries [kg]. */
const WATER_kg_L = 1;

type Optional<T> = { readonly [K in keyof T]?: T[K] | undefined };
/** What was told, by a topic that asks for all of it or for some. */
type Told = Optional<SiteTold>;

/** The site as cautions look at it; what nobody told stays unknown. */
export function describeSite(told: Told, model: CatalogueModel | undefined): SiteFacts {
  return keepKnown({
    ...jobSite(told),
    ...waterSite(told),
    ...reliefSite(told),
    ...unitSite(told, model),
    ...placeSite(told, model),
    ...drainSite(told),
    ...wiringSite(told),
    ...pipingSite(told),
  });
}

function jobSite(told: Told): Optional<SiteFacts> {
  const { replaces, refrigerant_work } = told;
  return {
    work: told.work,
    isReplacement: replaces && true,
    isReplacingGas: replaces && replaces === "gas",
    oldHeaterHoldsRefrigerant: replaces && replaces === "heat_pump",
    hasPermit: told.permit,
    isInspected: told.inspected,
    isOwnerShown: told.owner_shown,
    mayHoldAsbestos: told.asbestos,
    smellsOfGas: told.gas_smell,
    isGasLineCapped: told.gas_line && told.gas_line === "capped",
    sharesFlue: told.shared_flue,
    hasNaturalDraftAppliance: told.fuel_appliance && told.fuel_appliance === "natural_draft",
    opensRefrigerantCircuit: refrigerant_work && refrigerant_work !== "none",
    holdsRefrigerantCard:
      refrigerant_work === undefined || refrigerant_work === "none" ? undefined : refrigerant_work === "with_card",
    isRefrigerantFlammable: told.flammable,
  };
}

function waterSite(told: Told): Optional<SiteFacts> {
  return {
    storage_C: told.setpoint_C,
    tap_C: told.tap_C,
    bidet_C: told.bidet_C,
    publicLavatory_C: told.public_lavatory_C,
    hasMixingValve: told.mixing_valve,
    areFixturesLimited: told.fixtures_limited,
    hasVulnerableOccupants: told.occupants && told.occupants === "frail",
    stood_s: told.idle_s,
    hasDeadLeg: told.dead_leg,
    hardness: told.hardness,
    isSoftened: told.softened,
    isOnWell: told.well,
  };
}

function reliefSite(told: Told): Optional<SiteFacts> {
  const { control, relief, discharge } = told;
  return {
    linePressure_kPa: told.line_pressure_kPa,
    isClosedSystem: told.closed,
    hasExpansionTank: control && control === "tank",
    expandsThroughRelief: control && control === "relief_valve",
    precharge_kPa: told.precharge_kPa,
    reliefSetting_kPa: told.relief_setting_kPa,
    hasReliefValve: relief && relief !== "missing",
    isReliefPlugged: relief && relief === "plugged",
    hasReliefDischarge: discharge && discharge !== "none",
    reliefDischargeEndsIn: discharge === "none" ? undefined : discharge,
    canReliefDischargeBlock: told.discharge_blocks,
    reliefDischargeEnd_m: told.discharge_end_m,
  };
}

function unitSite(told: Told, model: CatalogueModel | undefined): Optional<SiteFacts> {
  const tank_L = told.tank_L ?? model?.heater.tank.volume_L;
  const unitMass_kg = told.unit_mass_kg ?? model?.body.emptyMass_kg;
  return {
    tank_L,
    unitMass_kg,
    filledMass_kg: tank_L === undefined || unitMass_kg === undefined ? undefined : unitMass_kg + WATER_kg_L * tank_L,
    floor: told.floor,
    floorAllows_kg: told.floor_allows_kg,
    unitWidth_m: model?.body.width_m,
    narrowestPassage_m: told.passage_m,
    hasLiftingGear: told.lifting_gear,
    wasLaidDown: told.laid_down,
    headroom_m: told.headroom_m,
    headroomNeeded_m: model?.body.clearanceAbove_m,
  };
}

function placeSite(told: Told, model: CatalogueModel | undefined): Optional<SiteFacts> {
  const { exhaust } = told;
  return {
    room: told.room,
    serviceSpace_m: told.service_space_m,
    isFilterReachable: told.filter_reachable,
    isImpactProtected: told.impact_protected,
    ignitionHeight_m: told.ignition_height_m,
    hasSafeAccess: told.safe_access,
    isSeismicArea: told.seismic,
    straps: told.straps,
    strapAboveControls_m: told.strap_height_m,
    roomVolume_m3: told.room_volume_m3,
    roomVolumeNeeded_m3: model?.smallestRoom_m3,
    isDucted: exhaust && exhaust !== "room",
    hasExhaustDuct: exhaust && exhaust !== "room",
    isExhaustDuctInsulated: exhaust === undefined || exhaust === "room" ? undefined : exhaust === "duct_insulated",
    exhaustsHouseAir: told.house_air,
    roomLow_C: told.room_low_C,
    lowestAir_C: model?.heater.heatPump?.airLimits.lowest_C,
    isOnBedroomWall: told.bedroom_wall,
  };
}

function drainSite(told: Told): Optional<SiteFacts> {
  const { pan, outdoor_lines } = told;
  return {
    leakDoesDamage: told.leak_harms,
    hasPan: pan && pan !== "none",
    hasPanDrain: pan && pan === "drained",
    panDepth_m: told.pan_depth_m,
    panDrain_m: told.pan_drain_m,
    condensateEndsIn: told.condensate,
    condensateSlope_share: told.condensate_slope,
    isPumpFloatWired: told.pump_float,
    hasOutdoorWaterLines: outdoor_lines && outdoor_lines !== "none",
    areOutdoorLinesProtected:
      outdoor_lines === undefined || outdoor_lines === "none" ? undefined : outdoor_lines === "protected",
  };
}

function wiringSite(told: Told): Optional<SiteFacts> {
  const { wet_place } = told;
  return {
    hasDisconnectInSight: told.disconnect,
    isBreakerLockable: told.lockable,
    workingDepth_m: told.working_depth_m,
    isWetPlace: wet_place && wet_place !== "dry",
    hasGroundFault: wet_place === undefined || wet_place === "dry" ? undefined : wet_place === "with_ground_fault",
    isLockedOut: told.locked_out,
    isTankFull: told.fill && told.fill === "full",
    bond_ohm: told.bond_ohm,
  };
}

function pipingSite(told: Told): Optional<SiteFacts> {
  const { joint, other_water, loop } = told;
  return {
    isHotPipeInsulated: told.pipe_insulated,
    hasHeatTraps: told.heat_traps,
    joinsUnlikeMetals: joint && joint !== "alike",
    hasDielectricFitting: joint === undefined || joint === "alike" ? undefined : joint === "dielectric",
    isMarkedLeadFree: told.lead_free,
    isJoinedToOtherWater: other_water && other_water !== "none",
    hasBackflowPreventer: other_water === undefined || other_water === "none" ? undefined : other_water === "preventer",
    hasShutOff: told.shut_off,
    hasDrainValve: told.drain_valve,
    hasCirculationLoop: loop && loop !== "none",
    loopControl: loop === "none" ? undefined : loop,
    hasLoopCheckValve: told.loop_check,
    loopReturn_C: told.loop_return_C,
  };
}

function keepKnown(site: Optional<SiteFacts>): SiteFacts {
  return Object.fromEntries(Object.entries(site).filter(([, value]) => value !== undefined));
}

/**
 * Tanks with exact answers, US units: gallons, °F, Btu/h-°F, hours. Water 8.33 Btu/gal-°F, 1 kWh = 3412.14 Btu.
 *
 * COOL_DOWN: T = Ta + (T0 - Ta) exp(-UA t / C). HEATING: m c dT / P, and with loss -tau ln((Tset - Tinf) / (T0 - Tinf)).
 * PLUG: the outlet keeps T0 until the tank's volume has gone. MIXED: Tin + (T0 - Tin) exp(-V / Vtank).
 * CHAIN: N mixed layers in series, exp(-N x) sum (N x)^k / k!. USABLE: share drawn before the outlet falls 15 °F.
 * INVERSIONS: energy-conserving blending, top to bottom. All exact physics, computed.
 * BUOYANCY: effective conductivity of inverted layers, AixLib Buoyancy model, 1 K over 0.2 m; published equation.
 * UA_TYPICAL: whole-tank loss of electric and heat-pump storage tanks, Btu/h-°F; from memory.
 */
export const WATER = { heat_Btu_gal_F: 8.33, kWh_Btu: 3412.14 } as const;

export const COOL_DOWN = [
  { hours: 1, volume_gal: 50, loss_Btu_h_F: 3, from_F: 125, air_F: 67.5, to_F: 124.5873 },
  { hours: 6, volume_gal: 50, loss_Btu_h_F: 3, from_F: 125, air_F: 67.5, to_F: 122.5679 },
] as const;

export const HEATING = [
  { loss_Btu_h_F: 0, volume_gal: 50, from_F: 58, to_F: 125, power_kW: 4.5, air_F: 67.5, hours: 1.8174 },
  { loss_Btu_h_F: 3, volume_gal: 50, from_F: 58, to_F: 125, power_kW: 4.5, air_F: 67.5, hours: 1.82599 },
] as const;

export const DRAWN = { hot_F: 125, cold_F: 58 } as const;

export const PLUG = [
  { drawn_gal: 0, outlet_F: 125 },
  { drawn_gal: 25, outlet_F: 125 },
  { drawn_gal: 49.9, outlet_F: 125 },
  { drawn_gal: 50.1, outlet_F: 58 },
] as const;

export const MIXED = [
  { volumes: 0.25, outlet_F: 110.1797 },
  { volumes: 1, outlet_F: 82.6479 },
] as const;

export const CHAIN = [
  { layers: 6, volumes: 0.5, outlet_F: 119.3775 },
  { layers: 6, volumes: 0.8, outlet_F: 101.6174 },
  { layers: 12, volumes: 0.8, outlet_F: 107.6631 },
  { layers: 12, volumes: 1, outlet_F: 88.927 },
] as const;

export const USABLE = [
  { layers: 1, volumes: 0.2534 },
  { layers: 6, volumes: 0.6762 },
  { layers: 12, volumes: 0.7724 },
  { layers: 24, volumes: 0.8403 },
] as const;

export const INVERSIONS = [
  { topDown: [120, 100, 110], settled: [120, 105, 105] },
  { topDown: [100, 110, 120], settled: [110, 110, 110] },
] as const;

export const BUOYANCY = { difference_K: 1, height_m: 0.2, effective_W_m_K: 5841.56 } as const;

export const UA_TYPICAL = { lowest_Btu_h_F: 2.5, highest_Btu_h_F: 5 } as const;

/**
 * Pipes, US units.
 *
 * CONTENTS: inside diameter of ASTM B88, F876 and D2846 sizes and ounces per foot of IPC 2009 Table E202.1 as the US
 * Department of Energy's building education pages print it; 128 fl oz to the gallon; tolerance 1 %.
 * WAITS: plug flow on those sizes; computed, tolerance 0.5 %.
 * VELOCITY: v = 0.4085 gpm / d^2 with d in inches, published form. FASTEST: flow at 8 and 5 ft/s, computed.
 * FRICTION: published loss table for type L copper, cold water, psi per 100 ft (Hazen-Williams, near C = 140).
 */
export const CONTENTS = [
  { kind: "copper_l", size: "1/2", inside_in: 0.545, gal_ft: 0.01212, oz_ft: 1.55 },
  { kind: "copper_l", size: "3/4", inside_in: 0.785, gal_ft: 0.02514, oz_ft: 3.22 },
  { kind: "copper_l", size: "1", inside_in: 1.025, gal_ft: 0.04287, oz_ft: 5.49 },
  { kind: "copper_m", size: "3/4", inside_in: 0.811, gal_ft: 0.02683, oz_ft: 3.43 },
  { kind: "copper_m", size: "1", inside_in: 1.055, gal_ft: 0.04541, oz_ft: 5.81 },
  { kind: "pex", size: "3/8", inside_in: 0.35, gal_ft: 0.005, oz_ft: 0.64 },
  { kind: "pex", size: "1/2", inside_in: 0.475, gal_ft: 0.00921, oz_ft: 1.18 },
  { kind: "pex", size: "3/4", inside_in: 0.671, gal_ft: 0.01837, oz_ft: 2.35 },
  { kind: "cpvc", size: "1/2", inside_in: 0.489, gal_ft: 0.00976, oz_ft: 1.25 },
  { kind: "cpvc", size: "3/4", inside_in: 0.715, gal_ft: 0.02086, oz_ft: 2.67 },
  { kind: "cpvc", size: "1", inside_in: 0.921, gal_ft: 0.03461, oz_ft: 4.43 },
] as const;

/** ASTM B88: outside diameter and wall [in], as printed in published size tables (1-1/2 and 2 from memory); inside = outside - 2 walls. */
export const B88_WALLS = [
  { kind: "copper_k", size: "3/8", outside_in: 0.5, wall_in: 0.049 },
  { kind: "copper_k", size: "1/2", outside_in: 0.625, wall_in: 0.049 },
  { kind: "copper_k", size: "5/8", outside_in: 0.75, wall_in: 0.049 },
  { kind: "copper_k", size: "3/4", outside_in: 0.875, wall_in: 0.065 },
  { kind: "copper_k", size: "1", outside_in: 1.125, wall_in: 0.065 },
  { kind: "copper_k", size: "1-1/4", outside_in: 1.375, wall_in: 0.065 },
  { kind: "copper_k", size: "1-1/2", outside_in: 1.625, wall_in: 0.072 },
  { kind: "copper_k", size: "2", outside_in: 2.125, wall_in: 0.083 },
  { kind: "copper_l", size: "3/8", outside_in: 0.5, wall_in: 0.035 },
  { kind: "copper_l", size: "1/2", outside_in: 0.625, wall_in: 0.04 },
  { kind: "copper_l", size: "5/8", outside_in: 0.75, wall_in: 0.042 },
  { kind: "copper_l", size: "3/4", outside_in: 0.875, wall_in: 0.045 },
  { kind: "copper_l", size: "1", outside_in: 1.125, wall_in: 0.05 },
  { kind: "copper_l", size: "1-1/4", outside_in: 1.375, wall_in: 0.055 },
  { kind: "copper_l", size: "1-1/2", outside_in: 1.625, wall_in: 0.06 },
  { kind: "copper_l", size: "2", outside_in: 2.125, wall_in: 0.07 },
  { kind: "copper_m", size: "3/8", outside_in: 0.5, wall_in: 0.025 },
  { kind: "copper_m", size: "1/2", outside_in: 0.625, wall_in: 0.028 },
  { kind: "copper_m", size: "3/4", outside_in: 0.875, wall_in: 0.032 },
  { kind: "copper_m", size: "1", outside_in: 1.125, wall_in: 0.035 },
  { kind: "copper_m", size: "1-1/4", outside_in: 1.375, wall_in: 0.042 },
  { kind: "copper_m", size: "1-1/2", outside_in: 1.625, wall_in: 0.049 },
  { kind: "copper_m", size: "2", outside_in: 2.125, wall_in: 0.058 },
] as const;

export const WAITS = [
  { kind: "copper_l", size: "3/4", length_ft: 50, flow_gpm: 2, wait_s: 37.71 },
  { kind: "pex", size: "1/2", length_ft: 50, flow_gpm: 2, wait_s: 13.81 },
] as const;

export const VELOCITY = { constant: 0.4085, flow_gpm: 10, inside_in: 0.785, velocity_ft_s: 6.63 };

export const FASTEST = [
  { inside_in: 1.025, at_8_gpm: 20.57, at_5_gpm: 12.86 },
  { inside_in: 0.863, at_8_gpm: 14.58, at_5_gpm: 9.12 },
] as const;

export const FRICTION = [
  { size: "1/2", inside_in: 0.545, flow_gpm: 2, drop_psi: 3.44 },
  { size: "1/2", inside_in: 0.545, flow_gpm: 3, drop_psi: 7.29 },
  { size: "1/2", inside_in: 0.545, flow_gpm: 4, drop_psi: 12.41 },
  { size: "3/4", inside_in: 0.785, flow_gpm: 2, drop_psi: 0.57 },
  { size: "3/4", inside_in: 0.785, flow_gpm: 3, drop_psi: 1.2 },
  { size: "3/4", inside_in: 0.785, flow_gpm: 4, drop_psi: 2.05 },
] as const;

/** Hazen-Williams, psi per foot: 4.52 Q^1.85 / (C^1.85 d^4.87), gpm and inches; fire-protection references. */
export function hazenWilliams_psi_ft(flow_gpm: number, inside_in: number, C: number): number {
  return (4.52 * flow_gpm ** 1.85) / (C ** 1.85 * inside_in ** 4.87);
}

/** Colebrook-White friction factor, solved by repetition; the equation behind the Moody chart. */
export function colebrook(reynolds: number, relativeRoughness: number): number {
  let root = 0.15;
  for (let i = 0; i < 60; i++) root = -0.5 / Math.log10(relativeRoughness / 3.7 + 2.51 / (reynolds * root));
  return root ** 2;
}

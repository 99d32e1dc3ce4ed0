import type { Source } from "../../declaration/source.ts";
import { toBase } from "../../units/convert.ts";

/** The federal test procedure, as far as it is known here without the text at hand. */
export const APPENDIX_E: Source = {
  basis: "from_memory",
  document: "10 CFR 430, subpart B, appendix E",
  edition: "as amended 2023 (88 FR 40406)",
};

/**
 * Conditions of the rating tests. Supply, outlet, flow, 15 F drop and 67 F rise were seen in public summaries as well;
 * the section numbers and everything else are from memory.
 */
export const RATING = {
  supply_C: toBase(58, "F"),
  outlet_C: toBase(125, "F"),
  /** Nominal rise on which the energy of the day is put [K]. */
  rise_K: toBase(67, "F_diff"),
  ambient_C: toBase(67.5, "F"),
  relativeHumidity: 0.5,
  supply_V: 240,
  /** Section 2; the wet bulb that follows, 56.4 F, is published with residential performance curves. */
  source: { ...APPENDIX_E, section: "2" },
} as const;

/** First-hour test: flow, the fall of the outlet temperature that ends a draw, and the hour. */
export const FIRST_HOUR = {
  flow_L_s: toBase(3, "gpm"),
  outletFall_K: toBase(15, "F_diff"),
  hour_s: 3600,
  /** How often the outlet is read. */
  reading_s: 5,
  source: { ...APPENDIX_E, section: "5.3.3" },
} as const;

/** Recovery efficiency that the procedure grants to elements in water without a measurement. */
export const ELEMENT_RECOVERY = { efficiency: 0.98, source: { ...APPENDIX_E, section: "6.3.2" } } as const;

import type { Source } from "../declaration/source.ts";
import type { LapseRule } from "./crew.ts";

/** What holds for every credential of a kind unless the company's book says otherwise. */
interface KindFacts {
  readonly lapse: LapseRule;
  /** True: a public register tells whether it stands, and somebody must have looked. */
  readonly hasRegister: boolean;
  readonly source: Source;
}

const memory = (document: string): Source => ({ basis: "from_memory", document });
const practice: Source = { basis: "common_practice", document: "Oldhand" };

/**
 * Kinds of licences, certificates and cards that heater crews hold.
 * @limits States and cities differ in names, terms and what a lapse means; the company's book and the issuer decide.
 */
export const CREDENTIAL_KINDS = {
  contractor_license: { lapse: "stops_work", hasRegister: true, source: memory("State contractor licensing rules") },
  journeyman_plumber: {
    lapse: "stops_work",
    hasRegister: true,
    source: { basis: "published", document: "Oregon Building Codes Division", section: "continuing education" },
  },
  master_plumber: {
    lapse: "stops_work",
    hasRegister: true,
    source: { basis: "published", document: "Oregon Building Codes Division", section: "continuing education" },
  },
  apprentice_plumber: { lapse: "stops_work", hasRegister: true, source: memory("State apprentice registration rules") },
  electrician: { lapse: "stops_work", hasRegister: true, source: memory("State electrician licensing rules") },
  limited_electrical: { lapse: "stops_work", hasRegister: true, source: memory("State limited electrical licences") },
  /** Does not run out. */
  refrigerant_card: {
    lapse: "stops_work",
    hasRegister: false,
    source: { basis: "published", document: "40 CFR 82 subpart F", section: "as the trade press sums it up" },
  },
  flammable_refrigerant: { lapse: "stops_work", hasRegister: false, source: practice },
  gas_fitter: { lapse: "stops_work", hasRegister: true, source: memory("State gas-fitter licensing rules") },
  combustion_safety: { lapse: "stops_work", hasRegister: false, source: practice },
  backflow_tester: { lapse: "stops_work", hasRegister: true, source: practice },
  /** Live tests, lock-out, arc and shock protection. */
  energised_work: {
    lapse: "stops_work",
    hasRegister: false,
    source: memory("NFPA 70E, retraining within three years"),
  },
  lead_safe: { lapse: "stops_work", hasRegister: false, source: memory("40 CFR 745") },
  site_safety: { lapse: "warns", hasRegister: false, source: practice },
  first_aid: { lapse: "warns", hasRegister: false, source: practice },
  driver: { lapse: "stops_work", hasRegister: false, source: practice },
} as const satisfies Readonly<Record<string, KindFacts>>;
export type CredentialKind = keyof typeof CREDENTIAL_KINDS;

/** True for a word that names a kind. */
export function isCredentialKind(word: string): word is CredentialKind {
  return Object.hasOwn(CREDENTIAL_KINDS, word);
}

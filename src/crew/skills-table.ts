import type { FindingSpecs } from "../declaration/answer.ts";
import type { Source } from "../declaration/source.ts";
import type { CredentialKind } from "./credential-kinds-table.ts";

/** What somebody on a job must be allowed to do: any one of the kinds will do. */
interface Skill {
  readonly kinds: readonly [CredentialKind, ...CredentialKind[]];
  readonly source: Source;
}
const practice: Source = { basis: "common_practice", document: "Oldhand", section: "crew check list" };

/** @limits What a licence allows differs from state to state; the authority decides. */
export const SKILLS = {
  skill_plumbing: { kinds: ["master_plumber", "journeyman_plumber"], source: practice },
  skill_electrical: {
    kinds: ["electrician", "limited_electrical"],
    source: { basis: "from_memory", document: "State electrician licensing rules" },
  },
  skill_live_tests: {
    kinds: ["energised_work", "electrician"],
    source: { basis: "from_memory", document: "NFPA 70E", section: "qualified person" },
  },
  skill_gas: { kinds: ["gas_fitter"], source: practice },
  skill_refrigerant: {
    kinds: ["refrigerant_card"],
    source: { basis: "published", document: "40 CFR 82 subpart F", section: "as the trade press sums it up" },
  },
  skill_flammable: { kinds: ["flammable_refrigerant"], source: practice },
  skill_combustion: { kinds: ["combustion_safety"], source: practice },
  skill_driving: { kinds: ["driver"], source: practice },
} as const satisfies Readonly<Record<string, Skill>>;
export type SkillId = keyof typeof SKILLS;

/** How skills are named in answers. */
export const SKILL_WORDS = {
  skill_plumbing: {},
  skill_electrical: {},
  skill_live_tests: {},
  skill_gas: {},
  skill_refrigerant: {},
  skill_flammable: {},
  skill_combustion: {},
  skill_driving: {},
} as const satisfies FindingSpecs & Readonly<Record<SkillId, object>>;
/** How kinds of credentials are named in answers. */
export const CREDENTIAL_WORDS = {
  contractor_license: {},
  journeyman_plumber: {},
  master_plumber: {},
  apprentice_plumber: {},
  electrician: {},
  limited_electrical: {},
  refrigerant_card: {},
  flammable_refrigerant: {},
  gas_fitter: {},
  combustion_safety: {},
  backflow_tester: {},
  energised_work: {},
  lead_safe: {},
  site_safety: {},
  first_aid: {},
  driver: {},
} as const satisfies FindingSpecs & Readonly<Record<CredentialKind, object>>;

import type { Source } from "../declaration/source.ts";
import type { CatalogueModel } from "../equipment/catalogue.ts";
import type { Hazard } from "../faults/knowledge.ts";
import type { QuantityKind } from "../units/quantity-kinds.ts";

/** What is known of the house and the unit while it is started up; what nobody told is left out. */
export interface StartupSite {
  readonly unit?: CatalogueModel;
  readonly supply_V?: number;
  readonly setpoint_C?: number;
  readonly cold_C?: number;
  /** Air at the intake. */
  readonly air_C?: number;
  readonly line_kPa?: number;
  /** Pressure of the line as it was read while starting up. */
  readonly measuredLine_kPa?: number;
  readonly isClosed?: boolean;
  readonly control?: string;
  readonly mode?: string;
  /** What the code at the place allows. */
  readonly mostLine_kPa: number;
  readonly mostAtTap_C: number;
}

/** Between which ends a reading is accepted, both counted in, and what was expected. Base units. */
export interface Accepted {
  readonly low: number;
  readonly high: number;
  readonly expected?: number;
}
export interface StartupReading {
  readonly quantity: QuantityKind;
  /** What an instrument of the trade shows, base unit. */
  readonly min: number;
  readonly max: number;
  readonly usual: readonly number[];
  /** Nothing where too little is known to judge it: then it is only written down. */
  readonly accepts: (site: StartupSite, value: number) => Accepted | undefined;
}
export interface StartupCase {
  readonly name: string;
  readonly site: Partial<StartupSite>;
  /** The step is not asked there. */
  readonly isLeftOut?: true;
  readonly reading?: number;
  /** Whether that reading is accepted; left out where it is not judged. */
  readonly isAccepted?: boolean;
}

/** One step of starting a heater up: what is looked at or measured, and what is accepted. Its words stand in the catalogues. */
export interface StartupStep {
  readonly id: string;
  /** True: somebody may be hurt. Without a reading or a reason the job is not complete. */
  readonly isCritical: boolean;
  /** What is seen to before. */
  readonly hazards: readonly Hazard[];
  readonly appliesTo?: (site: StartupSite) => boolean;
  /** Left out: it is looked at, and done or not. */
  readonly reading?: StartupReading;
  readonly source: Source;
  readonly cases: readonly StartupCase[];
}

/** Behind what is accepted by the habit of the trade alone. */
export const STARTUP_HABIT: Source = { basis: "common_practice", document: "Oldhand", section: "starting up" };

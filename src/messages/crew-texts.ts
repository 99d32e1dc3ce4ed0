import type { CrewRefusal } from "../crew/crew-rules.ts";
import { crewRecords as en } from "./en/crew-records.ts";
import { crewRecords as es } from "./es/crew-records.ts";
import { JOB_TEXTS } from "./job-labels.ts";
import type { Language } from "./language.ts";

/** Every sentence that the desk says about people, trucks and stock. Both languages have this shape. Lists arrive joined. */
export interface CrewTexts {
  readonly refusals: {
    readonly crew_role: (roles: string) => string;
    readonly crew_unknown_event: (event: string) => string;
    readonly only_owner: string;
    readonly last_owner: string;
  };
  /** What was used on a job came off a truck. */
  readonly offTruck: (truck: string, job: string, kinds: string) => string;
  readonly backOnTruck: (truck: string, job: string) => string;
  readonly takenBack: string;
  readonly announced: string;
  readonly notAnnounced: string;
  readonly planTitle: string;
}

export const CREW_TEXTS: Readonly<Record<Language, CrewTexts>> = { en, es };

/** Why a change of the crew is not made, with what can be done instead. */
export function sayCrewRefusal(language: Language, refusal: CrewRefusal): string {
  const { refusals } = CREW_TEXTS[language];
  switch (refusal.code) {
    case "crew_role":
      return refusals.crew_role(refusal.roles.map((role) => JOB_TEXTS[language].roles[role]).join(", "));
    case "crew_unknown_event":
      return refusals.crew_unknown_event(String(refusal.event));
    case "only_owner":
    case "last_owner":
      return refusals[refusal.code];
  }
}

import { nameSteps } from "../startup-texts.ts";
import { crewWords } from "./crew-words.ts";
import { startupSteps } from "./startup-steps.ts";

type Words<K extends string> = Readonly<Record<K, string>>;

/** What stands in the tables of a digest and of the day's first page. */
export const digestWords = {
  ...crewWords,
  ...nameSteps(startupSteps),
  calibration_of: ({ es, id }: Words<"es" | "id">) => `Calibración: ${es} (${id})`,
  within: ({ horizon }: Words<"horizon">) => `En ${horizon} días`,
  no_unit: () => "Sin equipo aún",
  no_day: () => "Sin fecha aún",
  cause: ({ es }: Words<"es">) => es,
  no_cause_yet: () => "Aún no se encuentra",
  too_few: () => "Muy pocas",
  overdue_since: ({ due }: Words<"due">) => `Atrasado desde el ${due}`,
  due_on: ({ due }: Words<"due">) => `Para el ${due}`,
  closed_complete: ({ on }: Words<"on">) => `Completo, ${on}`,
  closed_with_items: ({ on }: Words<"on">) => `Cerrado con pendientes, ${on}`,
  opened_on: ({ on }: Words<"on">) => `Abierto el ${on}`,
  came_back: ({ on, because }: Words<"on" | "because">) => `${on}: ${because}`,
  came_back_silent: ({ on }: Words<"on">) => on,
  visits: ({ visits }: Words<"visits">) => `Visitas: ${visits}`,
  item: ({ what, owner }: Words<"what" | "owner">) => `${what} (${owner}).`,
  step_open: ({ job }: Words<"job">) => `Trabajo ${job}`,
};

import type { Role } from "../../ports/store.ts";

/** What a digest counts, by the word that opens its jobs. */
export const FIGURES = [
  "finished",
  "opened",
  "cancelled",
  "open_items",
  "overdue",
  "callbacks",
  "first_visit",
  "readings",
  "on_site",
  "lapses",
  "parts",
] as const;
export type Figure = (typeof FIGURES)[number];

/** How the work turned out, as against what there is to do. */
const OUTCOMES: readonly Figure[] = ["first_visit", "readings", "on_site"];

/**
 * The figures that a role may see. A dispatcher sees what there is to do and plan, not how the work of people turned out;
 * a technician sees none: the own jobs stand in `today`.
 * @source common practice of the house
 */
export const SEES: Readonly<Record<Role, readonly Figure[]>> = {
  owner: FIGURES,
  manager: FIGURES,
  dispatcher: FIGURES.filter((figure) => !OUTCOMES.includes(figure)),
  technician: [],
};

/**
 * The role by which somebody reads the figures. Without an asker somebody runs a command on the company's own machine and
 * can read the books there as they lie.
 */
export function roleOf(asker: { readonly role: Role } | undefined): Role {
  return asker?.role ?? "owner";
}

import type { DeskParts } from "../desk.ts";

/** A short id to show to people, which is found again in the fault log. */
export function shortId({ newId }: Pick<DeskParts, "newId">): string {
  return newId().slice(-8);
}

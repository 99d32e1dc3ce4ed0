import type { Placement } from "./plan-model.ts";

/** An assignment as it was shown, with the version of the job that it was made for, where that is known. */
export interface ShownPlacement extends Placement {
  readonly version?: number;
}

const PLACEMENT = /^(\d{1,9})(?:\.(\d{1,6}))?@(\d{4}-\d{2}-\d{2}):([\p{L}\p{N}_+-]+)$/u;

/** Writes a plan in one line, so that a button carries exactly what was shown: "1003.7@2026-11-30:ebbe+wren, 1004.2@…". */
export function writePlan(placements: readonly ShownPlacement[]): string {
  return placements
    .map(({ job, version, day, people }) => {
      const seen = version === undefined ? "" : `.${version}`;
      return `${job}${seen}@${day}:${people.join("+")}`;
    })
    .join(",");
}

/** A plan in one line, or the first piece of it that is none. */
export function readPlan(text: string): readonly ShownPlacement[] | { readonly unreadable: string } {
  const pieces = text.split(/[,;\s]+/).filter((piece) => piece !== "");
  const read = pieces.map(readPlacement);
  const at = read.indexOf(undefined);
  if (pieces.length === 0 || at >= 0) return { unreadable: pieces[at] ?? text };
  return read.flatMap((one) => (one === undefined ? [] : [one]));
}

function readPlacement(piece: string): ShownPlacement | undefined {
  const [, job, version, day, people] = PLACEMENT.exec(piece) ?? [];
  if (job === undefined || day === undefined || people === undefined) return undefined;
  const names = people.split("+").filter((name) => name !== "");
  return { job, day, people: [...new Set(names)], ...(version !== undefined && { version: Number(version) }) };
}

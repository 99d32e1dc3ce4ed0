/**
 * How long water takes to burn adult skin, as published; none of the primary papers was read.
 *
 * safety list: times for 3rd degree burns; secondary copy (its four numbers match CPSC publication 5098 from memory).
 * second and third degree: table in the tradition of Moritz and Henriques (1947); secondary copy.
 * hospital: a children's hospital's scald prevention page. "over" and "under" are limits, as printed.
 * university: a university hospital's list; secondary copy.
 * foundation: Burn Foundation; secondary copies.
 */
export interface ScaldRow {
  readonly by: string;
  readonly at_F: number;
  readonly time_s: number;
  readonly limit?: "over" | "under";
}

const rows = (by: string, list: readonly (readonly [number, number, ("over" | "under")?])[]): readonly ScaldRow[] =>
  list.map(([at_F, time_s, limit]) => ({ by, at_F, time_s, ...(limit && { limit }) }));

export const SCALD_ROWS: readonly ScaldRow[] = [
  ...rows("safety list", [
    [150, 2],
    [140, 6],
    [130, 30],
    [120, 300],
  ]),
  ...rows("second degree", [
    [113, 7200],
    [116.6, 1200],
    [118.4, 900],
    [120, 480],
    [124, 120],
    [131, 17],
    [140, 3],
  ]),
  ...rows("third degree", [
    [113, 10_800],
    [116.6, 2700],
    [118.4, 1200],
    [120, 600],
    [124, 252],
    [131, 30],
    [140, 5],
  ]),
  ...rows("hospital", [
    [120, 300, "over"],
    [125, 90],
    [125, 120],
    [130, 30],
    [135, 10],
    [140, 5, "under"],
    [145, 3, "under"],
    [150, 1.5],
    [155, 1],
  ]),
  ...rows("university", [
    [150, 2],
    [140, 6],
    [125, 120],
    [120, 600],
  ]),
  ...rows("foundation", [
    [133, 15],
    [140, 5],
    [149, 2],
    [156, 1],
  ]),
];

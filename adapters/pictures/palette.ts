/** Colours of the pictures: from the hot outlet to the cold inlet, chosen to differ in lightness as well as in hue. */
export const PALETTE = {
  paper: "#ffffff",
  ink: "#14212a",
  quiet: "#465660",
  seam: "#c9d3d4",
  /** Cold to hot, for tank layers. */
  layers: ["#12527b", "#4796b8", "#a3cccd", "#e9cfa6", "#e38d52", "#b93a1c"],
  /** Lines and bars, in the order of the series of a panel. */
  series: ["#9c2310", "#12527b", "#7d5a00", "#1f5a38", "#5a3d7a", "#465660"],
} as const;

export function seriesColour(index: number): string {
  return PALETTE.series[index % PALETTE.series.length] ?? PALETTE.ink;
}

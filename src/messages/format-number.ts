/** How many digits a number is shown with: significant digits, or a fixed most of decimals. */
export interface Digits {
  readonly significant?: number;
  readonly decimals?: number;
}

const EXACT = 1e-9;
/** An exact number this short ("57.5", "18.75") is kept as it was typed instead of being rounded. */
const KEPT_DECIMALS = 2;
const KEPT_SIGNIFICANT = 5;
/** Where decimals are not shown at all, only a single one is kept. */
const KEPT_DECIMALS_OF_WHOLE = 1;
const MOST_DECIMALS = 8;

/**
 * Writes a number the way a person reads it: rounded, thousands grouped by commas, decimal point. US English and US
 * Spanish write numbers alike. Whole digits are never rounded away, and short exact decimals are kept.
 */
export function formatNumber(value: number, digits: Digits): string {
  return groupThousands(roundToText(value, decimalsFor(value, digits)));
}

/** Writes a number for a request: no grouping, up to six significant digits, never exactly three decimals. */
export function writeNumber(value: number): string {
  const text = roundToText(value, decimalsFor(value, { significant: 6 }));
  // "1.125" could be one thousand to a reader of decimal commas; "1.1250" cannot.
  return /[1-9]\.\d{3}$/.test(text) ? `${text}0` : text;
}

function decimalsFor(value: number, digits: Digits): number {
  if (!Number.isFinite(value)) throw new Error(`cannot show ${value}`);
  const rule = digits.decimals ?? decimalsOfSignificant(value, digits.significant ?? 3);
  const most = digits.decimals === undefined ? KEPT_DECIMALS : KEPT_DECIMALS_OF_WHOLE;
  const exact = exactDecimals(value, Math.min(most, decimalsOfSignificant(value, KEPT_SIGNIFICANT)));
  return exact !== undefined && exact > rule ? exact : rule;
}

function exactDecimals(value: number, most: number): number | undefined {
  for (let decimals = 0; decimals <= most; decimals++) {
    const scale = 10 ** decimals;
    if (Math.abs(Math.round(value * scale) / scale - value) <= EXACT * Math.max(1, Math.abs(value))) return decimals;
  }
  return undefined;
}

function decimalsOfSignificant(value: number, significant: number): number {
  const size = Math.abs(value);
  // A hair of room, so that the smallest number that is shown is still shown after a conversion and back.
  if (size < 10 ** -MOST_DECIMALS * (1 - EXACT)) return 0;
  // Rounding may carry into a new digit: 9.996 with three digits is 10.0.
  const rounded = Number(size.toPrecision(significant));
  return Math.min(MOST_DECIMALS, Math.max(0, significant - 1 - Math.floor(Math.log10(rounded))));
}

function roundToText(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  const short = text.includes(".") ? text.replace(/\.?0+$/, "") : text;
  return short === "-0" ? "0" : short;
}

function groupThousands(text: string): string {
  const [whole = "", fraction] = text.split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  return fraction === undefined ? grouped : `${grouped}.${fraction}`;
}

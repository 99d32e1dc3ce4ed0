/**
 * Tells at once what the desk would refuse later, so that nobody waits for an upload in vain.
 * @typedef {"fileHeic" | "fileLarge" | "fileType" | "fileEmpty"} FileProblem
 */

const HEIC_NAME = /\.(heic|heif|avif)$/i;
const HEIC_BRANDS = /^ftyp(heic|heix|hevc|hevx|heim|heis|mif1|msf1|avif|avis)/;
/** First bytes as letters: JPEG, PNG, WebP and PDF. The desk looks at the same ones, and closer. */
const KEPT = /^(\xff\xd8\xff|\x89PNG\r\n|RIFF[\s\S]{4}WEBP|%PDF-)/;

/**
 * @param {File} file
 * @param {number} most_bytes
 * @returns {Promise<FileProblem | undefined>}
 */
export async function problemOf(file, most_bytes) {
  if (file.size === 0) return "fileEmpty";
  const start = String.fromCharCode(...new Uint8Array(await file.slice(0, 16).arrayBuffer()));
  if (HEIC_BRANDS.test(start.slice(4)) || HEIC_NAME.test(file.name)) return "fileHeic";
  if (!KEPT.test(start)) return "fileType";
  return file.size > most_bytes ? "fileLarge" : undefined;
}

/** In steps of a thousand, as phones say it. @param {number} size_B */
export function saySize(size_B) {
  if (size_B < 1000) return `${size_B} B`;
  if (size_B < 999_500) return `${Math.round(size_B / 1000)} kB`;
  return `${(size_B / 1_000_000).toFixed(1)} MB`;
}

/** Words of the longest sentence of a text; a sentence ends with a stop, a colon or a semicolon followed by a space. */
export function longestSentence(text: string): number {
  const sentences = text.split(/[.:;?!] |[.?!]$/);
  return Math.max(
    ...sentences.map((sentence) => sentence.split(/\s+/).filter((word) => /[\p{L}\d]/u.test(word)).length),
  );
}

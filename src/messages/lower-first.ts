/** The same text to go on a sentence with; only its first letter changes, so that units and names stay as they are. */
export function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

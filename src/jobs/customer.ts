/** Longest nickname [characters]. */
const MOST_characters = 24;
const MOST_words = 2;

/**
 * Whether a text names a customer by no more than initials or a nickname, the only personal data that a job needs: at
 * most two short words, and nothing that one could call, write to or find a house with.
 */
export function isInitialsOrNickname(text: string): boolean {
  const trimmed = text.trim();
  const words = trimmed.split(/\s+/);
  return trimmed !== "" && trimmed.length <= MOST_characters && words.length <= MOST_words && !/[\d@/]/.test(trimmed);
}

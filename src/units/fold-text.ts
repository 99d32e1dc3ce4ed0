const PLAIN_ASCII = /^[\0-\x7f]*$/;
const MARKS = /\p{M}/gu;

/** Lower case without accents, character for character, so that a place in the result is the same place in the text. */
export function foldText(text: string): string {
  if (PLAIN_ASCII.test(text)) return text.toLowerCase();
  let folded = "";
  for (let at = 0; at < text.length; at++) folded += foldCharacter(text.charAt(at));
  return folded;
}

function foldCharacter(character: string): string {
  if (PLAIN_ASCII.test(character)) return character.toLowerCase();
  const folded = character.normalize("NFD").replace(MARKS, "").toLowerCase();
  return folded.length === 1 ? folded : character;
}

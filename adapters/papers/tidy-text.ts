/** Marks that turn the direction of text, join letters invisibly or pick a coloured form: on paper they only disturb. */
const UNSEEN = /\p{Cf}|\p{Variation_Selector}/gu;
const CONTROLS = /[^\P{Cc}\n]/gu;
const LONE_HALVES = /\p{Cs}/gu;

/** What somebody wrote, as it can be set in lines: line ends stay, everything that is not seen goes. */
export function tidyText(text: string): string {
  return text
    .replace(/\r\n?/g, "\n")
    .replace(/\t/g, " ")
    .replace(UNSEEN, "")
    .replace(CONTROLS, "")
    .replace(LONE_HALVES, "\uFFFD");
}

import { listAt, textAt } from "./payload.ts";

const AT_TAG = /<at\b[^<>]*>([^<]*)<\/at\s*>/gi;
/** Longest name that is looked for at the start of a message, with everything a phone may put into it. Our own choice. */
const MOST_NAME_CHARACTERS = 200;
const NAMED_ENTITIES: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
  nbsp: " ",
};
const LARGEST_CODE_POINT = 0x10ffff;

/** What a person typed, without the mention of the bot and with the marks of Teams turned back into characters. */
export function stripMention(activity: unknown): string {
  const text = textAt(activity, "text") ?? "";
  const names = botNames(activity);
  const withoutTags = text.replace(AT_TAG, (_, inner: string) =>
    names.has(squash(inner)) ? " " : decodeEntities(inner),
  );
  return dropLeadingName(decodeEntities(withoutTags), names)
    .replace(/[\u00A0\u202F]/g, " ")
    .trim();
}

/** The bot's own name as it stands in the activity and in its mentions, squashed for comparison. */
function botNames(activity: unknown): ReadonlySet<string> {
  const bot = textAt(activity, "recipient", "id");
  const mentions = listAt(activity, "entities").filter(
    (entity) => textAt(entity, "type") === "mention" && textAt(entity, "mentioned", "id") === bot,
  );
  const inTags = mentions.map((mention) => (textAt(mention, "text") ?? "").replace(/<[^>]*>/g, ""));
  const named = [
    textAt(activity, "recipient", "name"),
    ...mentions.map((mention) => textAt(mention, "mentioned", "name")),
  ];
  return new Set([...inTags, ...named].map((name) => squash(name ?? "")).filter((name) => name !== ""));
}

/** A name without its spaces, marks and capitals, because phones space and encode it in their own way. */
function squash(name: string): string {
  return decodeEntities(name)
    .replace(/[\s\u200B-\u200D\u2060\uFEFF@]/g, "")
    .toLowerCase();
}

/** Some phones send the mention as plain text: an at sign and the name. */
function dropLeadingName(text: string, names: ReadonlySet<string>): string {
  const [, typed] = /^\s*@(.*)$/s.exec(text) ?? [];
  if (typed === undefined) return text;
  for (let end = 1; end <= Math.min(typed.length, MOST_NAME_CHARACTERS); end++)
    if (names.has(squash(typed.slice(0, end))) && !/^[\p{L}\p{N}]/u.test(typed.slice(end))) return typed.slice(end);
  return text;
}

function decodeEntities(text: string): string {
  return text.replace(/&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|([a-z]{2,4}));/gi, (whole, hex, decimal, name) => {
    if (name !== undefined) return NAMED_ENTITIES[String(name).toLowerCase()] ?? whole;
    const code = hex === undefined ? Number(decimal) : Number.parseInt(hex, 16);
    return code <= LARGEST_CODE_POINT ? String.fromCodePoint(code) : whole;
  });
}

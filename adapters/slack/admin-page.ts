import { SLACK_EVENTS, SLACK_SCOPES } from "./manifest.ts";

/** Parts of the page for a workspace's admin that follow from the code, by the name of their place in the page. */
const PARTS: Readonly<Record<string, () => readonly string[]>> = {
  scopes: () =>
    table(
      ["scope", "why"],
      SLACK_SCOPES.map(({ scope, why }) => [code(scope), why]),
    ),
  events: () =>
    table(
      ["event", "allowed by", "what it means"],
      SLACK_EVENTS.map(({ event, scope, why }) => [code(event), scope === undefined ? "no scope" : code(scope), why]),
    ),
};

/** The page with those parts as the code has them now; they stand between comments such as `scopes` and `/scopes`. */
export function fillAdminPage(page: string): string {
  return Object.entries(PARTS).reduce((text, [name, write]) => {
    const [begin, end] = [`<!-- ${name} -->`, `<!-- /${name} -->`];
    const [from, to] = [text.indexOf(begin), text.indexOf(end)];
    if (from < 0 || to < from) throw new Error(`the admin page has no place for ${name}`);
    return `${text.slice(0, from + begin.length)}\n${write().join("\n")}\n${text.slice(to)}`;
  }, page);
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  return [head, head.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`);
}

function code(text: string): string {
  return `\`${text}\``;
}

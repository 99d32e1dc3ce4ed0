import { unescapeText } from "./slack-text.ts";

/** `<@U1>`, `<@U1|ann>`, `<#C1|general>`, `<!here>`, `<https://a.test|a>`: what Slack makes of what was typed. */
const REFERENCE = /<([^<>|]+)(?:\|([^<>]*))?>/g;
/** Somebody who copies an example may copy its quotes: `...`, *...*, _..._. */
const WRAPPED = /^([`*_])([\s\S]*)\1$/;

/**
 * What a person typed, from what Slack sends: its references as they look on the screen, entities undone, the mention
 * of the bot taken out.
 */
export function readTypedText(sent: string, botUser?: string): string {
  const text = sent.replace(REFERENCE, (_, target: string, label: string | undefined) =>
    target === `@${botUser}` ? " " : readReference(target, label),
  );
  const typed = unescapeText(text).trim();
  const [, , inside] = WRAPPED.exec(typed) ?? [];
  return (inside ?? typed).trim();
}

function readReference(target: string, label: string | undefined): string {
  const kind = target.charAt(0);
  if (kind === "@" || kind === "#") return kind + (label || target.slice(1));
  if (kind === "!") return label || `@${target.slice(1)}`;
  return label || target.replace(/^(mailto|tel):/, "");
}

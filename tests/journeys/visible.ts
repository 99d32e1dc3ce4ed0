/** Keys of Block Kit and Adaptive Cards under which something is said to people. */
const SAID = new Set(["text", "title", "label", "placeholder", "value", "alt_text", "altText"]);
/** Data that goes back with a press, and names of our own. */
const UNSEEN = new Set(["data", "action_id", "block_id", "type", "style", "id", "fallbackText", "speak", "value_id"]);

/** Every text of a message in the order in which it is seen; what can be pressed stands in brackets. */
export function visibleText(body: unknown): string {
  return textsIn(body, "")
    .map((text) => text.trim())
    .filter((text) => text !== "")
    .join("\n");
}

function textsIn(value: unknown, key: string): readonly string[] {
  if (typeof value === "string") return SAID.has(key) ? [value] : [];
  if (Array.isArray(value)) return value.flatMap((one) => textsIn(one, key));
  if (typeof value !== "object" || value === null) return [];
  if (!isPressed(value)) return inside(value);
  const { value: _, ...seen } = value as { readonly value?: unknown };
  return inside(seen).map((text) => `[${text}]`);
}

function inside(value: object): readonly string[] {
  return Object.entries(value).flatMap(([name, one]) => (UNSEEN.has(name) ? [] : textsIn(one, name)));
}

function isPressed(value: object): boolean {
  return "action_id" in value || ("type" in value && String(value.type).startsWith("Action."));
}

import type { Aim, Button } from "../../src/messages/card.ts";
import { LIMITS } from "./limits.ts";
import { isRecord, readString } from "./read-record.ts";

/** What comes back when a button is pressed. */
export interface Pressed {
  readonly say: string;
  readonly aim?: Aim;
}

/**
 * The value of a button: compact JSON, or nothing when Slack would refuse it as too long.
 * `&`, `<` and `>` are written as JSON escapes, because Slack hands values back with entities (slackapi/bolt-python
 * issue 513).
 */
export function writeButtonValue(button: Pick<Button, "say" | "aim">): string | undefined {
  const pressed: Pressed = { say: button.say, ...(button.aim && { aim: button.aim }) };
  const value = JSON.stringify(pressed).replace(/[&<>]/g, (mark) => `\\u00${mark.charCodeAt(0).toString(16)}`);
  return value.length <= LIMITS.buttonValue ? value : undefined;
}

/** Reads a value that was written above; nothing when it is not one of ours. */
export function readButtonValue(value: string | undefined): Pressed | undefined {
  const read = parseJson(value);
  const say = readString(read, "say");
  if (say === undefined) return undefined;
  const aim = isRecord(read) ? readAim(read["aim"]) : undefined;
  return { say, ...(aim && { aim }) };
}

/** The id of a list's block, or nothing when Slack would refuse it as too long. */
export function writeAim({ walk, fact }: Aim): string | undefined {
  const id = JSON.stringify({ walk, fact });
  return id.length <= LIMITS.blockId && !/[&<>]/.test(id) ? id : undefined;
}

/** What was chosen in a list of ours; nothing when it is no list of ours. */
export function readChosen(say: string | undefined, blockId: string | undefined): Pressed | undefined {
  const aim = readAim(parseJson(blockId));
  return say === undefined || aim === undefined ? undefined : { say, aim };
}

function readAim(read: unknown): Aim | undefined {
  const walk = readString(read, "walk");
  const fact = readString(read, "fact");
  return walk === undefined || fact === undefined ? undefined : { walk, fact };
}

/** Parsed JSON of unknown shape, or nothing. */
export function parseJson(text: string | undefined): unknown {
  if (text === undefined) return undefined;
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

import { z } from "zod";
import { type DoorSettings, type Environment, faultsOf, port, portTaken, text } from "./settings-values.ts";

export interface SlackDoorSettings {
  readonly signingSecret: string;
  readonly botToken: string;
  readonly host: string;
  readonly port: number;
  /** The team that is the company itself; any other gets a workspace of its own. */
  readonly ownTeam?: string;
}

const SECRET_ADVICE = "copy the Signing Secret from Basic Information of the Slack app, 32 letters and digits";
const TOKEN_ADVICE = "copy the Bot User OAuth Token from OAuth & Permissions of the Slack app; it begins with xoxb-";
const TEAM_ADVICE = "write the id of a Slack workspace, which begins with T or E, such as T0123ABCD";

const slack = z.object({
  SLACK_SIGNING_SECRET: z.string({ error: SECRET_ADVICE }).regex(/^[0-9A-Za-z]{16,}$/, SECRET_ADVICE),
  SLACK_BOT_TOKEN: z.string({ error: TOKEN_ADVICE }).regex(/^xoxb-[0-9A-Za-z-]+$/, TOKEN_ADVICE),
  SLACK_TEAM_ID: z
    .string()
    .regex(/^[TE][0-9A-Z]{2,}$/, TEAM_ADVICE)
    .optional(),
  SLACK_HOST: text("the address to listen on", "127.0.0.1").prefault("127.0.0.1"),
  SLACK_PORT: port(4601).prefault("4601"),
});

export const SLACK_NAMES: readonly string[] = Object.keys(slack.shape);

/** Reads the settings of the Slack door; `taken` are the ports of the other doors. */
export function readSlackSettings(filled: Environment, taken: readonly number[]): DoorSettings<SlackDoorSettings> {
  if (filled["SLACK_SIGNING_SECRET"] === undefined && filled["SLACK_BOT_TOKEN"] === undefined)
    return {
      kind: "unset",
      because: "set SLACK_SIGNING_SECRET and SLACK_BOT_TOKEN to open it (.env.example says how)",
    };
  const read = slack.safeParse(filled);
  if (!read.success) return { kind: "faulty", because: faultsOf(read.error, filled) };
  const because = portTaken("SLACK_PORT", read.data.SLACK_PORT, taken);
  if (because.length > 0) return { kind: "faulty", because };
  const ownTeam = read.data.SLACK_TEAM_ID;
  return {
    kind: "ready",
    settings: {
      signingSecret: read.data.SLACK_SIGNING_SECRET,
      botToken: read.data.SLACK_BOT_TOKEN,
      host: read.data.SLACK_HOST,
      port: read.data.SLACK_PORT,
      ...(ownTeam !== undefined && { ownTeam }),
    },
  };
}

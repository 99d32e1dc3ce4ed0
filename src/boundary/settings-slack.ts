import { z } from "zod";
import { type DoorSettings, type Environment, faultsOf, port, portTaken, text } from "./settings-values.ts";

export interface SlackDoorSettings {
  /** Proves that a request comes from Slack; needed unless Slack is listened to over a socket. */
  readonly signingSecret?: string;
  /** Given where Slack is listened to over a socket that this program opens. */
  readonly appToken?: string;
  /** Of the one workspace that has the app; the other way is `oauth`. */
  readonly botToken?: string;
  /** Given where any workspace may install the app. */
  readonly oauth?: SlackOAuth;
  readonly host: string;
  readonly port: number;
  /** The team that is the company itself; any other gets a workspace of its own. */
  readonly ownTeam?: string;
}
export interface SlackOAuth {
  readonly clientId: string;
  readonly clientSecret: string;
  /** 32 bytes each: the first seals the tokens of the workspaces, the others may still open them. */
  readonly secretKeys: readonly Uint8Array[];
}

const SECRET_ADVICE = "copy the Signing Secret from Basic Information of the Slack app, 32 letters and digits";
const TOKEN_ADVICE = "copy the Bot User OAuth Token from OAuth & Permissions of the Slack app; it begins with xoxb-";
const TEAM_ADVICE = "write the id of a Slack workspace, which begins with T or E, such as T0123ABCD";
const APP_TOKEN_ADVICE =
  "make an app-level token with the scope connections:write under Basic Information of the Slack app; " +
  "it begins with xapp-";
const CLIENT_ADVICE = "copy the Client ID from Basic Information of the Slack app, such as 123456789.123456789";
const CLIENT_SECRET_ADVICE = "copy the Client Secret from Basic Information of the Slack app, 32 letters and digits";
const KEY_ADVICE =
  "write 32 random bytes as base64 or hex, such as what openssl rand -base64 32 prints, and keep a copy in a safe place";
const OLD_KEYS_ADVICE = "write earlier values of OLDHAND_SECRET_KEY with commas between them";

const HEX_KEY = /^[0-9a-f]{64}$/i;
const BASE64_KEY = /^[0-9A-Za-z+/_-]{43}=?$/;
/** 32 bytes as base64, with either alphabet, or as hex. */
const key = (advice: string) =>
  z
    .string({ error: advice })
    .refine((typed) => HEX_KEY.test(typed) || BASE64_KEY.test(typed), advice)
    .transform((typed): Uint8Array => Buffer.from(typed, HEX_KEY.test(typed) ? "hex" : "base64"));

const slack = z.object({
  SLACK_SIGNING_SECRET: z
    .string()
    .regex(/^[0-9A-Za-z]{16,}$/, SECRET_ADVICE)
    .optional(),
  SLACK_BOT_TOKEN: z
    .string()
    .regex(/^xoxb-[0-9A-Za-z-]+$/, TOKEN_ADVICE)
    .optional(),
  SLACK_CLIENT_ID: z
    .string()
    .regex(/^\d+\.\d+$/, CLIENT_ADVICE)
    .optional(),
  SLACK_CLIENT_SECRET: z
    .string()
    .regex(/^[0-9A-Za-z]{16,}$/, CLIENT_SECRET_ADVICE)
    .optional(),
  SLACK_APP_TOKEN: z
    .string()
    .regex(/^xapp-[0-9A-Za-z-]+$/, APP_TOKEN_ADVICE)
    .optional(),
  OLDHAND_SECRET_KEY: key(KEY_ADVICE).optional(),
  OLDHAND_OLD_SECRET_KEYS: z
    .string()
    .transform((typed) => typed.split(/[\s,]+/).filter((word) => word !== ""))
    .pipe(z.array(key(OLD_KEYS_ADVICE)))
    .optional(),
  SLACK_TEAM_ID: z
    .string()
    .regex(/^[TE][0-9A-Z]{2,}$/, TEAM_ADVICE)
    .optional(),
  SLACK_HOST: text("the address to listen on", "127.0.0.1").prefault("127.0.0.1"),
  SLACK_PORT: port(4601).prefault("4601"),
});
type Values = z.infer<typeof slack>;

export const SLACK_NAMES: readonly string[] = Object.keys(slack.shape);
/** Any of these says that somebody wants the door open. */
const WANTED = ["SLACK_SIGNING_SECRET", "SLACK_BOT_TOKEN", "SLACK_CLIENT_ID", "SLACK_CLIENT_SECRET", "SLACK_APP_TOKEN"];

/** Reads the settings of the Slack door; `taken` are the ports of the other doors. */
export function readSlackSettings(filled: Environment, taken: readonly number[]): DoorSettings<SlackDoorSettings> {
  if (WANTED.every((name) => filled[name] === undefined))
    return {
      kind: "unset",
      because: "set SLACK_SIGNING_SECRET and SLACK_BOT_TOKEN to open it (.env.example says how)",
    };
  const read = slack.safeParse(filled);
  if (!read.success) return { kind: "faulty", because: faultsOf(read.error, filled) };
  const because = [...missing(read.data), ...portTaken("SLACK_PORT", read.data.SLACK_PORT, taken)];
  if (because.length > 0) return { kind: "faulty", because };
  return { kind: "ready", settings: shape(read.data) };
}

/** One way to listen, and one way to the tokens. */
function missing(values: Values): readonly string[] {
  const { SLACK_BOT_TOKEN: botToken, SLACK_CLIENT_ID: clientId, SLACK_CLIENT_SECRET: clientSecret } = values;
  const isForMany = clientId !== undefined || clientSecret !== undefined;
  const lines: string[] = [];
  if (values.SLACK_SIGNING_SECRET === undefined && values.SLACK_APP_TOKEN === undefined)
    lines.push(`SLACK_SIGNING_SECRET is not set: ${SECRET_ADVICE}; or set SLACK_APP_TOKEN to listen over a socket.`);
  if (botToken === undefined && !isForMany)
    lines.push(
      `SLACK_BOT_TOKEN is not set: ${TOKEN_ADVICE}. ` +
        "For several workspaces, set SLACK_CLIENT_ID and SLACK_CLIENT_SECRET instead.",
    );
  if (botToken !== undefined && isForMany)
    lines.push(
      "SLACK_BOT_TOKEN and SLACK_CLIENT_ID are two ways to the same thing: keep the bot token for one workspace, " +
        "or SLACK_CLIENT_ID and SLACK_CLIENT_SECRET for several.",
    );
  if (isForMany && clientId === undefined) lines.push(`SLACK_CLIENT_ID is not set: ${CLIENT_ADVICE}.`);
  if (isForMany && clientSecret === undefined) lines.push(`SLACK_CLIENT_SECRET is not set: ${CLIENT_SECRET_ADVICE}.`);
  if (isForMany && values.OLDHAND_SECRET_KEY === undefined)
    lines.push(`OLDHAND_SECRET_KEY is not set: the tokens of the workspaces are sealed with it; ${KEY_ADVICE}.`);
  return lines;
}

function shape(values: Values): SlackDoorSettings {
  const { SLACK_SIGNING_SECRET: signingSecret, SLACK_APP_TOKEN: appToken, SLACK_BOT_TOKEN: botToken } = values;
  const { SLACK_CLIENT_ID: clientId, SLACK_CLIENT_SECRET: clientSecret, SLACK_TEAM_ID: ownTeam } = values;
  const { OLDHAND_SECRET_KEY: secretKey, OLDHAND_OLD_SECRET_KEYS: oldKeys = [] } = values;
  const isForMany = clientId !== undefined && clientSecret !== undefined && secretKey !== undefined;
  return {
    ...(signingSecret !== undefined && { signingSecret }),
    ...(appToken !== undefined && { appToken }),
    ...(botToken !== undefined && { botToken }),
    ...(isForMany && { oauth: { clientId, clientSecret, secretKeys: [secretKey, ...oldKeys] } }),
    host: values.SLACK_HOST,
    port: values.SLACK_PORT,
    ...(ownTeam !== undefined && { ownTeam }),
  };
}

import { z } from "zod";
import { readSlackSettings, SLACK_NAMES, type SlackDoorSettings } from "./settings-slack.ts";
import { readTeamsSettings, TEAMS_NAMES, type TeamsDoorSettings } from "./settings-teams.ts";
import { type DoorSettings, type Environment, faultsOf, onlyFilled, port, text } from "./settings-values.ts";

const LOG_LEVELS = ["silent", "error", "warn", "info", "debug"] as const;
export type LogLevel = (typeof LOG_LEVELS)[number];

/** Everything that can be set from outside, checked. A door that cannot open says why and stops nobody else. */
export interface Settings {
  /** Folder of the database. */
  readonly dataFolder: string;
  /** Folder of the company's books. */
  readonly companyFolder: string;
  readonly web: { readonly host: string; readonly port: number };
  readonly logLevel: LogLevel;
  readonly slack: DoorSettings<SlackDoorSettings>;
  readonly teams: DoorSettings<TeamsDoorSettings>;
}
export type SettingsRead =
  | { readonly ok: true; readonly settings: Settings; readonly warnings: readonly string[] }
  | { readonly ok: false; readonly faults: readonly string[] };

const LOOPBACK = ["127.0.0.1", "::1", "localhost"] as const;

const house = z.object({
  OLDHAND_DATA: text("the name of a folder", "data").prefault("data"),
  OLDHAND_COMPANY: text("the folder of the company's books", "seeds").prefault("seeds"),
  OLDHAND_PORT: port(4600).prefault("4600"),
  OLDHAND_HOST: z
    .enum(LOOPBACK, {
      error: `write ${LOOPBACK.join(" or ")}; the web chat has no sign-in, so it opens on this machine only`,
    })
    .prefault("127.0.0.1"),
  OLDHAND_LOG: z.enum(LOG_LEVELS, { error: `write one of ${LOG_LEVELS.join(", ")}` }).prefault("warn"),
});

/** Every setting by its name in the environment. */
export const SETTING_NAMES: readonly string[] = [...Object.keys(house.shape), ...SLACK_NAMES, ...TEAMS_NAMES];

/** Reads the settings from the environment: all faults at once, each one line, and never the value of a secret. */
export function readSettings(environment: Environment): SettingsRead {
  const filled = onlyFilled(environment);
  const read = house.safeParse(filled);
  if (!read.success) return { ok: false, faults: faultsOf(read.error, filled) };
  const { OLDHAND_HOST: host, OLDHAND_PORT: webPort } = read.data;
  const slack = readSlackSettings(filled, [webPort]);
  const slackPort = slack.kind === "ready" ? [slack.settings.port] : [];
  const teams = readTeamsSettings(filled, [webPort, ...slackPort]);
  const settings: Settings = {
    dataFolder: read.data.OLDHAND_DATA,
    companyFolder: read.data.OLDHAND_COMPANY,
    web: { host, port: webPort },
    logLevel: read.data.OLDHAND_LOG,
    slack,
    teams,
  };
  const warnings = [...nameStrangers(filled), ...(teams.kind === "ready" ? teams.settings.warnings : [])];
  return { ok: true, settings, warnings };
}

/** A setting of ours that does not exist is most likely a slip of the keyboard. */
function nameStrangers(filled: Environment): readonly string[] {
  const strangers = Object.keys(filled).filter((name) => /^(OLDHAND|SLACK|TEAMS)_/.test(name));
  return strangers
    .filter((name) => !SETTING_NAMES.includes(name) && name !== TEST_ONLY)
    .map((name) => `${name} is not a setting of Oldhand and does nothing. .env.example lists all of them.`);
}
/** Read by the tests alone. */
const TEST_ONLY = "OLDHAND_REQUIRE_BROWSER";

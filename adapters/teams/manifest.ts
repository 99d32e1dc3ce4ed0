import { cutText } from "./plain-text.ts";

/**
 * The app manifest that an administrator uploads to Teams.
 * @source Microsoft Teams app manifest schema, version 1.19: lengths of names, descriptions and commands, ten commands
 * in a list
 */
const MANIFEST_VERSION = "1.19";
const MOST_PUBLISHER_CHARACTERS = 32;
const MOST_COMMANDS = 10;
const MOST_COMMAND_TITLE_CHARACTERS = 32;
const MOST_COMMAND_DESCRIPTION_CHARACTERS = 128;
export const COLOR_ICON = "color.png";
export const OUTLINE_ICON = "outline.png";
const SCOPES = ["personal", "team", "groupChat"] as const;

export interface TeamsManifestSettings {
  readonly appId: string;
  /** Version of the package, like 1.2.3; a higher one replaces the installed app. */
  readonly version: string;
  /** The contractor that runs this Oldhand; Teams shows it as the publisher. */
  readonly publisher: {
    readonly name: string;
    readonly websiteUrl: string;
    readonly privacyUrl: string;
    readonly termsOfUseUrl: string;
  };
  /** What is offered while somebody types, most wanted first; ten are taken. */
  readonly commands: readonly { readonly title: string; readonly description: string }[];
}

export interface TeamsManifest {
  readonly $schema: string;
  readonly manifestVersion: string;
  readonly version: string;
  readonly id: string;
  readonly developer: TeamsManifestSettings["publisher"];
  readonly name: { readonly short: string; readonly full: string };
  readonly description: { readonly short: string; readonly full: string };
  readonly icons: { readonly color: string; readonly outline: string };
  readonly accentColor: string;
  readonly bots: readonly object[];
  readonly validDomains: readonly string[];
}

/** Builds the manifest; Oldhand asks for no permission beyond reading what is said to it and answering. */
export function buildTeamsManifest(settings: TeamsManifestSettings): TeamsManifest {
  const { appId, version, publisher, commands } = settings;
  const offered = commands.slice(0, MOST_COMMANDS).map(({ title, description }) => ({
    title: cutText(title, MOST_COMMAND_TITLE_CHARACTERS),
    description: cutText(description, MOST_COMMAND_DESCRIPTION_CHARACTERS),
  }));
  return {
    $schema: `https://developer.microsoft.com/json-schemas/teams/v${MANIFEST_VERSION}/MicrosoftTeams.schema.json`,
    manifestVersion: MANIFEST_VERSION,
    version,
    id: appId,
    developer: { ...publisher, name: cutText(publisher.name, MOST_PUBLISHER_CHARACTERS) },
    name: { short: "Oldhand", full: "Oldhand, the experienced hand for heat-pump water heaters" },
    description: {
      short: "Computed answers for crews that put in heat-pump water heaters",
      full: "Ask a short question on the job site, such as “expansion 80 gal cold 50F hot 140F 60 psi”, and get a computed answer with its sources, or be asked for what is missing. Oldhand never decides: local code, the authority having jurisdiction and licensed people do.",
    },
    icons: { color: COLOR_ICON, outline: OUTLINE_ICON },
    accentColor: "#1F4E5F",
    bots: [
      {
        botId: appId,
        scopes: SCOPES,
        // Files come and go in the personal scope alone; that is all that Teams offers a bot.
        supportsFiles: true,
        isNotificationOnly: false,
        ...(offered.length > 0 && { commandLists: [{ scopes: SCOPES, commands: offered }] }),
      },
    ],
    validDomains: [],
  };
}

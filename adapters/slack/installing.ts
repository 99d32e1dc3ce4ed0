import { hkdfSync } from "node:crypto";
import { HTTPReceiver, type HTTPReceiverOptions, type Installation as SlackInstallation } from "@slack/bolt";
import type { Installation, Installations } from "../../src/ports/installations.ts";
import { type DoorLog, toBoltLogger } from "./door-log.ts";
import { type InstallEnd, sendInstallPage } from "./install-page.ts";
import { SLACK_SCOPES } from "./manifest.ts";
import type { SlackOAuth } from "./settings.ts";
import { slackFetch } from "./slack-fetch.ts";
import { INSTALL_PATH, REDIRECT_PATH } from "./slack-server.ts";
import { revokeToken } from "./token-calls.ts";

export interface InstallingSettings {
  readonly oauth: SlackOAuth;
  readonly installations: Installations;
  readonly log: DoorLog;
  /** Longest wait for an answer of Slack [ms] */
  readonly call_ms: number;
  readonly apiUrl?: string;
}

/** From the click on "install" to the page that ends it [s]. */
const STATE_LIFE_s = 600;
/** What the library says when the page was opened too late, or by somebody else than it was started by. */
const STATE_FAULTS = new Set(["slack_oauth_invalid_state", "slack_oauth_missing_state", "slack_oauth_missing_code"]);
const SAID_NO = "slack_oauth_installer_authorization_error";

/**
 * The two pages by which an organisation installs the app. They have a receiver of their own: Bolt lets no app that
 * finds its tokens by itself have them on its receiver.
 */
export function createInstallPages(settings: InstallingSettings): HTTPReceiver["requestListener"] {
  const pages = new HTTPReceiver({
    ...installOptions(settings),
    signingSecret: "",
    signatureVerification: false,
    endpoints: [],
    logger: toBoltLogger(settings.log),
  });
  return pages.requestListener;
}

/** A state bound to the browser, and a store for what the organisation gives. */
function installOptions(settings: InstallingSettings): Partial<HTTPReceiverOptions> {
  const { oauth, installations, log, call_ms, apiUrl } = settings;
  const refuse = async (installation: SlackInstallation): Promise<InstallEnd> => {
    if (installation.bot !== undefined) await revokeToken(installation.bot.token, call_ms, apiUrl);
    return installation.isEnterpriseInstall ? "organisation" : "failed";
  };
  return {
    clientId: oauth.clientId,
    clientSecret: oauth.clientSecret,
    stateSecret: stateSecretOf(oauth),
    scopes: SLACK_SCOPES.map(({ scope }) => scope),
    installationStore: {
      storeInstallation: async (given) => {
        const installation = toInstallation(given, Date.now());
        if (installation === undefined) throw new Error("an installation without a workspace or a bot");
        await installations.save(installation);
        log.info({ team: installation.team }, "the app was installed");
      },
      // Tokens are found by `TeamTokens` alone.
      fetchInstallation: async () => {
        throw new Error("not asked here");
      },
    },
    installerOptions: {
      // Slack's own page shows what is asked for; one of ours before it would only be one more click.
      directInstall: true,
      installPath: INSTALL_PATH,
      redirectUriPath: REDIRECT_PATH,
      stateCookieExpirationSeconds: STATE_LIFE_s,
      clientOptions: {
        fetch: slackFetch(call_ms),
        timeout: call_ms,
        // A code is good for one exchange: a second try would be refused in any case.
        retryConfig: { retries: 0 },
        allowAbsoluteUrls: false,
        ...(apiUrl !== undefined && { slackApiUrl: apiUrl }),
      },
      callbackOptions: {
        afterInstallation: async (given, _, request, response) => {
          if (toInstallation(given, 0) !== undefined) return true;
          sendInstallPage(await refuse(given), request, response);
          return false;
        },
        success: (_, __, request, response) => sendInstallPage("installed", request, response),
        failure: (error, _, request, response) => sendInstallPage(endOf(error.code), request, response),
      },
    },
  };
}

/** Nothing where a whole organisation or no bot was installed. */
function toInstallation(given: SlackInstallation, installed_ms: number): Installation | undefined {
  const { team, bot, user, isEnterpriseInstall } = given;
  if (team === undefined || bot === undefined || isEnterpriseInstall === true) return undefined;
  return {
    team: team.id,
    name: team.name ?? team.id,
    botUser: bot.userId,
    scopes: bot.scopes,
    installedBy: user.id,
    installed_ms,
    access: {
      token: bot.token,
      ...(bot.refreshToken !== undefined && { refreshToken: bot.refreshToken }),
      ...(bot.expiresAt !== undefined && { expires_ms: bot.expiresAt * 1000 }),
    },
  };
}

function endOf(code: string): InstallEnd {
  if (code === SAID_NO) return "cancelled";
  return STATE_FAULTS.has(code) ? "expired" : "failed";
}

/** Signs the state; made from the key, so that there is one secret less to set. */
function stateSecretOf({ secretKeys: [key] }: SlackOAuth): string {
  if (key === undefined) throw new Error("there is no key to sign with");
  return Buffer.from(hkdfSync("sha256", key, "", "oldhand slack install state", 32)).toString("base64url");
}

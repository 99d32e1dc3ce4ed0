import type { KeptInstallation } from "../../src/ports/installations.ts";
import { createRenewals, type RenewalSettings } from "./renewals.ts";
import type { SlackFetch } from "./slack-fetch.ts";

/** The bot token of each organisation that has installed the app. */
export interface TeamTokens {
  /** Never calls Slack, so that nobody's acknowledgement waits for it. @returns nothing where it is not installed */
  find(team: string | undefined): Promise<string | undefined>;
  /** The token to use in the place of one that was found: another when that one has expired meanwhile. */
  fresh(token: string): Promise<string>;
  /** For posts, which may wait. @returns nothing where it is not installed */
  ofWorkspace(workspace: string): Promise<string | undefined>;
  /** Waits until no renewal is under way: one that is not written down would be lost. */
  settled(): Promise<void>;
}
/** Tokens about to expire that are kept in mind, so that calls which still hold them get the next one. */
const MOST_KEPT = 1_000;

/** The token of an app that is installed in one organisation, from the settings. It does not expire. */
export function oneTeam(botToken: string): TeamTokens {
  const given = async () => botToken;
  return { find: given, ofWorkspace: given, fresh: async (token) => token, settled: async () => {} };
}

/** The tokens of the organisations that have installed the app, each renewed in time. */
export function createTeamTokens(settings: RenewalSettings): TeamTokens {
  const { installations } = settings;
  const renewals = createRenewals(settings);
  const expiring = new Map<string, string>();
  const remember = ({ team, access }: KeptInstallation): void => {
    if (!renewals.isDue(access)) return;
    expiring.set(access.token, team);
    const [oldest] = expiring.keys();
    if (expiring.size > MOST_KEPT && oldest !== undefined) expiring.delete(oldest);
  };
  /** The token as it is, or as it is after the renewal when it is good for nothing any more. */
  const usable = async (kept: KeptInstallation): Promise<string | undefined> => {
    const renewal = renewals.inTime(kept);
    if (!renewals.hasExpired(kept.access)) return kept.access.token;
    await renewal;
    return (await installations.find(kept.team))?.access.token;
  };

  return {
    async find(team) {
      const kept = team === undefined ? undefined : await installations.find(team);
      if (kept === undefined) return undefined;
      remember(kept);
      renewals.inTime(kept);
      return kept.access.token;
    },
    async fresh(token) {
      const team = expiring.get(token);
      const kept = team === undefined ? undefined : await installations.find(team);
      return (kept && (await usable(kept))) ?? token;
    },
    async ofWorkspace(workspace) {
      const kept = await installations.findOf(workspace);
      return kept && (await usable(kept));
    },
    settled: renewals.settled,
  };
}

const BEARER = "Bearer ";

/** The same way out, with the token of each call looked at once more before it goes. */
export function withFreshTokens(fetchFn: SlackFetch, fresh: TeamTokens["fresh"]): SlackFetch {
  return async (url, init) => {
    const [name, given] = Object.entries(init?.headers ?? {}).find(([key]) => /^authorization$/i.test(key)) ?? [];
    if (name === undefined || !given?.startsWith(BEARER)) return await fetchFn(url, init);
    const token = await fresh(given.slice(BEARER.length));
    return await fetchFn(url, { ...init, headers: { ...init?.headers, [name]: BEARER + token } });
  };
}

import type { Access, Installations, KeptInstallation } from "../../src/ports/installations.ts";
import type { DoorLog } from "./door-log.ts";
import type { RenewAccess } from "./token-calls.ts";

export interface RenewalSettings {
  readonly installations: Installations;
  readonly renew: RenewAccess;
  /** Time of day [ms] */
  readonly now_ms: () => number;
  readonly log: Pick<DoorLog, "error">;
}
export interface Renewals {
  /** Starts a renewal where one is due, or joins the one that is under way. Never throws: what fails is logged. */
  inTime(kept: KeptInstallation): Promise<void>;
  /** True when a renewal is due, which is some time before the token expires. */
  isDue(access: Access): boolean;
  hasExpired(access: Access): boolean;
  /** Waits until no renewal is under way: one that is not written down would be lost. */
  settled(): Promise<void>;
}

/** Tokens live 12 hours; one is renewed when this much of that is left, the same as Slack's own libraries do [ms]. */
const RENEW_BEFORE_ms = 2 * 3_600_000;
/** Next try after a renewal that failed [ms]. */
const RETRY_AFTER_ms = 60_000;

/** Renews tokens, each by one call at a time: a refresh token that is used twice is refused. */
export function createRenewals({ installations, renew, now_ms, log }: RenewalSettings): Renewals {
  const going = new Map<string, Promise<void>>();
  const pausedUntil = new Map<string, number>();
  /** What Slack has given and the store has not taken yet: the one before it is good for nothing any more. */
  const unwritten = new Map<string, { readonly version: number; readonly access: Access }>();
  const expiresWithin = ({ expires_ms }: Access, ahead_ms: number) =>
    expires_ms !== undefined && expires_ms - now_ms() <= ahead_ms;
  const isDue = (access: Access) => access.refreshToken !== undefined && expiresWithin(access, RENEW_BEFORE_ms);

  const renewOnce = async (kept: KeptInstallation, refreshToken: string): Promise<void> => {
    const { team, version } = kept;
    try {
      const given = unwritten.get(team);
      const access = given?.version === version ? given.access : await renew(refreshToken);
      unwritten.set(team, { version, access });
      // Where it is not written, the organisation has installed anew or left meanwhile, and that counts.
      await installations.renew(kept, access);
      unwritten.delete(team);
    } catch (error) {
      const now = await installations.find(team).catch(() => undefined);
      if (now !== undefined && now.version !== version) return;
      pausedUntil.set(team, now_ms() + RETRY_AFTER_ms);
      log.error({ error, team }, "a Slack token could not be renewed; if this goes on, install the app there anew");
    }
  };

  return {
    isDue,
    hasExpired: (access) => expiresWithin(access, 0),
    inTime(kept) {
      const { team, access } = kept;
      const isPaused = (pausedUntil.get(team) ?? 0) > now_ms();
      const under = going.get(team);
      if (under !== undefined) return under;
      if (access.refreshToken === undefined || !isDue(access) || isPaused) return Promise.resolve();
      const work = renewOnce(kept, access.refreshToken).finally(() => going.delete(team));
      going.set(team, work);
      return work;
    },
    async settled() {
      while (going.size > 0) await Promise.all(going.values());
    },
  };
}

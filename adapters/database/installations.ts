import type { Kysely, Selectable } from "kysely";
import type { Access, Installations, KeptInstallation } from "../../src/ports/installations.ts";
import { DatabaseFault } from "./database-fault.ts";
import type { SecretBox } from "./secret-box.ts";
import type { Tables } from "./tables.ts";

export interface InstallationParts {
  readonly db: Kysely<Tables>;
  readonly box: SecretBox;
  /** Opens the workspace of a team. */
  readonly openWorkspace: (team: string) => Promise<string>;
  /** The teams of a workspace. */
  readonly teamsOf: (workspace: string) => Promise<readonly string[]>;
}
type Row = Selectable<Tables["slack_installation"]>;
type Field = "token" | "refresh_token";

/** The organisations that let Oldhand in. They stand beside the workspaces: which of these they have is told apart. */
export function createInstallations({ db, box, openWorkspace, teamsOf }: InstallationParts): Installations {
  const find = async (team: string): Promise<KeptInstallation | undefined> => {
    const row = await db.selectFrom("slack_installation").selectAll().where("team", "=", team).executeTakeFirst();
    return row && unseal(row, box);
  };
  return {
    find,
    findOf: async (workspace) => {
      for (const team of await teamsOf(workspace)) {
        const found = await find(team);
        if (found !== undefined) return found;
      }
      return undefined;
    },
    save: async ({ team, name, botUser, scopes, installedBy, installed_ms, access }) => {
      await openWorkspace(team);
      const row = {
        name,
        bot_user: botUser,
        scopes: scopes.join(" "),
        installed_by: installedBy,
        installed_ms,
        ...seal(team, access, box),
      };
      await db
        .insertInto("slack_installation")
        .values({ team, ...row, version: 1 })
        .onConflict((conflict) =>
          conflict
            .column("team")
            .doUpdateSet((set) => ({ ...row, version: set("slack_installation.version", "+", 1) })),
        )
        .execute();
    },
    renew: async ({ team, version }, access) => {
      const renewed = await db
        .updateTable("slack_installation")
        .set({ ...seal(team, access, box), version: version + 1 })
        .where("team", "=", team)
        .where("version", "=", version)
        .executeTakeFirst();
      return renewed.numUpdatedRows === 1n;
    },
    remove: async (team, said_ms) => {
      const removed = await db
        .deleteFrom("slack_installation")
        .where("team", "=", team)
        .where("installed_ms", "<=", said_ms)
        .executeTakeFirst();
      return removed.numDeletedRows === 1n;
    },
  };
}

/** Seals anew what was sealed with an old key, so that the old key can be thrown away. */
export async function resealInstallations(db: Kysely<Tables>, box: SecretBox): Promise<void> {
  const rows = await db.selectFrom("slack_installation").select(["team", "token", "version"]).execute();
  for (const { team, token, version } of rows) {
    if (box.open(token, placeOf(team, "token"))?.isOldKey !== true) continue;
    const row = await db.selectFrom("slack_installation").selectAll().where("team", "=", team).executeTakeFirst();
    if (row === undefined) continue;
    await db
      .updateTable("slack_installation")
      .set({ ...seal(team, unseal(row, box).access, box), version: version + 1 })
      .where("team", "=", team)
      .where("version", "=", version)
      .execute();
  }
}

function unseal(row: Row, box: SecretBox): KeptInstallation {
  const { team, name, scopes, expires_ms, version } = row;
  const read = (field: Field, sealed: string): string => {
    const opened = box.open(sealed, placeOf(team, field));
    if (opened !== undefined) return opened.text;
    const advice = "Put the key it was sealed with into OLDHAND_OLD_SECRET_KEYS, or install Oldhand there once more.";
    throw new DatabaseFault("sealed_token", `The token of Slack workspace ${team} cannot be opened. ${advice}`);
  };
  const access: Access = {
    token: read("token", row.token),
    ...(row.refresh_token !== null && { refreshToken: read("refresh_token", row.refresh_token) }),
    ...(expires_ms !== null && { expires_ms }),
  };
  return {
    team,
    name,
    botUser: row.bot_user,
    scopes: scopes.split(" ").filter((scope) => scope !== ""),
    installedBy: row.installed_by,
    installed_ms: row.installed_ms,
    access,
    version,
  };
}

function seal(team: string, { token, refreshToken, expires_ms }: Access, box: SecretBox) {
  return {
    token: box.seal(token, placeOf(team, "token")),
    refresh_token: refreshToken === undefined ? null : box.seal(refreshToken, placeOf(team, "refresh_token")),
    expires_ms: expires_ms ?? null,
  };
}

/** A token opens in its own row and field only: one that is copied into another row is worth nothing there. */
function placeOf(team: string, field: Field): readonly string[] {
  return ["slack_installation", team, field];
}

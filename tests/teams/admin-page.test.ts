import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { buildTeamsManifest } from "../../adapters/teams/manifest.ts";
import { SETTING_NAMES } from "../../src/boundary/settings.ts";
import { APP_ID } from "./fake-platform.ts";

const page = readFileSync(new URL("../../adapters/teams/ADMIN.md", import.meta.url), "utf8");
const websiteUrl = "https://plumbing.invalid";
const manifest = buildTeamsManifest({
  appId: APP_ID,
  version: "1.0.0",
  publisher: { name: "Invented", websiteUrl, privacyUrl: websiteUrl, termsOfUseUrl: websiteUrl },
  commands: [],
});
const [bot = {}] = manifest.bots;
/** The rows of the table under this heading, by their first cell. */
function tableUnder(heading: string): ReadonlyMap<string, string> {
  const section = page.split(`## ${heading}`)[1]?.split("\n## ")[0] ?? "";
  const rows = [...section.matchAll(/^\| (.+?) \| (.+?) \|$/gm)].map(([, name = "", why = ""]) => [name, why] as const);
  return new Map(rows.slice(2));
}
const asked = tableUnder("What the app asks for, and why");

describe("the page for administrators", () => {
  test("gives a reason for every scope of the manifest, and names no other", () => {
    const scopes = [...asked.keys()].flatMap((name) => /^scope `(\w+)`$/.exec(name)?.[1] ?? []);
    expect([...scopes].sort()).toEqual([...Reflect.get(bot, "scopes")].sort());
    for (const [name, why] of asked) expect([name, why.length > 20]).toEqual([name, true]);
  });

  test("says of files, domains and permissions what the manifest says", () => {
    expect([asked.has("`supportsFiles`"), Reflect.get(bot, "supportsFiles")]).toEqual([true, true]);
    expect([asked.has("`validDomains`: none"), manifest.validDomains]).toEqual([true, []]);
    expect([asked.has("`permissions`: none"), "permissions" in manifest, "authorization" in manifest]).toEqual([
      true,
      false,
      false,
    ]);
  });

  test("names only settings that exist, and every one that has to do with identity", () => {
    const named = new Set(page.match(/\b(?:TEAMS|OLDHAND)_[A-Z_]+[A-Z]\b/g));
    expect([...named].filter((name) => !SETTING_NAMES.includes(name))).toEqual([]);
    const identity = SETTING_NAMES.filter((name) => /^TEAMS_(APP|TENANT|CERTIFICATE)_/.test(name));
    expect(identity.filter((name) => !named.has(name))).toEqual([]);
  });

  test("says how long everything is kept that is kept of a conversation", () => {
    const kept = [...tableUnder("What is kept, where, and for how long").keys()].join(" ");
    const tables = readFileSync(new URL("../../adapters/database/tables.ts", import.meta.url), "utf8");
    const columns = tables.split("interface TeamsConversationTable")[1]?.match(/readonly (\w+)/g) ?? [];
    expect(columns.map((column) => column.replace("readonly ", "")).sort()).toEqual(
      ["bot", "conversation", "kind", "service_url", "team", "tenant", "workspace"].sort(),
    );
    expect(kept).toMatch(/conversation: its id and kind, the team's id, the tenant, the bot's id in it, the address/);
  });

  test("is linked from the page for engineers", () => {
    const engineers = readFileSync(new URL("../../DEVELOPERS.md", import.meta.url), "utf8");
    expect(engineers).toContain("(adapters/teams/ADMIN.md)");
  });
});

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import AjvDraft04 from "ajv-draft-04";
import addFormats from "ajv-formats";
import { expect, test } from "vitest";
import { buildTeamsManifest } from "../../adapters/teams/manifest.ts";
import { APP_ID } from "./fake-platform.ts";

/** The platform's own schema, as shipped by @microsoft/app-manifest 1.1.2. */
function compileSchema(version: string) {
  const folder = join(createRequire(import.meta.url).resolve("@microsoft/app-manifest"), "..");
  const path = join(folder, `json-schemas/teams/v${version}/MicrosoftTeams.schema.json`);
  const ajv = new AjvDraft04.default({ strict: false, allErrors: true });
  addFormats.default(ajv);
  return ajv.compile(JSON.parse(readFileSync(path, "utf8")));
}

const publisher = {
  name: "Invented Plumbing Company",
  websiteUrl: "https://plumbing.invalid",
  privacyUrl: "https://plumbing.invalid/privacy",
  termsOfUseUrl: "https://plumbing.invalid/terms",
};
const commands = [{ title: "expansion", description: "Size an expansion tank" }];
const manifest = buildTeamsManifest({ appId: APP_ID, version: "1.0.0", publisher, commands });
const validate = compileSchema(manifest.manifestVersion);

test("is valid by the platform's schema of its own version", () => {
  validate(manifest);
  expect(validate.errors).toBeNull();
});

test("stays valid with sixty commands, long names and none at all", () => {
  const long = Array.from({ length: 60 }, (_, i) => ({
    title: `${i} ${"t".repeat(100)}`,
    description: "d".repeat(1_000),
  }));
  for (const offered of [long, []]) {
    const other = buildTeamsManifest({
      appId: APP_ID,
      version: "2.10.3",
      publisher: { ...publisher, name: "n".repeat(80) },
      commands: offered,
    });
    validate(other);
    expect(validate.errors).toBeNull();
  }
});

test("would be refused by the same schema without its icons, or with a name of 31 characters", () => {
  const { icons: _, ...without } = manifest;
  expect(validate(without)).toBe(false);
  expect(validate({ ...manifest, name: { short: "n".repeat(31), full: "n" } })).toBe(false);
});

test("takes messages, not notices alone, and files in the personal scope", () => {
  expect(manifest.bots).toMatchObject([{ isNotificationOnly: false, supportsFiles: true }]);
});

test("asks for no permission and no domain, and offers the bot in all three places", () => {
  expect(Object.keys(manifest)).not.toContain("permissions");
  expect(manifest.validDomains).toEqual([]);
  expect(manifest.bots).toMatchObject([
    { botId: APP_ID, scopes: ["personal", "team", "groupChat"], commandLists: [{ commands }] },
  ]);
});

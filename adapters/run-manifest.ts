import { readFile, writeFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import type { Settings } from "../src/boundary/settings.ts";
import { readWords } from "./commands/read-words.ts";
import { openShelf } from "./open-house.ts";
import type { TeamsManifest } from "./teams/manifest.ts";

const SLACK_USAGE = "npm run --silent manifest -- slack --url https://oldhand.example.com [--oauth] [--socket]";
const TEAMS_USAGE =
  "npm run --silent manifest -- teams --website https://www.example.com [--privacy https://...] [--terms https://...] [--out oldhand-teams.zip]";
/** Slack over a socket; and a Slack app that any workspace may install. */
const SWITCHES = ["socket", "oauth"];
/** Options that are not addresses. */
const NO_ADDRESS: readonly string[] = ["app-id", "out", ...SWITCHES];
const USAGE = `${SLACK_USAGE}\n   or: ${TEAMS_USAGE}`;

/** Prints what Slack or Teams wants to know of the app; for Teams it writes the whole package where one is asked for. */
export async function runManifest(settings: Settings, words: readonly string[], root: string): Promise<number> {
  const read = readWords(words, ["url", "website", "privacy", "terms", "app-id", "out"], USAGE, SWITCHES);
  if (!read.ok) return complain(read.say);
  const { first, options } = read;
  const bad = Object.entries(options).find(([name, value]) => !NO_ADDRESS.includes(name) && !isHttps(value));
  if (bad) return complain(`--${bad[0]} is an https address, such as https://www.example.com, not "${bad[1]}".`);
  if (first === "slack") return await printSlack(options);
  if (first === "teams" && options["website"] !== undefined)
    return await printTeams(settings, root, { ...options, website: options["website"] });
  return complain(`Type: ${USAGE}`);
}

async function printSlack(options: Readonly<Record<string, string>>): Promise<number> {
  const [isSocket, isForMany] = [options["socket"] !== undefined, options["oauth"] !== undefined];
  // Over a socket nothing calls this program, except a browser that comes back from installing.
  if (options["url"] === undefined && (!isSocket || isForMany)) return complain(`Type: ${SLACK_USAGE}`);
  const { printSlackManifest } = await import("./slack/manifest.ts");
  process.stdout.write(`${printSlackManifest(options["url"], { isSocket, isForMany })}\n`);
  return 0;
}

interface TeamsOptions extends Readonly<Record<string, string>> {
  readonly website: string;
}

async function printTeams(settings: Settings, root: string, options: TeamsOptions): Promise<number> {
  const appId = options["app-id"] ?? (settings.teams.kind === "ready" ? settings.teams.settings.appId : undefined);
  if (appId === undefined) return complain("Set up the Teams door first (.env.example), or add --app-id.");
  const [{ buildTeamsManifest }, { library, books }] = await Promise.all([
    import("./teams/manifest.ts"),
    openShelf(settings, root),
  ]);
  const topics = [...library.texts[books.company.language].topics];
  const { website } = options;
  const manifest = buildTeamsManifest({
    appId,
    version: await readVersion(root),
    publisher: {
      name: books.company.name,
      websiteUrl: website,
      privacyUrl: options["privacy"] ?? website,
      termsOfUseUrl: options["terms"] ?? website,
    },
    commands: topics.map(([id, { summary }]) => ({ title: id, description: summary })),
  });
  const { out } = options;
  if (out !== undefined) return await writePackage(manifest, out);
  process.stdout.write(`${JSON.stringify(manifest, null, 2)}\n`);
  return 0;
}

async function writePackage(manifest: TeamsManifest, out: string): Promise<number> {
  if (!out.endsWith(".zip")) return complain(`--out is a zip file, such as oldhand-teams.zip, not "${out}".`);
  const [{ packApp }, { drawIcon }] = await Promise.all([
    import("./teams/app-package.ts"),
    import("./pictures/draw-icon.ts"),
  ]);
  const packed = await packApp(manifest, drawIcon);
  try {
    await writeFile(resolve(out), packed);
  } catch (error) {
    return complain(`${out} could not be written: ${error instanceof Error ? error.message : String(error)}.`);
  }
  process.stdout.write(`${out}: upload it in the Teams admin center. adapters/teams/ADMIN.md says how.\n`);
  return 0;
}

async function readVersion(root: string): Promise<string> {
  const { version }: { readonly version: string } = JSON.parse(await readFile(join(root, "package.json"), "utf8"));
  return version;
}

function isHttps(address: string): boolean {
  return URL.canParse(address) && new URL(address).protocol === "https:";
}

function complain(line: string): number {
  process.stderr.write(`${line}\n`);
  return 2;
}

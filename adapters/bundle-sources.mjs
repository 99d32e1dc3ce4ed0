// Bundles the sources. A program of a thousand small files takes longer to find than to run, and the loader that reads
// TypeScript as it is stays in memory. The bundle stands under a name made of what went into it, so it is made again
// whenever a file has changed, and two programs that start at once do not stand in each other's way.
import { createHash } from "node:crypto";
import { existsSync, readdirSync, statSync } from "node:fs";
import { mkdir, readdir, readFile, rename, rm } from "node:fs/promises";
import { join, sep } from "node:path";
import process from "node:process";
import { fileURLToPath, pathToFileURL } from "node:url";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const CACHE = join(ROOT, "node_modules", ".cache", "oldhand");
/** What a program or a thread begins with. */
const ENTRIES = ["main", "run-long-work", "draw-picture"];
/** Folders whose files are found by reading the folder, and so by no import. */
const FOUND_BY_FOLDER = ["topics", "cautions", join("messages", "en"), join("messages", "es")];
/** Imports a file by its path; in a bundle a table of such files stands in its place. */
const IMPORTER = join("adapters", "library", "import-file.ts");
/** Bundles that nobody has used for so long are removed [ms]. */
const KEPT_ms = 7 * 24 * 3_600_000;

/** @returns {Promise<string>} the folder of the bundle of the sources as they are now */
export async function bundleSources() {
  const sources = ["src", "adapters"].flatMap((folder) => listSources(join(ROOT, folder)));
  const folder = join(
    CACHE,
    fingerprint([...sources, join(ROOT, "package-lock.json"), fileURLToPath(import.meta.url)]),
  );
  if (existsSync(folder)) return folder;
  const beside = `${folder}.${process.pid}`;
  try {
    await build(sources, beside);
    await rename(beside, folder);
  } catch (error) {
    await rm(beside, { recursive: true, force: true });
    // Another program may have been quicker with the same bundle.
    if (!existsSync(folder)) throw error;
  }
  await removeOld().catch(() => undefined);
  return folder;
}

function listSources(folder) {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
    .sort();
}

function fingerprint(paths) {
  const hash = createHash("sha256").update(process.versions.node);
  for (const path of paths) {
    const { mtimeMs, size } = statSync(path);
    hash.update(`${path}\0${mtimeMs}\0${size}\n`);
  }
  return hash.digest("hex").slice(0, 32);
}

async function build(sources, folder) {
  await mkdir(folder, { recursive: true });
  const { build: bundle } = await import("esbuild");
  await bundle({
    entryPoints: ENTRIES.map((name) => join(ROOT, "adapters", `${name}.ts`)),
    outdir: folder,
    outExtension: { ".js": ".mjs" },
    bundle: true,
    splitting: true,
    format: "esm",
    platform: "node",
    target: "node20",
    packages: "external",
    logLevel: "silent",
    plugins: [{ name: "sources", setup: (plugin) => readSources(plugin, sources) }],
  });
}

/** A bundled file still says where it stood, because it finds other files from there. */
function readSources(plugin, sources) {
  plugin.onLoad({ filter: /\.ts$/ }, async ({ path }) => {
    const text = path === join(ROOT, IMPORTER) ? writeTable(sources) : await readFile(path, "utf8");
    const contents = text.replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href));
    return { contents, loader: "ts" };
  });
}

function writeTable(sources) {
  const found = sources.filter((path) =>
    FOUND_BY_FOLDER.some((folder) => path.startsWith(join(ROOT, "src", folder) + sep)),
  );
  return [
    ...found.map((path, index) => `import * as file${index} from ${JSON.stringify(path)};`),
    `const FILES = new Map([${found.map((path, index) => `[${JSON.stringify(path)}, file${index}]`).join(", ")}]);`,
    'import { pathToFileURL } from "node:url";',
    "export const importFile = async (path) => FILES.get(path) ?? (await import(pathToFileURL(path).href));",
  ].join("\n");
}

async function removeOld() {
  for (const name of await readdir(CACHE)) {
    const path = join(CACHE, name);
    if (Date.now() - statSync(path).mtimeMs > KEPT_ms) await rm(path, { recursive: true, force: true });
  }
}

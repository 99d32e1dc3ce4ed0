// Runs before start, test, ask and chat: installs the packages of package-lock.json when they are missing or others,
// and returns at once when they are there. Plain JavaScript, because nothing else can be relied on at this point.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const LOCK = join(ROOT, "package-lock.json");
const INSTALLED = join(ROOT, "node_modules", ".package-lock.json");
/** Which Node the compiled packages were built for. */
const STAMP = join(ROOT, "node_modules", ".built-for");
const BUILT_FOR = `${process.platform} ${process.arch} modules ${process.versions.modules}`;
/** Compiled while it is installed, so it breaks when Node changes. */
const COMPILED_PACKAGE = "better-sqlite3";

process.exitCode = ensureInstalled();

function ensureInstalled() {
  const wanted = readJson(join(ROOT, "package.json")).engines.node;
  const [, major, minor] = /^>=(\d+)\.(\d+)/.exec(wanted);
  const [nodeMajor, nodeMinor] = process.versions.node.split(".").map(Number);
  if (nodeMajor < Number(major) || (nodeMajor === Number(major) && nodeMinor < Number(minor)))
    return complain(
      `Oldhand needs Node ${major}.${minor} or newer; this is ${process.versions.node}. Install a newer Node.`,
    );
  if (isInstalled()) return 0;
  return install();
}

function isInstalled() {
  if (!existsSync(INSTALLED) || !isSameLock()) return false;
  if (existsSync(STAMP)) return readFileSync(STAMP, "utf8") === BUILT_FOR;
  return compiledPackageLoads() && stamp();
}

/** Compares with npm's own list of what it installed. Packages for other platforms are not in it. */
function isSameLock() {
  const there = readJson(INSTALLED).packages;
  const wanted = readJson(LOCK).packages;
  const needsTools = process.env.npm_lifecycle_event === "pretest";
  const isSame = (a, b) => a !== undefined && b !== undefined && a.version === b.version && a.integrity === b.integrity;
  const mayBeMissing = (entry) => entry.optional || entry.devOptional || (entry.dev && !needsTools);
  const isComplete = Object.entries(wanted).every(
    ([path, entry]) => path === "" || isSame(there[path], entry) || (there[path] === undefined && mayBeMissing(entry)),
  );
  return isComplete && Object.keys(there).every((path) => wanted[path] !== undefined);
}

/** Somebody installed the packages by hand: they are good when the compiled one runs on this Node. */
function compiledPackageLoads() {
  try {
    const Package = createRequire(join(ROOT, "package.json"))(COMPILED_PACKAGE);
    new Package(":memory:").close();
    return true;
  } catch {
    return false;
  }
}

function install() {
  process.stderr.write("Installing the packages of Oldhand; this takes a minute or two, and only the first time.\n");
  // What npm says goes to standard error: standard output belongs to the answer. It speaks even under `npm run --silent`.
  const { status, error } = spawnSync("npm", ["ci", "--no-fund", "--no-audit", "--loglevel=notice"], {
    cwd: ROOT,
    stdio: ["ignore", 2, 2],
    shell: process.platform === "win32",
  });
  if (error) return complain(`npm could not be started (${error.message}). Install npm, then try again.`);
  if (status !== 0)
    return complain("The packages could not be installed; npm says why above. Without a network, try again with one.");
  stamp();
  return 0;
}

function stamp() {
  writeFileSync(STAMP, BUILT_FOR);
  return true;
}

function readJson(path) {
  return JSON.parse(readFileSync(path, "utf8"));
}

function complain(line) {
  process.stderr.write(`${line}\n`);
  return 1;
}

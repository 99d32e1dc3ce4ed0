import { spawnSync } from "node:child_process";
import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";

const SCRIPT = new URL("../../adapters/ensure-installed.mjs", import.meta.url).pathname;
const LOCK = {
  packages: {
    "": {},
    "node_modules/better-sqlite3": { version: "1.0.0", integrity: "sha512-a" },
    "node_modules/tester": { version: "1.0.0", integrity: "sha512-b", dev: true },
    "node_modules/for-windows": { version: "1.0.0", integrity: "sha512-c", optional: true },
  },
};
/** Stands in for npm: notes how it was called, says something on both channels, and installs what the lock names. */
const FAKE_NPM = `#!/bin/sh
echo "$@" >> "$PWD/npm-calls"
echo "npm chatter"
[ -e fail ] && exit 1
rm -rf node_modules && mkdir -p node_modules/better-sqlite3
echo "module.exports = class { close() {} }" > node_modules/better-sqlite3/index.js
cp installed-by-npm.json node_modules/.package-lock.json
`;

let root = "";
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "oldhand-install-"));
  for (const folder of ["adapters", "bin"]) mkdirSync(join(root, folder));
  copyFileSync(SCRIPT, join(root, "adapters/ensure-installed.mjs"));
  writeFileSync(join(root, "bin/npm"), FAKE_NPM);
  chmodSync(join(root, "bin/npm"), 0o755);
  write("package.json", { engines: { node: ">=20.19" } });
  write("package-lock.json", LOCK);
  write("installed-by-npm.json", withoutKeys(["", "node_modules/for-windows"]));
});
afterEach(() => rmSync(root, { recursive: true }));

function write(file: string, data: unknown): void {
  writeFileSync(join(root, file), JSON.stringify(data));
}
function withoutKeys(paths: readonly string[]) {
  return { packages: Object.fromEntries(Object.entries(LOCK.packages).filter(([path]) => !paths.includes(path))) };
}
function run(environment: Readonly<Record<string, string>> = {}) {
  const env = { PATH: `${join(root, "bin")}:/bin:/usr/bin`, ...environment };
  const { status, stdout, stderr } = spawnSync(process.execPath, ["adapters/ensure-installed.mjs"], {
    cwd: root,
    env,
    encoding: "utf8",
  });
  const log = join(root, "npm-calls");
  const calls = existsSync(log) ? readFileSync(log, "utf8").trim().split("\n") : [];
  return { status, stdout, stderr, calls };
}
/** What `npm ci` would leave when somebody ran it by hand. */
function installByHand(
  packages: unknown = withoutKeys(["", "node_modules/for-windows"]),
  code = "class { close() {} }",
) {
  mkdirSync(join(root, "node_modules/better-sqlite3"), { recursive: true });
  writeFileSync(join(root, "node_modules/better-sqlite3/index.js"), `module.exports = ${code}`);
  write("node_modules/.package-lock.json", packages);
}

test("a fresh clone is installed once, with everything npm says on standard error", () => {
  const first = run();
  expect(first).toMatchObject({ status: 0, stdout: "", calls: ["ci --no-fund --no-audit --loglevel=notice"] });
  expect(first.stderr).toContain("Installing the packages of Oldhand");
  expect(first.stderr).toContain("npm chatter");
  expect(run()).toMatchObject({ status: 0, stdout: "", stderr: "", calls: first.calls });
});

test("a lock that names another version installs again", () => {
  run();
  const changed = { ...LOCK.packages, "node_modules/tester": { version: "2.0.0", integrity: "sha512-d", dev: true } };
  write("package-lock.json", { packages: changed });
  expect(run().calls).toHaveLength(2);
});

test("a package that the lock no longer names installs again", () => {
  run();
  write("package-lock.json", withoutKeys(["node_modules/tester"]));
  expect(run().calls).toHaveLength(2);
});

test("packages built for another Node are installed again", () => {
  run();
  writeFileSync(join(root, "node_modules/.built-for"), "linux x64 modules 1");
  expect(run().calls).toHaveLength(2);
});

test("an installation that was cut off is done again", () => {
  mkdirSync(join(root, "node_modules/better-sqlite3"), { recursive: true });
  expect(run().calls).toHaveLength(1);
});

test("an installation made by hand is taken as it is when its compiled package runs on this Node", () => {
  installByHand();
  expect(run()).toMatchObject({ status: 0, stderr: "", calls: [] });
});

test("an installation made by hand for another Node is done again", () => {
  installByHand(undefined, "class { constructor() { throw new Error('built for another Node'); } }");
  expect(run().calls).toHaveLength(1);
});

test("an installation without the tools of developers is enough to start, and not enough to test", () => {
  installByHand(withoutKeys(["", "node_modules/for-windows", "node_modules/tester"]));
  expect(run({ npm_lifecycle_event: "prestart" }).calls).toEqual([]);
  expect(run({ npm_lifecycle_event: "pretest" }).calls).toHaveLength(1);
});

test("a failing npm is told in one clear line and tried again next time", () => {
  writeFileSync(join(root, "fail"), "");
  const failed = run();
  expect(failed).toMatchObject({ status: 1, stdout: "" });
  expect(failed.stderr.trim().split("\n").at(-1)).toBe(
    "The packages could not be installed; npm says why above. Without a network, try again with one.",
  );
  rmSync(join(root, "fail"));
  expect(run()).toMatchObject({ status: 0, calls: [expect.any(String), expect.any(String)] });
});

test("a machine without npm is told so", () => {
  const { status, stderr } = run({ PATH: join(root, "nowhere") });
  expect(status).toBe(1);
  expect(stderr).toMatch(/npm could not be started \(.*\)\. Install npm, then try again\.\n$/);
});

test("a Node that is too old is told so, and nothing is installed", () => {
  write("package.json", { engines: { node: ">=99.1" } });
  const { status, stderr, calls } = run();
  expect({ status, calls }).toEqual({ status: 1, calls: [] });
  expect(stderr).toBe(`Oldhand needs Node 99.1 or newer; this is ${process.versions.node}. Install a newer Node.\n`);
});

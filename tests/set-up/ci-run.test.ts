import { spawnSync } from "node:child_process";
import { chmodSync, copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";

const SCRIPT = new URL("../../.ci/run", import.meta.url).pathname;
/** Stands in for npm: notes what it was asked, and leaves the report that the test wants where it was told to. */
const FAKE_NPM = `#!/bin/sh
echo "$OLDHAND_REQUIRE_BROWSER $@" > "$PWD/asked"
for word in "$@"; do case "$word" in --outputFile.json=*) cp "$PWD/report.json" "\${word#*=}";; esac; done
exit $(cat "$PWD/status")
`;

let root = "";
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "oldhand-ci-"));
  for (const folder of [".ci", "bin"]) mkdirSync(join(root, folder));
  copyFileSync(SCRIPT, join(root, ".ci/run"));
  writeFileSync(join(root, "bin/npm"), FAKE_NPM);
  chmodSync(join(root, "bin/npm"), 0o755);
});
afterEach(() => rmSync(root, { recursive: true }));

interface Counts {
  readonly passed?: number;
  readonly failed?: number;
  readonly pending?: number;
  readonly todo?: number;
}
function run({ passed = 0, failed = 0, pending = 0, todo = 0 }: Counts, status: number, report?: string) {
  const outcomes = { passed, failed, pending, todo };
  const assertionResults = Object.entries(outcomes).flatMap(([outcome, count]) =>
    Array.from({ length: count }, (_, index) => ({ status: outcome, fullName: `${outcome} ${index}` })),
  );
  const counts = { numPassedTests: passed, numFailedTests: failed, numPendingTests: pending, numTodoTests: todo };
  const written = JSON.stringify({ ...counts, testResults: [{ name: "a.test.ts", assertionResults }] });
  writeFileSync(join(root, "report.json"), report ?? written);
  writeFileSync(join(root, "status"), String(status));
  const env = { PATH: `${join(root, "bin")}:${dirname(process.execPath)}:/usr/bin:/bin` };
  const done = spawnSync("bash", [".ci/run"], { cwd: root, env, encoding: "utf8" });
  return { ...done, last: done.stdout.trim().split("\n").at(-1) };
}

test("all passed: the last line counts them and the run succeeds", () => {
  expect(run({ passed: 7 }, 0)).toMatchObject({ status: 0, last: "7 passed, 0 failed, 0 skipped" });
});

test("the tests run as the README says, with browser tests on", () => {
  run({ passed: 1 }, 0);
  expect(readFileSync(join(root, "asked"), "utf8")).toMatch(/^1 test -- --reporter=default --reporter=json /);
});

test.each([
  { name: "a skipped test", counts: { passed: 7, pending: 1 }, status: 0, last: "7 passed, 0 failed, 1 skipped" },
  {
    name: "a test still to be written",
    counts: { passed: 7, todo: 2 },
    status: 0,
    last: "7 passed, 0 failed, 2 skipped",
  },
  { name: "a failed test", counts: { passed: 6, failed: 1 }, status: 1, last: "6 passed, 1 failed, 0 skipped" },
  { name: "no test at all", counts: {}, status: 0, last: "0 passed, 0 failed, 0 skipped" },
  { name: "an error outside of any test", counts: { passed: 7 }, status: 1, last: "7 passed, 0 failed, 0 skipped" },
])("$name fails the run", ({ counts, status, last }) => {
  const done = run(counts, status);
  expect(done.status).not.toBe(0);
  expect(done.last).toBe(last);
});

test("a skipped test is named", () => {
  expect(run({ passed: 1, pending: 1 }, 0).stdout).toContain("pending: a.test.ts: pending 0");
});

test("a run that died without a report fails", () => {
  const done = run({}, 137, "");
  expect(done.status).toBe(137);
  expect(done.stderr).toContain("The tests did not run to their end.");
});

import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
// @ts-expect-error plain JavaScript, which runs before anything that reads types
import { bundleSources } from "../../adapters/bundle-sources.mjs";

const ROOT = new URL("../..", import.meta.url).pathname;
const ASKED = "size people=4 model=hollin-50 setpoint=125F days=20";

function ask(...program: readonly string[]) {
  const { status, stdout } = spawnSync(process.execPath, [...program, "ask", ASKED, "--json"], {
    cwd: ROOT,
    encoding: "utf8",
  });
  return { status, answer: JSON.parse(stdout) };
}

test("bundled sources answer as the sources themselves do", { timeout: 120_000 }, () => {
  const bundled = ask("adapters/run.mjs");
  expect(bundled.status).toBe(0);
  expect(bundled).toEqual(ask("--import", "tsx", "adapters/main.ts"));
});

test("what has not changed is not bundled again, and holds what threads begin with", { timeout: 60_000 }, async () => {
  const [one, other] = await Promise.all([bundleSources(), bundleSources()]);
  expect(one).toBe(other);
  for (const name of ["main", "run-long-work", "draw-picture"])
    expect(existsSync(join(one, `${name}.mjs`)), name).toBe(true);
});

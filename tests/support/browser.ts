import { execFile } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdtemp, readFile, rename, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir, userInfo } from "node:os";
import { dirname, join } from "node:path";
import { promisify } from "node:util";
import { type Browser, chromium } from "playwright-core";

const run = promisify(execFile);
const require = createRequire(import.meta.url);
const ROOT = new URL("../..", import.meta.url).pathname;

/** No sandbox, because tests may run as root; no background traffic, because a test talks to the loopback address only. */
const LAUNCH_ARGS = [
  "--no-sandbox",
  "--no-zygote",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-domain-reliability",
  "--disable-sync",
  "--font-render-hinting=none",
];

/**
 * Starts the headless browser that comes with the development packages; the caller closes it.
 * Only fonts of installed packages are offered to it, so that text is as wide on every machine.
 */
export async function launchBrowser(): Promise<Browser> {
  const folder = await unpackBrowser();
  return await chromium.launch({
    executablePath: join(folder, "chromium"),
    args: LAUNCH_ARGS,
    env: { ...process.env, FONTCONFIG_FILE: join(folder, "fonts.conf") },
  });
}

/**
 * Unpacks once per machine and version. The package unpacks in place, and a second process would start the half-written
 * file; so it is unpacked in a folder of our own, which then gets its name in one step.
 */
async function unpackBrowser(): Promise<string> {
  const packageFile = await readFile(join(ROOT, "node_modules/@sparticuz/chromium/package.json"), "utf8");
  const { version }: { version: string } = JSON.parse(packageFile);
  const folder = join(tmpdir(), `oldhand-chromium-${version}-${userInfo().uid}`);
  if (existsSync(folder)) return folder;
  const staging = await mkdtemp(`${folder}-unpacking-`);
  const unpack = `import chromium from "@sparticuz/chromium"; await chromium.executablePath();`;
  await run(process.execPath, ["--input-type=module", "--eval", unpack], {
    cwd: ROOT,
    env: { ...process.env, TMPDIR: staging },
  });
  await writeFile(join(staging, "fonts.conf"), fontSettings(folder));
  try {
    await rename(staging, folder);
  } catch (error) {
    await rm(staging, { recursive: true, force: true });
    if (!existsSync(folder)) throw error;
  }
  return folder;
}

function fontSettings(folder: string): string {
  const dejavu = join(dirname(require.resolve("dejavu-fonts-ttf/package.json")), "ttf");
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${join(folder, "fonts")}</dir>
  <dir>${dejavu}</dir>
  <cachedir>${join(folder, "font-cache")}</cachedir>
  <alias><family>sans-serif</family><prefer><family>Open Sans</family></prefer></alias>
  <alias><family>monospace</family><prefer><family>DejaVu Sans Mono</family></prefer></alias>
</fontconfig>
`;
}

import { spawn } from "node:child_process";
import { once } from "node:events";
import { SETTING_NAMES } from "../../src/boundary/settings.ts";

const ROOT = new URL("../..", import.meta.url).pathname;

/** The program as a process of its own. */
export interface Running {
  readonly stdout: () => string;
  readonly stderr: () => string;
  readonly pid: number;
  /** Resolves when this has been printed, or fails when the process ends without it. */
  readonly untilPrinted: (text: string) => Promise<void>;
  readonly type: (text: string) => void;
  readonly kill: (signal: "SIGTERM" | "SIGINT" | "SIGKILL") => void;
  /** The exit code. */
  readonly ended: Promise<number | null>;
}

/** Every setting left empty, so that a developer's own `.env` plays no part. */
const UNSET = Object.fromEntries(SETTING_NAMES.map((name) => [name, ""]));

/** Starts the program as `npm start` does, with these words and settings; nothing of this process's own settings goes with it. */
export function runProgram(words: readonly string[], settings: Readonly<Record<string, string>>): Running {
  const env = {
    PATH: process.env["PATH"],
    HOME: process.env["HOME"],
    TMPDIR: process.env["TMPDIR"],
    ...UNSET,
    ...settings,
  };
  const child = spawn(process.execPath, ["adapters/run.mjs", ...words], { cwd: ROOT, env });
  const said = { stdout: "", stderr: "" };
  for (const channel of ["stdout", "stderr"] as const)
    child[channel].setEncoding("utf8").on("data", (text: string) => {
      said[channel] += text;
    });
  const ended = once(child, "close").then(([code]: (number | null)[]) => code ?? null);
  return {
    stdout: () => said.stdout,
    stderr: () => said.stderr,
    pid: child.pid ?? 0,
    untilPrinted: (text) =>
      new Promise((resolve, reject) => {
        const look = () => said.stdout.includes(text) && resolve();
        child.stdout.on("data", look);
        look();
        ended.then((code) =>
          reject(new Error(`ended with ${code} before printing ${text}: ${said.stdout}${said.stderr}`)),
        );
      }),
    type: (text) => {
      child.stdin.end(text);
    },
    kill: (signal) => {
      child.kill(signal);
    },
    ended,
  };
}

/** Runs the program to its end. */
export async function runToEnd(
  words: readonly string[],
  settings: Readonly<Record<string, string>>,
  typed = "",
): Promise<{ readonly code: number | null; readonly stdout: string; readonly stderr: string }> {
  const program = runProgram(words, settings);
  program.type(typed);
  const code = await program.ended;
  return { code, stdout: program.stdout(), stderr: program.stderr() };
}

import { type ChildProcess, fork } from "node:child_process";
import { createHmac } from "node:crypto";
import { once } from "node:events";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { setTimeout as sleep } from "node:timers/promises";
import autocannon, { type Result } from "autocannon";

/** One line of the comparison: the door against a bare Bolt app that does the same, in the same run. */
export interface SlackBenchRow {
  readonly name: string;
  readonly unit: string;
  readonly door: number;
  readonly bare: number;
  readonly ratio: number;
  readonly budget: string;
  readonly isKept: boolean;
}

const SECRET = "0123456789abcdef0123456789abcdef";
const SIDES = ["bare", "door"] as const;
type Side = (typeof SIDES)[number];
type Mode = "ack" | "answer";
const ROUNDS = 3;
const ROUND_s = 2;
const CONNECTIONS = 20;
/** Commands a second when answers are posted too: a busy company, not a flood. */
const ANSWER_RATE = 200;

interface Measured {
  readonly perSecond: number;
  readonly p99_ms: number;
}

/** Signed slash commands: how many are acknowledged a second, and how late; alone, and with an answer to each. */
export async function benchSlackAck(): Promise<{ readonly rows: readonly SlackBenchRow[] }> {
  const ack = await compare("ack");
  const answer = await compare("answer");
  return {
    rows: [
      row("Slack command to ack", "requests/s", ack, (side) => side.perSecond, { atLeast: 0.8 }),
      row("Slack command to ack, p99", "ms", ack, (side) => side.p99_ms, { atMost: 1.5 }),
      row(`the same with ${ANSWER_RATE} answers/s, p99`, "ms", answer, (side) => side.p99_ms, { atMost: 1.5 }),
    ],
  };
}

type Rounds = Readonly<Record<Side, readonly Measured[]>>;

function row(
  name: string,
  unit: string,
  rounds: Rounds,
  pick: (measured: Measured) => number,
  budget: { readonly atLeast: number } | { readonly atMost: number },
): SlackBenchRow {
  const [door, bare] = [median(rounds.door.map(pick)), median(rounds.bare.map(pick))];
  const ratio = door / bare;
  return "atLeast" in budget
    ? { name, unit, door, bare, ratio, budget: `≥ ${budget.atLeast}`, isKept: ratio >= budget.atLeast }
    : { name, unit, door, bare, ratio, budget: `≤ ${budget.atMost}`, isKept: ratio <= budget.atMost };
}

/** Both sides take turns, so that whatever else the machine does falls on both. */
async function compare(mode: Mode): Promise<Rounds> {
  const sink = createServer((request, response) => request.resume().on("end", () => response.end("ok")));
  await new Promise<void>((resolve) => sink.listen(0, "127.0.0.1", resolve));
  const sinkUrl = `http://127.0.0.1:${(sink.address() as AddressInfo).port}/`;
  const servers = { bare: await start("bare", mode, sinkUrl), door: await start("door", mode, sinkUrl) };
  const rounds: Record<Side, Measured[]> = { bare: [], door: [] };
  for (const side of SIDES) await fire(servers[side].url, mode, sinkUrl, 1);
  for (let round = 0; round < ROUNDS; round += 1)
    for (const side of SIDES) {
      rounds[side].push(await fire(servers[side].url, mode, sinkUrl, ROUND_s));
      // Answers that are still on their way must not fall on the other side.
      await sleep(200);
    }
  for (const side of SIDES) servers[side].child.disconnect();
  sink.closeAllConnections();
  sink.close();
  return rounds;
}

async function start(side: Side, mode: Mode, sinkUrl: string): Promise<{ child: ChildProcess; url: string }> {
  const script = new URL("slack-bench-server.ts", import.meta.url);
  const child = fork(script, [side, mode, SECRET, sinkUrl], { execArgv: ["--import", "tsx"] });
  const [url] = await once(child, "message");
  return { child, url: String(url) };
}

let commands = 0;

async function fire(url: string, mode: Mode, sinkUrl: string, duration_s: number): Promise<Measured> {
  const times_ms: number[] = [];
  const result = await new Promise<Result>((resolve, reject) => {
    const run = autocannon(
      {
        url: `${url}/slack/events`,
        connections: CONNECTIONS,
        duration: duration_s,
        ...(mode === "answer" && { overallRate: ANSWER_RATE }),
        requests: [{ method: "POST", setupRequest: (request) => ({ ...request, ...signedCommand(sinkUrl) }) }],
      },
      (error, done) => (error ? reject(error) : resolve(done)),
    );
    run.on("response", (_client, _status, _bytes, time_ms) => times_ms.push(time_ms));
  });
  const good = result["2xx"];
  if (good === 0 || result.non2xx > 0 || result.errors > 0)
    throw new Error(`${url}: ${good} good, ${result.non2xx} refused, ${result.errors} failed`);
  times_ms.sort((one, other) => one - other);
  return { perSecond: good / result.duration, p99_ms: times_ms[Math.floor(times_ms.length * 0.99)] ?? Number.NaN };
}

/** No two are alike, as from Slack; the same one twice would be refused as a replay. */
function signedCommand(sinkUrl: string): { readonly body: string; readonly headers: Record<string, string> } {
  commands += 1;
  const body = new URLSearchParams({
    token: "invented",
    team_id: "T1",
    team_domain: "invented",
    channel_id: `C${commands % 500}`,
    channel_name: "crew",
    user_id: "U1",
    user_name: "ann",
    command: "/oldhand",
    text: "expansion 80 gal 50F to 140F",
    api_app_id: "A1",
    is_enterprise_install: "false",
    response_url: sinkUrl,
    trigger_id: `1.${commands}`,
  }).toString();
  const time = String(Math.floor(Date.now() / 1000));
  const hash = createHmac("sha256", SECRET).update(`v0:${time}:${body}`).digest("hex");
  return {
    body,
    headers: {
      "content-type": "application/x-www-form-urlencoded",
      "x-slack-request-timestamp": time,
      "x-slack-signature": `v0=${hash}`,
    },
  };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

import { type ChildProcess, fork } from "node:child_process";
import { generateKeyPairSync } from "node:crypto";
import { once } from "node:events";
import { createServer, type Server } from "node:http";
import autocannon, { type Result } from "autocannon";
import jwt from "jsonwebtoken";
import { APP_ID, ISSUER, messageActivity } from "../teams/fake-platform.ts";
import type { BenchRow } from "./bench-row.ts";

const SIDES = ["bare", "door"] as const;
type Side = (typeof SIDES)[number];
const ROUNDS = 5;
const ROUND_s = 2;
const WARM_UP_s = 2;
const CONNECTIONS = 20;
const LEAST_RATIO = 0.8;
const MOST_P99_RATIO = 1.5;

interface Measured {
  readonly perSecond: number;
  readonly p99_ms: number;
}

/** Authenticated messages that are answered: how many a second, and how late the slowest hundredth. */
export async function benchTeamsEcho(): Promise<{ readonly rows: readonly BenchRow[] }> {
  const platform = await startPlatform();
  const servers = { bare: await start("bare", platform.url), door: await start("door", platform.url) };
  const rounds: Record<Side, Measured[]> = { bare: [], door: [] };
  for (const side of SIDES) await fire(servers[side].url, platform, WARM_UP_s);
  // Both sides take turns, so that whatever else the machine does falls on both.
  for (let round = 0; round < ROUNDS; round++)
    for (const side of SIDES) rounds[side].push(await fire(servers[side].url, platform, ROUND_s));
  for (const side of SIDES) servers[side].child.disconnect();
  platform.server.closeAllConnections();
  platform.server.close();
  const of = (side: Side, pick: (measured: Measured) => number) => median(rounds[side].map(pick));
  const [perSecond, bare] = SIDES.map((side) => of(side, (measured) => measured.perSecond)).reverse();
  const [p99_ms, bareP99_ms] = SIDES.map((side) => of(side, (measured) => measured.p99_ms)).reverse();
  return {
    rows: [
      makeRow("Teams message to answer", "requests/s", perSecond, bare, { atLeast: LEAST_RATIO }),
      makeRow("Teams message to answer, p99", "ms", p99_ms, bareP99_ms, { atMost: MOST_P99_RATIO }),
    ],
  };
}

function makeRow(
  name: string,
  unit: string,
  door = Number.NaN,
  bare = Number.NaN,
  budget: { readonly atLeast: number } | { readonly atMost: number },
): BenchRow {
  const ratio = door / bare;
  return "atLeast" in budget
    ? { name, unit, door, bare, ratio, budget: `≥ ${budget.atLeast}`, isKept: ratio >= budget.atLeast }
    : { name, unit, door, bare, ratio, budget: `≤ ${budget.atMost}`, isKept: ratio <= budget.atMost };
}

interface Platform {
  readonly url: string;
  readonly server: Server;
  readonly token: string;
  /** Answers that have arrived, to show that every message was answered. */
  readonly answered: () => number;
}

/** The signing key, and a connector that takes every answer. */
async function startPlatform(): Promise<Platform> {
  const { privateKey, publicKey } = generateKeyPairSync("rsa", { modulusLength: 2_048 });
  const keys = [{ ...publicKey.export({ format: "jwk" }), use: "sig", kid: "k1", endorsements: ["msteams"] }];
  let answered = 0;
  const server = createServer((request, response) => {
    request.resume().on("end", () => {
      response.setHeader("content-type", "application/json");
      if (request.url === "/openid") response.end(JSON.stringify({ jwks_uri: `${url}/keys` }));
      else if (request.url === "/keys") response.end(JSON.stringify({ keys }));
      else {
        answered++;
        response.writeHead(201).end(`{"id":"1"}`);
      }
    });
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  const url = `http://127.0.0.1:${typeof address === "object" ? address?.port : address}`;
  const claims = { iss: ISSUER, aud: APP_ID, serviceurl: url };
  const token = jwt.sign(claims, privateKey, { algorithm: "RS256", keyid: "k1", expiresIn: 3_600 });
  return { url, server, token, answered: () => answered };
}

async function start(side: Side, platformUrl: string): Promise<{ child: ChildProcess; url: string }> {
  const script = new URL("teams-bench-server.ts", import.meta.url);
  const child = fork(script, [side, `${platformUrl}/openid`], { execArgv: ["--import", "tsx"] });
  const [url] = await once(child, "message");
  return { child, url: String(url) };
}

let messages = 0;

async function fire(url: string, platform: Platform, duration_s: number): Promise<Measured> {
  const before = platform.answered();
  const times_ms: number[] = [];
  const headers = { "content-type": "application/json", authorization: `Bearer ${platform.token}` };
  const result = await new Promise<Result>((resolve, reject) => {
    const run = autocannon(
      {
        url,
        connections: CONNECTIONS,
        duration: duration_s,
        requests: [
          { method: "POST", setupRequest: (request) => ({ ...request, headers, body: nextMessage(platform) }) },
        ],
      },
      (error, done) => (error ? reject(error) : resolve(done)),
    );
    run.on("response", (_client, _status, _bytes, time_ms) => times_ms.push(time_ms));
  });
  const good = result["2xx"];
  const answers = platform.answered() - before;
  if (good === 0 || result.non2xx > 0 || result.errors > 0 || answers < good)
    throw new Error(`${url}: ${good} good, ${answers} answered, ${result.non2xx} refused, ${result.errors} failed`);
  times_ms.sort((one, other) => one - other);
  return { perSecond: good / result.duration, p99_ms: times_ms[Math.floor(times_ms.length * 0.99)] ?? Number.NaN };
}

/** No two have the same id, as from Teams; the same one twice would be answered once. */
function nextMessage(platform: Platform): string {
  messages++;
  return JSON.stringify(messageActivity(platform, { id: `${messages}`, text: "mix 135 to 120 with 50 in" }));
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

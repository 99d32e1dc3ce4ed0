import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { findViolations, type SourceText } from "./support/architecture-rules.ts";

const ROOT = new URL("..", import.meta.url).pathname;

function readTree(folder: string): SourceText[] {
  return readdirSync(`${ROOT}${folder}`, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => ({ path: `${folder}/${name}`, text: readFileSync(`${ROOT}${folder}/${name}`, "utf8") }));
}

test("src and adapters keep the rules of the house", () => {
  const files = [...readTree("src"), ...readTree("adapters")];
  expect(files.length).toBeGreaterThan(20);
  expect(findViolations(files)).toEqual([]);
});

const PLANTED: readonly {
  readonly name: string;
  readonly path: string;
  readonly text: string;
  readonly rule: RegExp;
}[] = [
  {
    name: "src imports an adapter",
    path: "src/desk.ts",
    text: `import { x } from "../adapters/main.ts";`,
    rule: /src imports only src/,
  },
  {
    name: "physics uses a package",
    path: "src/physics/a.ts",
    text: `import { x } from "kysely";`,
    rule: /no packages/,
  },
  {
    name: "physics uses a node module",
    path: "src/physics/a.ts",
    text: `import { x } from "node:fs";`,
    rule: /no packages/,
  },
  { name: "a topic reads the clock", path: "src/topics/a.ts", text: `export const t = Date.now();`, rule: /no clock/ },
  {
    name: "a topic makes a date of now",
    path: "src/topics/a.ts",
    text: `export const t = new Date();`,
    rule: /no clock/,
  },
  {
    name: "household throws dice",
    path: "src/household/a.ts",
    text: `export const t = Math.random();`,
    rule: /no random/,
  },
  { name: "a unit waits", path: "src/units/a.ts", text: `export async function f() {}`, rule: /synchronous/ },
  { name: "a message prints", path: "src/messages/a.ts", text: `console.log(1);`, rule: /console/ },
  {
    name: "conversation reads the environment",
    path: "src/conversation/a.ts",
    text: `export const e = process.env;`,
    rule: /only main/,
  },
  {
    name: "an adapter reads the environment",
    path: "adapters/web/a.ts",
    text: `export const e = process.env;`,
    rule: /only main/,
  },
  {
    name: "zod outside the boundary",
    path: "adapters/slack/a.ts",
    text: `import { z } from "zod";`,
    rule: /zod belongs/,
  },
  {
    name: "slack package in the teams room",
    path: "adapters/teams/a.ts",
    text: `import { App } from "@slack/bolt";`,
    rule: /belongs to/,
  },
  {
    name: "the bot library beside its own folder",
    path: "adapters/teams/serve-event.ts",
    text: `import { TurnContext } from "botbuilder";`,
    rule: /botbuilder belongs to/,
  },
  {
    name: "the bot library's connector beside its own folder",
    path: "adapters/teams/port.ts",
    text: `import type { X } from "botframework-connector";`,
    rule: /botframework-connector belongs to/,
  },
  {
    name: "teams package in the web room",
    path: "adapters/web/a.ts",
    text: `import { x } from "botbuilder";`,
    rule: /belongs to/,
  },
  {
    name: "one door imports another",
    path: "adapters/slack/a.ts",
    text: `import { x } from "../web/b.ts";`,
    rule: /never import each other/,
  },
  { name: "a topic imports a sibling", path: "src/topics/a.ts", text: `import { x } from "./b.ts";`, rule: /siblings/ },
  {
    name: "a caution imports a sibling",
    path: "src/cautions/relief/a.ts",
    text: `import { x } from "../venting/b.ts";`,
    rule: /siblings/,
  },
  {
    name: "a cast in the engine",
    path: "src/units/a.ts",
    text: `export const t = JSON.parse("1") as number;`,
    rule: /no casts/,
  },
  { name: "any", path: "adapters/web/a.ts", text: `export let t: any;`, rule: /no any/ },
  { name: "a non-null assertion", path: "src/units/a.ts", text: `export const t = [1][0]!;`, rule: /non-null/ },
  { name: "an enum", path: "src/units/a.ts", text: `export enum E { A }`, rule: /enums/ },
  { name: "a default export", path: "src/units/a.ts", text: `export default 1;`, rule: /default exports/ },
  { name: "301 lines of code", path: "src/units/a.ts", text: "export {};\n".repeat(301), rule: /file over/ },
  {
    name: "a function of 61 lines",
    path: "src/units/a.ts",
    text: `function f() {\n${"f();\n".repeat(60)}}`,
    rule: /function over/,
  },
];

test.each(PLANTED)("refuses: $name", ({ path, text, rule }) => {
  const rules = findViolations([{ path, text }]).map((violation) => violation.rule);
  expect(rules.some((said) => rule.test(said))).toBe(true);
});

const ALLOWED: readonly { readonly name: string; readonly path: string; readonly text: string }[] = [
  { name: "a table of 400 lines", path: "src/physics/conductor-table.ts", text: "export {};\n".repeat(400) },
  { name: "a date from an argument", path: "src/household/a.ts", text: `export const f = (t: number) => new Date(t);` },
  {
    name: "a property called process",
    path: "src/topics/a.ts",
    text: `export const f = (a: { process: number }) => a.process;`,
  },
  {
    name: "zod in the boundary",
    path: "src/boundary/a.ts",
    text: `import { z } from "zod"; export const s = z.string();`,
  },
  { name: "main reads the environment", path: "adapters/main.ts", text: `export const e = process.env;` },
  {
    name: "300 lines of code and comments",
    path: "src/units/a.ts",
    text: `/* a\n b */\n${"export {};\n".repeat(300)}`,
  },
];

test.each(ALLOWED)("allows: $name", ({ path, text }) => {
  expect(findViolations([{ path, text }])).toEqual([]);
});

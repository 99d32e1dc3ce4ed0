import { afterEach, expect, test } from "vitest";
import { openSlackDoor } from "../../adapters/slack/open-slack-door.ts";
import { guardRequest } from "../../adapters/slack/request-guard.ts";
import { rememberSignatures } from "../../adapters/slack/signature-memory.ts";
import {
  fakeDesk,
  fixture,
  type Harness,
  openHarness,
  type PostOptions,
  post,
  sendEvent,
  sendForm,
  sendPayload,
  sign,
} from "./slack-harness.ts";

let open: Harness | undefined;
afterEach(async () => {
  await open?.close();
  open = undefined;
});

async function opened(desk = fakeDesk()): Promise<{ readonly harness: Harness; readonly desk: typeof desk }> {
  open = await openHarness(desk);
  return { harness: open, desk };
}
const form = { "content-type": "application/x-www-form-urlencoded" };
const slashBody = (harness: Harness, trigger: string) =>
  new URLSearchParams({
    ...(fixture("slash-command") as Record<string, string>),
    trigger_id: trigger,
    response_url: harness.slack.responseUrl("slash"),
  }).toString();

const AGES: readonly (readonly [name: string, options: PostOptions, status: number])[] = [
  ["signed now", {}, 200],
  ["signed 290 s ago", { age_s: 290 }, 200],
  ["signed 302 s ago", { age_s: 302 }, 401],
  ["signed 50 s in the future", { age_s: -50 }, 200],
  ["signed 65 s in the future", { age_s: -65 }, 401],
  ["signed one hour in the future", { age_s: -3600 }, 401],
  ["signed with another secret", { secret: "f".repeat(32) }, 401],
];
test.each(AGES)("a command %s (%j) is answered %d", async (_, options, status) => {
  const { harness, desk } = await opened();
  const sent = await sendForm(
    harness.door,
    fixture("slash-command", { response_url: harness.slack.responseUrl("slash") }),
    options,
  );
  expect(sent.status).toBe(status);
  expect(sent.body).toBe("");
  expect(desk.asked).toHaveLength(status === 200 ? 1 : 0);
});

test("a body that was changed after it was signed is refused with 401", async () => {
  const { harness, desk } = await opened();
  const body = slashBody(harness, "1.2.a");
  const sent = await post(harness.door, `${body}&text=stop`, { ...form, ...sign(body) });
  expect([sent.status, desk.asked]).toEqual([401, []]);
});

test("a request without a signature is refused with 401", async () => {
  const { harness, desk } = await opened();
  expect((await post(harness.door, slashBody(harness, "1.2.a"), form)).status).toBe(401);
  expect(desk.asked).toEqual([]);
});

test("the same signed request once more is refused with 401 and not to be sent again", async () => {
  const { harness, desk } = await opened();
  const body = slashBody(harness, "1.2.a");
  const headers = { ...form, ...sign(body) };
  expect((await post(harness.door, body, headers)).status).toBe(200);
  const again = await post(harness.door, body, headers);
  expect([again.status, again.body, again.headers["x-slack-no-retry"]]).toEqual([401, "", "1"]);
  expect(desk.asked).toHaveLength(1);
});

test("the same signed request twice at the same moment is let in once", async () => {
  const { harness, desk } = await opened();
  const body = slashBody(harness, "1.2.a");
  const headers = { ...form, ...sign(body) };
  const both = await Promise.all([post(harness.door, body, headers), post(harness.door, body, headers)]);
  expect(both.map((sent) => sent.status).sort()).toEqual([200, 401]);
  expect(desk.asked).toHaveLength(1);
});

test("a replay does not pass by writing its signature otherwise", async () => {
  const { harness, desk } = await opened();
  const body = slashBody(harness, "1.2.a");
  const signed = sign(body);
  await post(harness.door, body, { ...form, ...signed });
  const others = ["=x", "=", " ", ",v0=0"].map((tail) => `${signed["x-slack-signature"]}${tail}`);
  for (const signature of others) {
    const sent = await post(harness.door, body, { ...form, ...signed, "x-slack-signature": signature });
    expect(sent.status).toBe(401);
  }
  expect(desk.asked).toHaveLength(1);
});

test("a forged copy does not lock the genuine request out", async () => {
  const { harness, desk } = await opened();
  const body = slashBody(harness, "1.2.a");
  const headers = { ...form, ...sign(body) };
  expect((await post(harness.door, `${body}&text=stop`, headers)).status).toBe(401);
  expect((await post(harness.door, body, headers)).status).toBe(200);
  expect(desk.asked).toHaveLength(1);
});

test("ssl_check needs no signature and executes nothing that is smuggled along", async () => {
  const { harness, desk } = await opened();
  expect((await post(harness.door, "ssl_check=1&token=invented", form)).status).toBe(200);
  const smuggled = await post(harness.door, `${slashBody(harness, "1.2.a")}&ssl_check=1`, form);
  expect([smuggled.status, smuggled.body]).toEqual([200, ""]);
  expect(desk.asked).toEqual([]);
});

test("url_verification gives the challenge back", async () => {
  const { harness } = await opened();
  const sent = await sendEvent(harness.door, { type: "url_verification", challenge: "abc" });
  expect(JSON.parse(sent.body)).toEqual({ challenge: "abc" });
});

test("a body over 1,000,000 bytes is refused with 413", async () => {
  const { harness } = await opened();
  const body = "x".repeat(1_000_001);
  expect((await post(harness.door, body, { ...form, ...sign(body) })).status).toBe(413);
});

test("signed JSON that is none is refused with 400", async () => {
  const { harness } = await opened();
  const body = "{bad";
  const headers = { "content-type": "application/json", ...sign(body) };
  expect((await post(harness.door, body, headers)).status).toBe(400);
});

test.each(["/", "/slack/events/x", "/slack/install", "//", "/%"])("POST %s is not found", async (path) => {
  const { harness } = await opened();
  expect((await post(harness.door, "a=1", { ...form, ...sign("a=1") }, { path })).status).toBe(404);
});

test("the health route tells that the door is open and what is going on", async () => {
  const { harness } = await opened();
  const response = await fetch(`${harness.door.url}/slack/health`);
  expect(await response.json()).toEqual({ door: "slack", working: 0 });
});

test("a press without a person is answered 500 and does not hang", async () => {
  const { harness, desk } = await opened();
  const sent = await sendPayload(harness.door, fixture("button-in-thread", { user: null }));
  expect([sent.status, desk.asked]).toEqual([500, []]);
});

test("a request that failed with 500 may come again with the same signature", async () => {
  const { harness } = await opened();
  const body = new URLSearchParams({
    payload: JSON.stringify(fixture("button-in-thread", { user: null })),
  }).toString();
  const headers = { ...form, ...sign(body) };
  expect((await post(harness.door, body, headers)).status).toBe(500);
  expect((await post(harness.door, body, headers)).status).toBe(500);
});

const SETTINGS = { signingSecret: "s", botToken: "xoxb-1", host: "127.0.0.1", port: 0 };
const BAD_SETTINGS: readonly (readonly [name: string, changes: object, said: RegExp])[] = [
  ["no signing secret", { signingSecret: " " }, /signing secret is empty/],
  ["a user token", { botToken: "xoxp-1" }, /does not begin with xoxb-/],
  ["no token", { botToken: "" }, /does not begin with xoxb-/],
];
test.each(BAD_SETTINGS)("does not open with %s", async (_, changes, said) => {
  const log = { info: () => {}, warn: () => {}, error: () => {} };
  const opening = openSlackDoor({ desk: fakeDesk(), settings: { ...SETTINGS, ...changes }, log });
  await expect(opening).rejects.toThrow(said);
});

const SIGNATURE = `v0=${"a".repeat(64)}`;
test("the guard takes a clock that is exactly 60 s ahead and refuses 61 s", () => {
  const guard = (ahead_s: number) =>
    guardRequest(
      { "x-slack-signature": SIGNATURE, "x-slack-request-timestamp": String(1000 + ahead_s) },
      rememberSignatures(() => 1_000_000),
      1_000_000,
    ).kind;
  expect([guard(60), guard(61)]).toEqual(["signed", "refused"]);
});

test.each(["abc", "Infinity", undefined])("the guard refuses the time %s", (time) => {
  const headers = { "x-slack-signature": SIGNATURE, "x-slack-request-timestamp": time };
  const guarded = guardRequest(
    headers,
    rememberSignatures(() => 0),
    0,
  );
  expect(guarded.kind).toBe("refused");
});

test("a signature is remembered for 6 minutes and forgotten after", () => {
  let now = 0;
  const memory = rememberSignatures(() => now);
  expect(memory.begin("a")).toBe(true);
  memory.accept("a");
  now = 359_999;
  expect(memory.begin("a")).toBe(false);
  now = 360_000;
  expect(memory.begin("a")).toBe(true);
});

test("the memory of signatures holds no more than it may, and lets the oldest go first", () => {
  const memory = rememberSignatures(() => 0, 2);
  for (const signature of ["a", "b", "c"]) {
    expect(memory.begin(signature)).toBe(true);
    memory.accept(signature);
  }
  expect(memory.begin("c")).toBe(false);
  expect(memory.begin("b")).toBe(false);
  expect(memory.begin("a")).toBe(true);
});

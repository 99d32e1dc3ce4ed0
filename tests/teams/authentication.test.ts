import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { badTokens, messageActivity, OUTBOUND_TOKEN, PUBLIC_PEM, signToken, TENANT_ID } from "./fake-platform.ts";
import { openTestDoor, type TestDoor } from "./open-test-door.ts";

let door: TestDoor;
/** Everything printed, by any of the console's ways; in place before the door opens, as the real console is. */
const printed: unknown[][] = [];
beforeAll(async () => {
  for (const method of ["log", "info", "warn", "error"] as const)
    vi.spyOn(console, method).mockImplementation((...parts) => void printed.push(parts));
  door = await openTestDoor();
});
afterAll(async () => {
  await door.close();
  vi.restoreAllMocks();
});

const KEY_LINE = PUBLIC_PEM.split("\n")[1] ?? "";

function expectNothingSaid(answer: { status: number; body: string; headers: Headers }, status: number) {
  expect(answer.status).toBe(status);
  expect(answer.body).toBe("");
  expect(answer.headers.get("x-powered-by")).toBeNull();
  expect(door.platform.sent).toEqual([]);
  expect(door.desk.received).toEqual([]);
  expect(KEY_LINE).toHaveLength(64);
  expect(JSON.stringify(door.log)).not.toContain(KEY_LINE);
  expect(printed).toEqual([]);
}

const TOKEN_NAMES = badTokens({ url: "http://127.0.0.1:9" }).map(({ name }) => name);

test.each(TOKEN_NAMES)("refuses a token %s with 401 and an empty body", async (name) => {
  const { token } = badTokens(door.platform).find((bad) => bad.name === name) ?? { token: "" };
  const answer = await door.post(messageActivity(door.platform), { authorization: `Bearer ${token}` });
  expectNothingSaid(answer, 401);
});

test.each([
  { name: "no header", headers: {} },
  { name: "an empty header", headers: { authorization: "" } },
  { name: "a blank header", headers: { authorization: "Bearer " } },
  { name: "another scheme", headers: { authorization: "Basic YTpi" } },
])("refuses $name with 401 and an empty body", async ({ headers }) => {
  expectNothingSaid(await door.post(messageActivity(door.platform), headers), 401);
});

test("refuses a good token under another scheme with 401", async () => {
  const headers = { authorization: `Basic ${signToken(door.platform)}` };
  expectNothingSaid(await door.post(messageActivity(door.platform), headers), 401);
});

test.each([
  {
    name: "another service address than the token vouches for",
    changes: { serviceUrl: "http://127.0.0.1:9/other" },
    status: 401,
  },
  { name: "no service address", changes: { serviceUrl: undefined }, status: 400 },
  { name: "an empty service address", changes: { serviceUrl: "" }, status: 400 },
  { name: "the channel webchat", changes: { channelId: "webchat" }, status: 401 },
  { name: "the channel of the emulator", changes: { channelId: "emulator" }, status: 401 },
  { name: "the channel AseChannel", changes: { channelId: "AseChannel" }, status: 401 },
  { name: "no channel", changes: { channelId: undefined }, status: 400 },
  { name: "no type", changes: { type: undefined }, status: 400 },
  { name: "a number as its type", changes: { type: 7 }, status: 400 },
  {
    name: "another tenant",
    changes: {
      conversation: { id: "19:chat", tenantId: "00000000-8888-4777-8666-555555555555" },
      channelData: { tenant: { id: "00000000-8888-4777-8666-555555555555" } },
    },
    status: 401,
  },
  {
    name: "two tenants",
    changes: { channelData: { tenant: { id: "00000000-8888-4777-8666-555555555555" } } },
    status: 401,
  },
  { name: "no tenant", changes: { conversation: { id: "19:chat" }, channelData: {} }, status: 401 },
])("refuses a signed activity of $name", async ({ changes, status }) => {
  expectNothingSaid(await door.post(messageActivity(door.platform, changes)), status);
});

test.each([
  { name: "malformed JSON", body: `{"type": "mess`, status: 400 },
  { name: "a JSON text", body: `"message"`, status: 400 },
  { name: "a JSON list", body: "[]", status: 400 },
  { name: "a JSON null", body: "null", status: 400 },
  { name: "nothing", body: "", status: 400 },
  { name: "300 kB", body: JSON.stringify({ type: "message", text: "a".repeat(300_000) }), status: 413 },
])("refuses a body of $name", async ({ body, status }) => {
  expectNothingSaid(await door.post(body), status);
});

test("refuses a body that is not JSON with 400", async () => {
  const headers = {
    "content-type": "application/x-www-form-urlencoded",
    authorization: `Bearer ${signToken(door.platform)}`,
  };
  expectNothingSaid(await door.post("type=message", headers), 400);
});

test.each(["GET", "PUT", "DELETE"])("answers %s with 405 and an empty body", async (method) => {
  const response = await fetch(door.url, { method });
  expectNothingSaid({ status: response.status, body: await response.text(), headers: response.headers }, 405);
});

test("answers another path with 404 and an empty body", async () => {
  const response = await fetch(new URL("/admin", door.url));
  expectNothingSaid({ status: response.status, body: await response.text(), headers: response.headers }, 404);
});

test("refuses a key that is not endorsed for Teams with 401", async () => {
  const other = await openTestDoor({ endorsements: ["webchat"] });
  const answer = await other.say();
  expect({ ...answer, sent: other.platform.sent.length }).toMatchObject({ status: 401, body: "", sent: 0 });
  await other.close();
});

test("serves Teams alone, even when the key is endorsed for other channels too", async () => {
  const other = await openTestDoor({ endorsements: ["msteams", "webchat", "emulator"] });
  const statuses = [];
  for (const channelId of ["webchat", "emulator", "msteams"]) statuses.push((await other.say({ channelId })).status);
  expect([statuses, other.desk.received.length]).toEqual([[401, 401, 200], 1]);
  await other.close();
});

test("serves a good token, also one that expired 200 s ago", async () => {
  const fresh = await door.say({ id: "fresh" });
  expect({ ...fresh, sent: door.platform.sent.length }).toMatchObject({ status: 200, body: "", sent: 1 });
  const late = { authorization: `Bearer ${signToken(door.platform, { expires_s: -200 })}` };
  expect(await door.post(messageActivity(door.platform, { id: "late" }), late)).toMatchObject({
    status: 200,
    body: "",
  });
  expect(door.platform.sent).toHaveLength(2);
  expect(door.platform.sent[0]?.headers.authorization).toBe(`Bearer ${OUTBOUND_TOKEN}`);
});

test("fetches the signing keys once for many requests", () => {
  expect(door.platform.keyRequests).toBe(1);
});

test("takes the tenant in any case of letters", async () => {
  const tenant = { conversation: { id: "19:chat", conversationType: "personal", tenantId: TENANT_ID.toUpperCase() } };
  expect(await door.say({ id: "upper", ...tenant })).toMatchObject({ status: 200 });
});

test("serves any tenant when the app is for many", async () => {
  const other = await openTestDoor({ settings: { appType: "MultiTenant", tenantId: undefined } });
  const tenant = { tenant: { id: "00000000-8888-4777-8666-555555555555" } };
  await other.say({ conversation: { id: "19:chat", conversationType: "personal" }, channelData: tenant });
  expect(other.desk.received.map(({ caller }) => caller.organisation)).toEqual([
    "00000000-8888-4777-8666-555555555555",
  ]);
  await other.close();
});

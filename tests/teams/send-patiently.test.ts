import { describe, expect, test } from "vitest";
import { sendPatiently } from "../../adapters/teams/send-patiently.ts";
import { FakePlatform, type Refusal } from "./fake-platform.ts";
import { openTestDoor, pauseForever } from "./open-test-door.ts";

/** A door whose waits end at once and are written down, once it has begun to answer. */
async function talkTo(refusals: readonly Refusal[], random = 0.5) {
  const platform = await FakePlatform.start();
  const waits: number[] = [];
  const door = await openTestDoor({
    platform,
    random: () => random,
    pause: async (ms, signal) => {
      if (platform.messages.length === 0) await pauseForever(ms, signal);
      else waits.push(ms);
    },
  });
  platform.refusals = [...refusals];
  const { status } = await door.say();
  const retries = [...waits];
  const errors = door.log.filter(({ level }) => level === "error");
  await door.close();
  await platform.stop();
  return { status, attempts: platform.messages.length, waits: retries, errors };
}

describe("an answer that the platform turns away", () => {
  test.each([412, 429, 502, 503, 504])("with %i is sent again after a jittered second", async (status) => {
    expect(await talkTo([{ status }])).toMatchObject({ status: 200, attempts: 2, waits: [750], errors: [] });
  });

  test("by breaking the connection off is sent again", async () => {
    expect(await talkTo([{ status: 0 }])).toMatchObject({ status: 200, attempts: 2, waits: [750], errors: [] });
  });

  test("waits as long as Retry-After says, and a little more", async () => {
    const refusal = { status: 429, headers: { "retry-after": "3" } };
    expect(await talkTo([refusal])).toMatchObject({ status: 200, attempts: 2, waits: [3_250] });
  });

  test("takes a Retry-After that makes no sense for none", async () => {
    const refusal = { status: 429, headers: { "retry-after": "soon" } };
    expect(await talkTo([refusal])).toMatchObject({ attempts: 2, waits: [750] });
  });

  test("gives up at once when it would have to wait longer than a minute", async () => {
    const refusal = { status: 429, headers: { "retry-after": "61" } };
    expect(await talkTo([refusal])).toMatchObject({
      status: 500,
      attempts: 1,
      waits: [],
      errors: [{ data: { status: 429 } }],
    });
  });

  test("waits twice as long each time and gives up after five attempts", async () => {
    const refusals = Array.from({ length: 9 }, () => ({ status: 429 }));
    const told = await talkTo(refusals, 0);
    expect(told).toMatchObject({
      status: 500,
      attempts: 5,
      waits: [500, 1_000, 2_000, 4_000],
      errors: [{ data: { status: 429 } }],
    });
  });

  test.each([400, 403, 404, 413, 500])("with %i is not sent again", async (status) => {
    expect(await talkTo([{ status }])).toMatchObject({
      status: 500,
      attempts: 1,
      waits: [],
      errors: [{ data: { status } }],
    });
  });
});

test("an answer that was never delivered is given when the same delivery comes again", async () => {
  const platform = await FakePlatform.start();
  const door = await openTestDoor({ platform });
  platform.refusals = [{ status: 403 }];
  expect(await door.say()).toMatchObject({ status: 500, body: "" });
  expect(await door.say()).toMatchObject({ status: 200, body: "" });
  expect(platform.messages).toHaveLength(2);
  await door.close();
  await platform.stop();
});

test("what is logged of a refused answer holds no token and no text of a person", async () => {
  const platform = await FakePlatform.start();
  const door = await openTestDoor({ platform });
  platform.refusals = [{ status: 403 }];
  await door.say({ text: "the gate code is 4711" });
  expect(door.log).toHaveLength(1);
  expect(JSON.stringify(door.log)).not.toMatch(/outbound-token|4711/);
  await door.close();
  await platform.stop();
});

test.each([
  { name: "a date", header: "Thu, 01 Jan 1970 00:00:12 GMT", waits: [2_000] },
  { name: "a date that has passed", header: "Thu, 01 Jan 1970 00:00:01 GMT", waits: [0] },
])("reads a Retry-After that is $name", async ({ header, waits }) => {
  const waited: number[] = [];
  const patience = { pause: async (ms: number) => void waited.push(ms), random: () => 0, now_ms: () => 10_000 };
  const error = { statusCode: 429, response: { headers: new Headers({ "retry-after": header }) } };
  const answers = [Promise.reject(error), Promise.resolve("sent")];
  for (const answer of answers) answer.catch(() => {});
  const sent = await sendPatiently(async () => await answers.shift(), patience, new AbortController().signal);
  expect([sent, waited]).toEqual(["sent", waits]);
});

test("stops trying when it is told to", async () => {
  const stop = new AbortController();
  let attempts = 0;
  const patience = { pause: async () => stop.abort(), random: () => 0, now_ms: () => 0 };
  const send = async () => {
    attempts++;
    throw Object.assign(new Error("busy"), { statusCode: 429 });
  };
  await expect(sendPatiently(send, patience, stop.signal)).rejects.toThrow("busy");
  expect(attempts).toBe(1);
});

import { afterEach, beforeEach, describe, expect, test } from "vitest";
import {
  CALLED_OFF,
  LONG_ANSWER,
  LONG_QUESTION,
  type LongDesk,
  openLongDesk,
  STOPPED,
  TOO_LATE,
} from "../support/long-desk.ts";
import { TENANT_ID } from "./fake-platform.ts";
import { openTestDoor, pauseForever, type TestDoor } from "./open-test-door.ts";

/** The wait before the first message that shows how far work is. */
const FIRST_PROGRESS_ms = 1_500;

let long: LongDesk;
let door: TestDoor;
beforeEach(async () => {
  long = openLongDesk();
  door = await openTestDoor({
    desk: long.desk,
    pause: (ms, signal) => (ms === FIRST_PROGRESS_ms ? Promise.resolve() : pauseForever(ms, signal)),
  });
});
afterEach(() => door.close());

interface Submit {
  readonly title: string;
  readonly data: object;
}
function buttonOf(sent: TestDoor["platform"]["sent"][number] | undefined): Submit {
  const body: readonly { readonly type: string; readonly actions: readonly [Submit] }[] =
    sent?.body.attachments[0].content.body ?? [];
  const row = body.find(({ type }) => type === "ActionSet");
  if (row === undefined) throw new Error("no button");
  return row.actions[0];
}
const summaries = () => door.platform.messages.map(({ method, body }) => [method, body.summary]);

/** Asks, and waits for the message that shows how far the work is. */
async function ask(changes: object = {}) {
  const answered = door.say({ text: LONG_QUESTION, ...changes });
  await door.platform.until(() => door.platform.messages.length === 1);
  const [progress] = door.platform.messages;
  return { answered, progress, button: buttonOf(progress) };
}
const pressOf = (id: string, { data }: Submit, replyToId: string | undefined) => ({
  id,
  text: undefined,
  replyToId,
  value: data,
});

describe("the button under long work", () => {
  test("stops it; both messages are answered, and the button is gone with the message of the work", async () => {
    const { answered, progress, button } = await ask();
    expect(button.title).toBe("Cancel");
    await door.say(pressOf("2", button, progress?.id));
    await answered;
    expect(long.signals.map(({ aborted }) => aborted)).toEqual([true]);
    expect(summaries().slice(1)).toEqual(
      expect.arrayContaining([
        ["POST", CALLED_OFF],
        ["PUT", STOPPED],
      ]),
    );
    expect([long.store.commits, long.faults]).toEqual([[], []]);
    const replaced = door.platform.messages.find(({ method }) => method === "PUT");
    expect(JSON.stringify(replaced?.body)).not.toContain("ActionSet");
  });

  test("pressed in a group by somebody else stops nothing", async () => {
    const group = { conversation: { id: "19:crew", conversationType: "groupChat", tenantId: TENANT_ID } };
    const { answered, progress, button } = await ask(group);
    const ben = { id: "29:ben", name: "Ben", aadObjectId: "ben-object" };
    await door.say({ ...group, ...pressOf("2", button, progress?.id), from: ben });
    expect(summaries().at(-1)).toEqual(["POST", TOO_LATE]);
    expect(long.signals.map(({ aborted }) => aborted)).toEqual([false]);
    long.finish();
    await answered;
    expect(JSON.stringify(door.platform.messages.at(-1)?.body)).toContain(LONG_ANSWER);
  });

  test("sent twice by a client is answered twice and stops one work", async () => {
    const { answered, progress, button } = await ask();
    await Promise.all([door.say(pressOf("2", button, progress?.id)), door.say(pressOf("3", button, progress?.id))]);
    await answered;
    const said = summaries().map(([, summary]) => summary);
    expect(said.filter((summary) => summary === CALLED_OFF || summary === TOO_LATE)).toHaveLength(2);
    expect(said).toContain(CALLED_OFF);
    expect(long.signals).toHaveLength(1);
  });
});

test("cancelar written in the same chat stops it", async () => {
  const { answered } = await ask();
  await door.say({ id: "2", text: "cancelar" });
  await answered;
  expect(long.signals.map(({ aborted }) => aborted)).toEqual([true]);
});

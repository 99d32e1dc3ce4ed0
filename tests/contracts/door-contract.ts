import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Desk, Inbound, Reply } from "../../src/desk.ts";
import type { Card } from "../../src/messages/card.ts";
import { openWalkDesk } from "../support/walk-desk.ts";

/** One message as it stands on somebody's screen now. */
export interface ShownMessage {
  /** Every text of it as a person reads it, in order. */
  readonly text: string;
  readonly buttons: readonly string[];
}
export interface SaidMessage {
  /** The platform's own id: the same id again is the same message, delivered once more. */
  readonly id: string;
  readonly text: string;
}

/** A door between its desk and a stand-in for its platform. */
export interface DoorRig {
  /** Delivers a message as the platform does. @returns the status that the platform gets */
  say(message: SaidMessage): Promise<number>;
  /** Delivers the same without proof that the platform sent it. */
  sayAsStranger(message: SaidMessage): Promise<number>;
  /** Delivers a message with a photo; left out where the door takes none. */
  sayWithPhoto?(message: SaidMessage, photo: Uint8Array): Promise<{ readonly fetched: () => number }>;
  /** Presses the button with this label on the message that is `from` places before the last one that has it. */
  press(label: string, id: string, from?: number): Promise<number>;
  /** Opens the form that is shown where it must be opened, types into its fields and sends it. */
  fillIn(fields: Readonly<Record<string, string>>, id: string): Promise<number>;
  shown(): readonly ShownMessage[];
  /** Whatever in the messages would be a link, a mention or markup made of somebody's text. */
  live(): readonly string[];
  close(): Promise<void>;
}
export interface DoorUnderTest {
  readonly name: string;
  /** Opens a platform for one test. */
  openPlatform(): Promise<{ open(desk: Desk): Promise<DoorRig>; close(): Promise<void> }>;
}

/** A desk that notes what it is asked and answers as the test says. */
class ScriptedDesk implements Desk {
  readonly asked: Inbound[] = [];
  answer: (inbound: Inbound, show: (card: Card) => void, signal: AbortSignal) => Card | Promise<Card> = ({ text }) =>
    say(`answer to ${text}`);

  async receive(...[inbound, show, signal]: Parameters<Desk["receive"]>): Promise<Reply> {
    this.asked.push(inbound);
    return { card: await this.answer(inbound, show, signal), isRepeat: false };
  }
}

const say = (text: string): Card => ({ title: "Answer", summary: text, blocks: [{ kind: "headline", text }] });
const ask = (prompt: string, walk: string, answers: readonly string[]): Card => ({
  title: "Question",
  summary: prompt,
  blocks: [
    { kind: "question", prompt },
    { kind: "buttons", buttons: answers.map((label) => ({ label, say: label, aim: { walk, fact: "cold" } })) },
  ],
});
const FORM: Card = {
  title: "Circuit",
  summary: "Form: circuit",
  blocks: [
    {
      kind: "form",
      topic: "circuit",
      title: "Circuit",
      submit: "Work it out",
      fields: [
        { fact: "element", label: "Element power", required: true, input: { type: "text" } },
        { fact: "run", label: "Length of the run", required: false, input: { type: "text" } },
      ],
    },
  ],
};
/** What people could type to make a card do what they want. */
const NASTY = [
  "<!channel> <@U123> <#C1>",
  "<https://evil.invalid|click here>",
  "[click](https://evil.invalid)",
  "*bold* _slanted_ ~struck~ `code`",
  "<at>Ana</at> @channel @here",
  "&lt;b&gt; & <b>bold</b>",
  "<script>alert(1)</script>",
  "{{DATE(2020-01-01T00:00:00Z,SHORT)}}",
  "javascript:alert(1) :smile:",
];

let platform: Awaited<ReturnType<DoorUnderTest["openPlatform"]>>;
let desk: ScriptedDesk;
let rig: DoorRig;

/** Comes back as soon as this stands on the screen; a test that waits in vain runs out of time. */
async function until(isThere: (shown: readonly ShownMessage[]) => boolean): Promise<void> {
  while (!isThere(rig.shown())) await new Promise((resolve) => setImmediate(resolve));
}
const texts = () => rig.shown().map(({ text }) => text);
const count = (part: string) => texts().filter((text) => text.includes(part)).length;
const seen = (part: string) => until(() => count(part) > 0);
const lastButtons = () => rig.shown().at(-1)?.buttons ?? [];

/** What every chat door must do, whatever its platform. */
export function describeDoorContract(door: DoorUnderTest): void {
  describe(`${door.name} keeps the contract of a door`, () => {
    beforeEach(async () => {
      platform = await door.openPlatform();
      desk = new ScriptedDesk();
      rig = await platform.open(desk);
    });
    afterEach(async () => {
      await rig.close();
      await platform.close();
    });
    checkDeliveries();
    checkButtons();
    checkTexts();
    checkWork();
    checkRestart();
  });
}

function checkDeliveries(): void {
  test("a message is answered once, though it is delivered three times, two of them at once", async () => {
    const message = { id: "101", text: "mix 135" };
    await Promise.all([rig.say(message), rig.say(message)]);
    await seen("answer to mix 135");
    await rig.say(message);
    await rig.say({ id: "102", text: "the end" });
    await seen("answer to the end");
    expect([desk.asked.length, count("answer to mix 135")]).toEqual([2, 1]);
  });

  test("messages that come late and out of order are all answered, each once", async () => {
    for (const id of ["113", "111", "112", "113", "111"]) await rig.say({ id, text: `question ${id}` });
    for (const id of ["111", "112", "113"]) await seen(`answer to question ${id}`);
    expect(["111", "112", "113"].map((id) => count(`answer to question ${id}`))).toEqual([1, 1, 1]);
    expect(new Set(desk.asked.map(({ conversation }) => conversation)).size).toBe(1);
    expect(new Set(desk.asked.map(({ delivery }) => delivery)).size).toBe(3);
  });

  test("a stranger is refused with 401, and nothing happens", async () => {
    expect(await rig.sayAsStranger({ id: "121", text: "mix" })).toBe(401);
    await rig.say({ id: "122", text: "the end" });
    await seen("answer to the end");
    expect(desk.asked.map(({ text }) => text)).toEqual(["the end"]);
    expect(rig.shown()).toHaveLength(1);
  });

  test("a photo reaches the desk, and is fetched only when the desk wants it", async (context) => {
    if (rig.sayWithPhoto === undefined) return context.skip();
    const photo = Uint8Array.from([0xff, 0xd8, 0xff, 7]);
    const { fetched } = await rig.sayWithPhoto({ id: "131", text: "the label" }, photo);
    await seen("answer to the label");
    const [file] = desk.asked[0]?.files ?? [];
    expect(fetched()).toBe(0);
    expect(Buffer.from((await file?.read()) ?? [])).toEqual(Buffer.from(photo));
    expect(fetched()).toBe(1);
  });
}

function checkButtons(): void {
  test("a button of an older question says which question it answers", async () => {
    const prompts = ["How cold?", "How hot?"];
    desk.answer = ({ aim }) =>
      aim ? say(`taken ${aim.walk}`) : ask(prompts.shift() ?? "", `w${prompts.length}`, ["7"]);
    await rig.say({ id: "201", text: "one" });
    await seen("How cold?");
    await rig.say({ id: "202", text: "two" });
    await seen("How hot?");
    await rig.press("7", "203", 1);
    await seen("taken w1");
    expect(desk.asked.at(-1)).toMatchObject({ text: "7", aim: { walk: "w1", fact: "cold" } });
  });

  test("a form brings what was typed into each of its fields", async () => {
    desk.answer = ({ form }) => (form ? say("worked out") : FORM);
    await rig.say({ id: "211", text: "form circuit" });
    await until((shown) => shown.length > 0);
    await rig.fillIn({ element: "4500 W", run: "<60 ft>" }, "212");
    await seen("worked out");
    expect(desk.asked.at(-1)?.form).toEqual({ topic: "circuit", fields: { element: "4500 W", run: "<60 ft>" } });
  });
}

function checkTexts(): void {
  test("a long card arrives whole and in order", async () => {
    const lines = Array.from({ length: 60 }, (_, i) => `line-${String(i).padStart(3, "0")}`);
    desk.answer = () => ({
      title: "Long",
      summary: "long",
      blocks: [
        ...lines
          .slice(0, 20)
          .map((line) => ({ kind: "text", tone: "plain", text: `${line} ${"word ".repeat(300)}` }) as const),
        {
          kind: "table",
          caption: "Table",
          columns: ["a", "b"],
          rows: lines.slice(20).map((line) => [line, "x ".repeat(90)]),
        },
      ],
    });
    await rig.say({ id: "301", text: "long" });
    await seen("line-059");
    expect(
      texts()
        .join(" ")
        .match(/line-\d{3}/g),
    ).toEqual(lines);
  });

  test("whatever stands in a text is read as it was typed, and does nothing", async () => {
    desk.answer = () => ({
      title: NASTY[0] ?? "",
      summary: NASTY.join(" "),
      blocks: NASTY.flatMap((text) => [
        { kind: "text", tone: "plain", text } as const,
        { kind: "rows", rows: [{ label: "Told", value: text }] } as const,
        { kind: "table", caption: text, columns: ["a"], rows: [[text]] } as const,
      ]),
    });
    await rig.say({ id: "311", text: "nasty" });
    const times = (text: string) => texts().join("\n").split(text).length - 1;
    // Text, value, caption and cell of each; the last of them comes last.
    await until(() => times(NASTY.at(-1) ?? "") >= 4);
    for (const text of NASTY) expect(times(text), text).toBeGreaterThanOrEqual(4);
    expect(rig.live()).toEqual([]);
  });

  test("Spanish arrives letter for letter, said and answered", async () => {
    desk.answer = ({ text }) => say(`¿Qué tan fría está el agua, señor Núñez? ${text}`);
    await rig.say({ id: "321", text: "¿cuánto tarda? ñandú" });
    await seen("¿Qué tan fría está el agua, señor Núñez? ¿cuánto tarda? ñandú");
  });
}

function checkWork(): void {
  test("progress is shown while work goes on, and the answer takes its place", async () => {
    let finish: (card: Card) => void = () => {};
    desk.answer = (_inbound, show) => {
      show({
        title: "Will it keep up?",
        summary: "50 of 200",
        blocks: [{ kind: "progress", text: "Sampled days", done: 50, total: 200 }],
      });
      return new Promise((resolve) => {
        finish = resolve;
      });
    };
    await rig.say({ id: "401", text: "size" });
    await seen("Sampled days");
    finish(say("ready"));
    await seen("ready");
    expect([count("Sampled days"), count("ready"), rig.shown().length]).toEqual([0, 1, 1]);
  });

  test("a fault of ours is a sentence with an id, and nothing of what is inside", async () => {
    desk.answer = () => {
      throw new Error("disk full at /var/secret");
    };
    await rig.say({ id: "411", text: "mix" });
    await until((shown) => shown.length > 0);
    expect(texts().join(" ")).toMatch(/\b[0-9a-f]{8}\b/);
    expect(texts().join(" ")).not.toMatch(/disk|secret|Error/);
  });

  test("closing lets the work in hand finish and answers nobody afterwards", async () => {
    let finish: (card: Card) => void = () => {};
    const started = new Promise<void>((resolve) => {
      desk.answer = () => {
        resolve();
        return new Promise((done) => {
          finish = done;
        });
      };
    });
    const sent = rig.say({ id: "421", text: "long work" });
    await started;
    const closing = rig.close();
    finish(say("just in time"));
    await Promise.all([closing, sent.catch(() => 0)]);
    expect(count("just in time")).toBe(1);
    await expect(rig.say({ id: "422", text: "too late" })).rejects.toThrow();
  });
}

function checkRestart(): void {
  test("a walk goes on after a restart in its middle, by typing and by its older buttons", async () => {
    await rig.close();
    const walk = openWalkDesk();
    rig = await platform.open(walk.openDesk());
    await rig.say({ id: "501", text: "barrel" });
    await seen("How large is the drum?");
    await rig.press("55 gal", "502");
    await seen("How much does the hose give?");
    await rig.close();
    rig = await platform.open(walk.openDesk());
    await rig.say({ id: "503", text: "5 gpm" });
    await seen("How cold is the water?");
    await rig.close();
    rig = await platform.open(walk.openDesk());
    await rig.press("40 °F", "504");
    await seen("Is the drum lined?");
    await rig.press("No", "505");
    await seen("Full in 11 min");
    expect(walk.faults).toEqual([]);
    expect(lastButtons()).toContain("How?");
  });

  test("a language that was chosen stays after a restart", async () => {
    await rig.close();
    const walk = openWalkDesk();
    rig = await platform.open(walk.openDesk());
    await rig.say({ id: "511", text: "idioma español" });
    await until((shown) => shown.length === 1);
    await rig.close();
    rig = await platform.open(walk.openDesk());
    await rig.say({ id: "512", text: "ayuda" });
    await until((shown) => shown.length > 1);
    expect(texts().slice(1).join(" ")).toMatch(/pregunt|escriba/i);
  });
}

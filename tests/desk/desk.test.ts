import { describe, expect, test } from "vitest";
import { runTopic } from "../../src/declaration/run-topic.ts";
import { createDesk, type Desk, type Inbound } from "../../src/desk.ts";
import type { Card } from "../../src/messages/card.ts";
import type { Fault } from "../../src/ports/fault-log.ts";
import type { Caller } from "../../src/ports/store.ts";
import type { TopicRunner } from "../../src/ports/topic-runner.ts";
import { fixtureBooks } from "../support/fixture-books.ts";
import { fixtureLibrary } from "../support/fixture-library.ts";
import { createMemoryStore, type MemoryStore } from "../support/memory-store.ts";
import { headlineOf, promptOf, textsOf } from "../support/talk.ts";

const FULL = "barrel 55 gal drum, hose 5 gpm";
const ANA: Caller = { door: "slack", organisation: "acme", user: "U1", name: "Ana" };
const ANA_ON_THE_WEB: Caller = { door: "web", organisation: "acme", user: "ana", name: "Ana" };
const OTHER_COMPANY: Caller = { door: "slack", organisation: "zenith", user: "U1", name: "Zoe" };

interface Bench {
  readonly desk: Desk;
  readonly store: MemoryStore;
  readonly faults: Fault[];
  /** How often a topic was run. */
  readonly runs: string[];
  now_ms: number;
  say(text: string, from?: Caller, more?: Partial<Inbound>): Promise<Card>;
  receive(inbound: Partial<Inbound>, signal?: AbortSignal): ReturnType<Desk["receive"]>;
}

const runNow: TopicRunner["run"] = async (id, facts, report, signal) => {
  signal.throwIfAborted();
  const topic = fixtureLibrary.topics.get(id);
  if (topic === undefined) throw new Error(`no topic ${id}`);
  return runTopic(topic, facts, fixtureBooks, fixtureLibrary.cautions, report);
};

function openBench(run: TopicRunner["run"] = runNow): Bench {
  const store = createMemoryStore();
  const faults: Fault[] = [];
  const runs: string[] = [];
  let ids = 0;
  let codes = 111_110;
  const runner: TopicRunner = {
    run: (topic, ...rest) => {
      runs.push(topic);
      return run(topic, ...rest);
    },
  };
  const bench: Bench = {
    desk: createDesk({
      library: fixtureLibrary,
      books: fixtureBooks,
      store,
      runner,
      clock: { now_ms: () => bench.now_ms },
      newId: () => `0000-${String(++ids).padStart(8, "0")}`,
      newCode: () => String(++codes),
      faults: { report: (fault) => faults.push(fault) },
    }),
    store,
    faults,
    runs,
    now_ms: 1_000_000,
    say: async (text, from = ANA, more = {}) => (await bench.receive({ text, caller: from, ...more })).card,
    receive: (inbound, signal = new AbortController().signal) => {
      const whole = { caller: ANA, conversation: "c1", delivery: `d${++ids}`, text: "", ...inbound };
      return bench.desk.receive(whole, () => {}, signal);
    },
  };
  return bench;
}

describe("duplicates", () => {
  test("the same delivery again gives the same card, runs nothing and commits nothing", async () => {
    const bench = openBench();
    const first = await bench.receive({ text: FULL, delivery: "x1" });
    const again = await bench.receive({ text: FULL, delivery: "x1" });
    expect(first.isRepeat).toBe(false);
    expect(again).toEqual({ card: first.card, isRepeat: true });
    expect(bench.runs).toEqual(["barrel"]);
    expect(bench.store.commits).toHaveLength(1);
  });

  test("a duplicate that arrives while the first is worked on waits and is a repeat", async () => {
    const bench = openBench();
    const [first, again] = await Promise.all([
      bench.receive({ text: FULL, delivery: "x1" }),
      bench.receive({ text: FULL, delivery: "x1" }),
    ]);
    expect([first.isRepeat, again.isRepeat]).toEqual([false, true]);
    expect(bench.runs).toHaveLength(1);
  });

  test("the same delivery id from another user or door is another delivery", async () => {
    const bench = openBench();
    await bench.receive({ text: FULL, delivery: "x1" });
    const other = await bench.receive({ text: "help", delivery: "x1", caller: { ...ANA, user: "U2" } });
    const web = await bench.receive({ text: "help", delivery: "x1", caller: { ...ANA_ON_THE_WEB, user: "U1" } });
    expect([other.isRepeat, web.isRepeat]).toEqual([false, false]);
    expect(other.card.title).toBe("What I can answer");
  });
});

describe("failures of ours", () => {
  test("a commit that fails saves nothing, says nothing was saved, and the id is in the log", async () => {
    const bench = openBench();
    bench.store.faults.failCommit = new Error("disk full");
    const card = await bench.say("barrel");
    const [fault] = bench.faults;
    expect(card.summary).toContain("nothing was saved");
    expect(card.summary).toContain(fault?.id);
    expect(fault).toMatchObject({ doing: "save", door: "slack", workspace: "acme", error: new Error("disk full") });
    expect(bench.store.commits).toEqual([]);
    expect(promptOf(await bench.say("55 gal"))).toBeUndefined();
  });

  test("after a failed commit the same delivery is worked on anew", async () => {
    const bench = openBench();
    bench.store.faults.failCommit = new Error("disk full");
    await bench.receive({ text: FULL, delivery: "x1" });
    const again = await bench.receive({ text: FULL, delivery: "x1" });
    expect(again.isRepeat).toBe(false);
    expect(headlineOf(again.card)).toBe("Full in 11 min");
  });

  test("a commit whose confirmation is lost is still answered, because it is saved", async () => {
    const bench = openBench();
    bench.store.faults.loseConfirmation = new Error("connection lost");
    const reply = await bench.receive({ text: FULL });
    expect(reply.isRepeat).toBe(false);
    expect(headlineOf(reply.card)).toBe("Full in 11 min");
    expect(bench.faults).toEqual([]);
  });

  test("a run that crashes commits nothing and keeps what was there", async () => {
    let isBroken = false;
    const bench = openBench((...args) => (isBroken ? Promise.reject(new Error("boom")) : runNow(...args)));
    await bench.say("barrel 55 gal");
    isBroken = true;
    const card = await bench.say("5 gpm");
    expect(card.summary).toContain("nothing was saved");
    expect(bench.faults).toMatchObject([{ doing: "answer", error: new Error("boom") }]);
    isBroken = false;
    expect(headlineOf(await bench.say("5 gpm"))).toBe("Full in 11 min");
  });

  test("the sentence is in the person's language", async () => {
    const bench = openBench();
    await bench.say("idioma es");
    bench.store.faults.failCommit = new Error("disk full");
    expect((await bench.say(FULL)).summary).toContain("no se guardó nada");
  });

  test("a store that does not open is a sentence too, and the next message is served", async () => {
    const bench = openBench();
    bench.store.faults.failOpen = new Error("no database");
    expect((await bench.say(FULL)).title).toBe("My fault");
    expect(bench.faults).toMatchObject([{ doing: "open" }]);
    delete bench.store.faults.failOpen;
    expect(headlineOf(await bench.say(FULL))).toBe("Full in 11 min");
  });

  test("a door that cannot show progress costs nobody the answer", async () => {
    const bench = openBench();
    const reply = await bench.desk.receive(
      { caller: ANA, conversation: "c1", delivery: "p1", text: FULL },
      () => {
        throw new Error("no such message");
      },
      new AbortController().signal,
    );
    expect(headlineOf(reply.card)).toBe("Full in 11 min");
    expect(bench.faults).toMatchObject([{ doing: "progress" }]);
  });
});

describe("progress and stopping", () => {
  test("progress of a run is shown as a card", async () => {
    const bench = openBench();
    const shown: string[] = [];
    const inbound = { caller: ANA, conversation: "c1", delivery: "p1", text: FULL };
    await bench.desk.receive(inbound, (card) => shown.push(card.summary), new AbortController().signal);
    expect(shown).toEqual(["Working on it: Filling a barrel, 50 %"]);
  });

  test("a message that is stopped from outside saves nothing and says so", async () => {
    const stop = new AbortController();
    const bench = openBench(async (...args) => {
      stop.abort();
      return runNow(...args);
    });
    const reply = await bench.receive({ text: FULL, delivery: "x1" }, stop.signal);
    expect(reply.card.summary).toBe("Stopped before it was done. Nothing was saved.");
    expect(bench.store.commits).toEqual([]);
    expect(bench.faults).toEqual([]);
  });
});

/** A run that goes on until it is told to stop, as a thread does, or until the test lets it finish. */
function openLongRun() {
  const begun: { readonly signal: AbortSignal; readonly finish: () => void }[] = [];
  let wake = () => {};
  const run: TopicRunner["run"] = (id, facts, report, signal) =>
    new Promise((resolve, reject) => {
      signal.addEventListener("abort", () => reject(new Error("stopped")));
      begun.push({ signal, finish: () => resolve(runNow(id, facts, () => {}, new AbortController().signal)) });
      report(1, 2);
      wake();
    });
  const nth = async (index: number) => {
    for (;;) {
      const found = begun[index];
      if (found) return found;
      await new Promise<void>((resolve) => {
        wake = resolve;
      });
    }
  };
  return { run, nth };
}
const CANCEL_SUMMARY = "Cancelled: Filling a barrel. Ask again whenever you like.";
const STOPPED_SUMMARY = "Stopped before it was done. Nothing was saved.";
const TOO_LATE = "There is nothing of yours to cancel any more.";

describe("calling off long work", () => {
  /** Starts a run and waits until its card offers to call it off. */
  async function start(bench: Bench, inbound: Partial<Inbound> = {}) {
    const whole = { caller: ANA, conversation: "c1", delivery: "long", text: FULL, ...inbound };
    let offered = (_: string) => {};
    const say = new Promise<string>((resolve) => {
      offered = resolve;
    });
    const show = (card: Card) => {
      const buttons = card.blocks.find((block) => block.kind === "buttons");
      offered(buttons?.buttons[0]?.say ?? "");
    };
    const reply = bench.desk.receive(whole, show, new AbortController().signal);
    return { reply, say: await say };
  }

  test("the button's text reaches the run's signal at once; both messages are answered and nothing is saved", async () => {
    const long = openLongRun();
    const bench = openBench(long.run);
    const { reply, say } = await start(bench);
    const called = await bench.say(say);
    expect((await long.nth(0)).signal.aborted).toBe(true);
    expect(called.summary).toBe(CANCEL_SUMMARY);
    expect((await reply).card.summary).toBe(STOPPED_SUMMARY);
    expect([bench.store.commits, bench.faults]).toEqual([[], []]);
  });

  test.each(["cancel", "Cancelar"])("%s typed in the same conversation does so too", async (text) => {
    const bench = openBench(openLongRun().run);
    const { reply } = await start(bench);
    expect((await bench.say(text)).summary).toBe(CANCEL_SUMMARY);
    expect((await reply).card.summary).toBe(STOPPED_SUMMARY);
  });

  test("typed in another conversation it stops a walk, in its turn, and the run goes on", async () => {
    const long = openLongRun();
    const bench = openBench(long.run);
    const { reply } = await start(bench);
    const other = bench.say("cancel", ANA, { conversation: "c2" });
    (await long.nth(0)).finish();
    expect(headlineOf((await reply).card)).toBe("Full in 11 min");
    expect((await other).summary).toBe("There is no open question to stop.");
  });

  test("the id works from another conversation of the same person", async () => {
    const bench = openBench(openLongRun().run);
    const { reply, say } = await start(bench);
    expect((await bench.say(say, ANA, { conversation: "c2" })).summary).toBe(CANCEL_SUMMARY);
    expect((await reply).card.summary).toBe(STOPPED_SUMMARY);
  });

  test.each([
    ["another person", { ...ANA, user: "U2" }],
    ["the same user id in another company", OTHER_COMPANY],
    ["the same user id at another door", { ...ANA, door: "web" as const }],
  ])("%s cannot call it off, with its id or without", async (_, stranger) => {
    const long = openLongRun();
    const bench = openBench(long.run);
    const { reply, say } = await start(bench);
    expect((await bench.say(say, stranger)).summary).toBe(TOO_LATE);
    expect((await bench.say("cancel", stranger)).summary).toBe("There is no open question to stop.");
    const run = await long.nth(0);
    expect(run.signal.aborted).toBe(false);
    run.finish();
    expect(headlineOf((await reply).card)).toBe("Full in 11 min");
  });

  test("pressed again while the run ends it says the same, and later that there is nothing to cancel", async () => {
    const bench = openBench(openLongRun().run);
    const { reply, say } = await start(bench);
    const presses = await Promise.all([bench.say(say), bench.say(say)]);
    expect(presses.map(({ summary }) => summary)).toEqual([CANCEL_SUMMARY, CANCEL_SUMMARY]);
    await reply;
    expect((await bench.say(say)).summary).toBe(TOO_LATE);
  });

  test("the same press delivered again is a repeat of its answer", async () => {
    const bench = openBench(openLongRun().run);
    const { reply, say } = await start(bench);
    await bench.receive({ text: say, delivery: "press" });
    await reply;
    const again = await bench.receive({ text: say, delivery: "press" });
    expect([again.card.summary, again.isRepeat]).toEqual([CANCEL_SUMMARY, true]);
  });

  test("what was called off is not begun again when its door sends it again", async () => {
    const bench = openBench(openLongRun().run);
    const { reply, say } = await start(bench, { delivery: "x1" });
    await bench.say(say);
    await reply;
    const again = await bench.receive({ text: FULL, delivery: "x1" });
    expect([again.card.summary, again.isRepeat]).toEqual([STOPPED_SUMMARY, true]);
    expect(bench.runs).toHaveLength(1);
  });

  test("what waits behind the run is answered next, and a second run has an id of its own", async () => {
    const long = openLongRun();
    const bench = openBench(long.run);
    const { reply, say } = await start(bench);
    const behind = bench.say(FULL);
    await bench.say(say);
    await reply;
    (await long.nth(1)).finish();
    expect(headlineOf(await behind)).toBe("Full in 11 min");
    expect((await bench.say(say)).summary).toBe(TOO_LATE);
  });

  test("once the answer is there it is too late, in the person's language", async () => {
    const bench = openBench();
    await bench.say("idioma es");
    const { reply, say } = await start(bench);
    await reply;
    expect(say).toMatch(/^cancelar [0-9a-f]{8}$/);
    expect((await bench.say(say)).summary).toBe("Ya no hay nada suyo que cancelar.");
  });

  test("a store that does not open keeps nobody from calling off", async () => {
    const bench = openBench(openLongRun().run);
    const { reply, say } = await start(bench);
    bench.store.faults.failOpen = new Error("no database");
    expect((await bench.say(say)).summary).toBe(CANCEL_SUMMARY);
    expect((await bench.say("cancel 00000000")).summary).toBe(TOO_LATE);
    expect((await reply).card.summary).toBe(STOPPED_SUMMARY);
  });

  test("stop goes on to mean the guided walk: it waits for the run and leaves it alone", async () => {
    const long = openLongRun();
    const bench = openBench(long.run);
    const { reply } = await start(bench);
    const stop = bench.say("stop");
    const run = await long.nth(0);
    expect(run.signal.aborted).toBe(false);
    run.finish();
    await reply;
    expect((await stop).summary).toBe("There is no open question to stop.");
  });
});

describe("one after the other", () => {
  test("two messages of one person at once are answered in the order they came", async () => {
    const bench = openBench();
    const cards = await Promise.all([bench.say("barrel"), bench.say("55 gal"), bench.say("5 gpm"), bench.say("skip")]);
    expect(cards.map(promptOf)).toEqual([
      "How large is the drum?",
      "How much does the hose give?",
      "How cold is the water?",
      "Is the drum lined?",
    ]);
  });

  test("a person whose run takes long keeps nobody else waiting", async () => {
    let finishFirst = () => {};
    const first = new Promise<void>((resolve) => {
      finishFirst = resolve;
    });
    let isFirst = true;
    const bench = openBench(async (...args) => {
      if (isFirst) {
        isFirst = false;
        await first;
      }
      return runNow(...args);
    });
    const slow = bench.say(FULL);
    const quick = await bench.say(FULL, { ...ANA, user: "U2" });
    expect(headlineOf(quick)).toBe("Full in 11 min");
    expect(bench.store.commits).toHaveLength(1);
    finishFirst();
    expect(headlineOf(await slow)).toBe("Full in 11 min");
  });

  test("units turned in one door at the same time as a message in another are not lost", async () => {
    const bench = openBench();
    await link(bench);
    await Promise.all([bench.say("units si"), bench.say("barrel", ANA_ON_THE_WEB, { conversation: "w" })]);
    const [units] = textsOf(await bench.say("units", ANA_ON_THE_WEB, { conversation: "w2" }));
    expect(units).toContain("SI units");
  });
});

/** Joins Ana's web door to Ana in Slack. */
async function link(bench: Bench): Promise<void> {
  const [told = ""] = textsOf(await bench.say("link"));
  const code = told.replace(/\D/g, "");
  await bench.say(`link ${code}`, ANA_ON_THE_WEB, { conversation: "w" });
}

describe("joining doors", () => {
  test("a walk begun in Slack goes on in the web chat of the same person, and only there", async () => {
    const bench = openBench();
    await bench.say("barrel");
    await bench.say("55 gal");
    await link(bench);
    const card = await bench.say("resume", ANA_ON_THE_WEB, { conversation: "w" });
    expect(promptOf(card)).toBe("How much does the hose give?");
    expect(headlineOf(await bench.say("5 gpm", ANA_ON_THE_WEB, { conversation: "w" }))).toBeUndefined();
    expect((await bench.say("stop")).summary).toBe("There is no open question to stop.");
  });

  test("a walk goes on in another conversation of the same door", async () => {
    const bench = openBench();
    await bench.say("barrel");
    expect(promptOf(await bench.say("resume", ANA, { conversation: "c2" }))).toBe("How large is the drum?");
  });

  test("people who are not joined do not see each other's walks", async () => {
    const bench = openBench();
    await bench.say("barrel");
    const card = await bench.say("resume", ANA_ON_THE_WEB, { conversation: "w" });
    expect(card.summary).toBe("There is nothing to resume. Ask a new question.");
  });

  test("a code works once, for ten minutes, and is private", async () => {
    const bench = openBench();
    const card = await bench.say("link");
    expect(card.isPrivate).toBe(true);
    expect(textsOf(card)[0]).toBe("Your code: 111 111");
    expect((await bench.say("link 111111", ANA_ON_THE_WEB)).summary).toContain("Joined");
    const third = { ...ANA_ON_THE_WEB, user: "third" };
    expect((await bench.say("link 111111", third)).summary).toContain("unknown, used or too old");
    await bench.say("enlazar");
    bench.now_ms += 10 * 60 * 1000;
    expect((await bench.say("link 111112", third)).summary).toContain("unknown, used or too old");
  });

  test("the sixth wrong code in ten minutes is not even tried, and later ones are again", async () => {
    const bench = openBench();
    await bench.say("link");
    for (let wrong = 0; wrong < 5; wrong++) await bench.say(`link 00000${wrong}`, ANA_ON_THE_WEB);
    expect((await bench.say("link 111111", ANA_ON_THE_WEB)).summary).toContain("Too many wrong codes");
    bench.now_ms += 10 * 60 * 1000;
    await bench.say("link");
    expect((await bench.say("link 111112", ANA_ON_THE_WEB)).summary).toContain("Joined");
  });

  test("a code of one workspace means nothing in another", async () => {
    const bench = openBench();
    await bench.say("link");
    expect((await bench.say("link 111111", OTHER_COMPANY)).summary).toContain("unknown, used or too old");
  });
});

test("two workspaces with the same user, conversation and delivery ids share nothing", async () => {
  const bench = openBench();
  await bench.say("barrel", ANA, { delivery: "same" });
  const other = await bench.receive({ text: "resume", caller: OTHER_COMPANY, delivery: "same" });
  expect(other.isRepeat).toBe(false);
  expect(other.card.summary).toBe("There is nothing to resume. Ask a new question.");
});

test("preferences belong to the person and reach their other conversations", async () => {
  const bench = openBench();
  await bench.say("units si");
  await bench.say("idioma es");
  expect(promptOf(await bench.say("barrel", ANA, { conversation: "c9" }))).toBe("¿De qué tamaño es el tambor?");
  expect(bench.store.commits.at(-1)?.person).toMatchObject({ language: "es", units: "si" });
});

test("a pressed button and a sent form reach the conversation", async () => {
  const bench = openBench();
  await bench.say("barrel");
  const walk = bench.store.commits[0]?.state.walk?.id ?? "";
  expect(promptOf(await bench.say("55 gal", ANA, { aim: { walk, fact: "drum" } }))).toBe(
    "How much does the hose give?",
  );
  const form = { topic: "ramp", fields: { run: "12 ft", rise: "1 ft" } };
  expect(headlineOf(await bench.say("", ANA, { form }))).toBe("Slope 8.3 %");
});

import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Caller, Exchange, Person, Store } from "../../src/ports/store.ts";
import { SAMPLE_CARDS } from "../support/sample-cards.ts";
import { ANN, BEN, card, exchangeOf, STRANGER, stateWith } from "../support/store-samples.ts";
import { describeCrewContract } from "./crew-contract.ts";
import { describeJobContract } from "./job-contract.ts";
import { describeOutboxContract } from "./outbox-contract.ts";
import { describeReferencesContract } from "./references-contract.ts";

/** How a kind of store is opened empty, and put away. */
export interface StoreUnderTest {
  readonly name: string;
  open(): Promise<Store>;
  cleanUp?(): Promise<void>;
}

let store: Store;

async function meet(caller: Caller) {
  const workspace = await store.openWorkspace(caller);
  return { workspace, person: await workspace.findPerson(caller) };
}

/** What every store must do, whatever it keeps things in. */
export function describeStoreContract(kind: StoreUnderTest): void {
  describe(`${kind.name} keeps the contract of a store`, () => {
    beforeEach(async () => {
      store = await kind.open();
    });
    afterEach(async () => {
      await store.close();
      await kind.cleanUp?.();
    });
    checkPeople();
    checkConversations();
    checkDeliveries();
    checkWalks();
    checkLinks();
    checkMarks();
    describeJobContract(meet);
    describeCrewContract(meet);
    describeOutboxContract(meet, () => store);
    describeReferencesContract(() => store);
    checkIsolation();
  });
}

function checkPeople(): void {
  test("somebody unknown joins as a technician under the name the platform gives", async () => {
    const { person } = await meet(ANN);
    expect(person).toMatchObject({ name: "Ann", role: "technician", language: "en", units: "us" });
  });

  test("the same caller is the same person every time", async () => {
    const first = await meet(ANN);
    const again = await meet({ ...ANN, name: "Ann with a new name" });
    expect(again.person.id).toBe(first.person.id);
    expect(again.workspace.workspace).toBe(first.workspace.workspace);
  });

  test("five first messages at once make one person", async () => {
    const met = await Promise.all(Array.from({ length: 5 }, () => meet(ANN)));
    expect(new Set(met.map(({ person }) => person.id)).size).toBe(1);
    expect(new Set(met.map(({ workspace }) => workspace.workspace)).size).toBe(1);
  });

  test("two users of one organisation are two people of one workspace", async () => {
    const [ann, ben] = [await meet(ANN), await meet(BEN)];
    expect(ben.person.id).not.toBe(ann.person.id);
    expect(ben.workspace.workspace).toBe(ann.workspace.workspace);
  });

  test("language and units of a committed exchange are remembered", async () => {
    const { workspace, person } = await meet(ANN);
    await workspace.commit(exchangeOf({ ...person, language: "es", units: "si" }));
    expect((await meet(ANN)).person).toEqual({ ...person, language: "es", units: "si" });
  });
}

function checkConversations(): void {
  test("a conversation that never was is unknown", async () => {
    const { workspace, person } = await meet(ANN);
    expect(await workspace.loadConversation(person.id, "c1")).toBeUndefined();
  });

  test("a committed state comes back as it was, the newest one", async () => {
    const { workspace, person } = await meet(ANN);
    await workspace.commit(exchangeOf(person, { state: stateWith("w1") }));
    expect(await workspace.loadConversation(person.id, "c1")).toEqual(stateWith("w1"));
    await workspace.commit(exchangeOf(person, { state: stateWith() }));
    expect(await workspace.loadConversation(person.id, "c1")).toEqual(stateWith());
  });

  test("two people in one conversation have a state each", async () => {
    const [ann, ben] = [await meet(ANN), await meet(BEN)];
    await ann.workspace.commit(exchangeOf(ann.person, { state: stateWith("w1") }));
    expect(await ben.workspace.loadConversation(ben.person.id, "c1")).toBeUndefined();
    await ben.workspace.commit(exchangeOf(ben.person, { state: stateWith("w2") }));
    expect(await ann.workspace.loadConversation(ann.person.id, "c1")).toEqual(stateWith("w1"));
  });
}

function checkDeliveries(): void {
  test.each(Object.entries(SAMPLE_CARDS))("the card %s comes back for its delivery", async (_name, given) => {
    const { workspace, person } = await meet(ANN);
    await workspace.commit(exchangeOf(person, { delivery: "once", card: given }));
    expect(await workspace.findDelivery("once")).toEqual(given);
  });

  test("a delivery that was never answered is unknown", async () => {
    const { workspace } = await meet(ANN);
    expect(await workspace.findDelivery("never")).toBeUndefined();
  });

  test("a second commit of one delivery is refused and changes nothing", async () => {
    const { workspace, person } = await meet(ANN);
    await workspace.commit(exchangeOf(person, { delivery: "twice", card: card("first"), state: stateWith("w1") }));
    const again = { delivery: "twice", card: card("second"), state: stateWith("w2") };
    await expect(workspace.commit(exchangeOf({ ...person, language: "es" }, again))).rejects.toThrow();
    expect(await workspace.findDelivery("twice")).toEqual(card("first"));
    expect(await workspace.loadConversation(person.id, "c1")).toEqual(stateWith("w1"));
    expect((await meet(ANN)).person.language).toBe("en");
  });

  test("of two commits of one delivery at once, one is acknowledged and is there whole", async () => {
    const { workspace, person } = await meet(ANN);
    const both = ["w1", "w2"].map((id) =>
      exchangeOf(person, { delivery: "race", card: card(id), state: stateWith(id) }),
    );
    const settled = await Promise.allSettled(both.map((exchange) => workspace.commit(exchange)));
    expect(settled.map(({ status }) => status).toSorted()).toEqual(["fulfilled", "rejected"]);
    const kept = await workspace.findDelivery("race");
    expect(await workspace.loadConversation(person.id, "c1")).toEqual(stateWith(kept?.title));
  });
}

function checkWalks(): void {
  const walkIn = (person: Person, conversation: string, walk?: string): Exchange =>
    exchangeOf(person, { conversation, state: stateWith(walk) });

  test("no walk is found where none is open", async () => {
    const { workspace, person } = await meet(ANN);
    await workspace.commit(walkIn(person, "c2"));
    expect(await workspace.findOpenWalk(person.id, "c1")).toBeUndefined();
  });

  test("the walk last touched in another conversation is found", async () => {
    const { workspace, person } = await meet(ANN);
    await workspace.commit(walkIn(person, "c1", "here"));
    await workspace.commit(walkIn(person, "c2", "older"));
    await workspace.commit(walkIn(person, "c3", "newer"));
    expect(await workspace.findOpenWalk(person.id, "c1")).toEqual({ conversation: "c3", state: stateWith("newer") });
    await workspace.commit(walkIn(person, "c2", "older, touched"));
    expect(await workspace.findOpenWalk(person.id, "c1")).toMatchObject({ conversation: "c2" });
    expect(await workspace.findOpenWalk(person.id, "c2")).toMatchObject({ conversation: "c3" });
  });

  test("a walk that has ended and the walk of another person are not found", async () => {
    const [ann, ben] = [await meet(ANN), await meet(BEN)];
    await ann.workspace.commit(walkIn(ann.person, "c2", "w1"));
    await ann.workspace.commit(walkIn(ann.person, "c2"));
    await ben.workspace.commit(walkIn(ben.person, "c3", "w2"));
    expect(await ann.workspace.findOpenWalk(ann.person.id, "c1")).toBeUndefined();
  });

  test("a carried walk leaves its old conversation in the commit that brings it here", async () => {
    const { workspace, person } = await meet(ANN);
    await workspace.commit(walkIn(person, "c1", "w1"));
    const carriedFrom = { conversation: "c1", state: stateWith() };
    await workspace.commit(exchangeOf(person, { conversation: "c2", state: stateWith("w1"), carriedFrom }));
    expect(await workspace.loadConversation(person.id, "c1")).toEqual(stateWith());
    expect(await workspace.findOpenWalk(person.id, "c9")).toMatchObject({ conversation: "c2" });
    expect(await workspace.findOpenWalk(person.id, "c2")).toBeUndefined();
  });
}

function checkLinks(): void {
  const PHONE: Caller = { ...ANN, user: "U-PHONE", name: "Somebody new" };

  test("a code joins another caller to the person who was offered it", async () => {
    const { workspace, person } = await meet(ANN);
    await workspace.offerLink(person.id, "4711", 5_000);
    expect(await workspace.acceptLink(PHONE, "4711", 4_999)).toEqual(person);
    expect((await meet(PHONE)).person).toEqual(person);
  });

  test("a code joins somebody who has been met before, too", async () => {
    const [ann, ben] = [await meet(ANN), await meet(BEN)];
    await ann.workspace.offerLink(ann.person.id, "4711", 5_000);
    expect(await ben.workspace.acceptLink(BEN, "4711", 0)).toEqual(ann.person);
    expect((await meet(BEN)).person.id).toBe(ann.person.id);
  });

  test.each([
    { name: "used before", code: "4711", now_ms: 1, use: true },
    { name: "expired this millisecond", code: "4711", now_ms: 5_000, use: false },
    { name: "never offered", code: "4712", now_ms: 1, use: false },
  ])("a code $name joins nobody", async ({ code, now_ms, use }) => {
    const { workspace, person } = await meet(ANN);
    await workspace.offerLink(person.id, "4711", 5_000);
    if (use) await workspace.acceptLink(PHONE, "4711", 1);
    const before = await meet(BEN);
    expect(await workspace.acceptLink(BEN, code, now_ms)).toBeUndefined();
    expect((await meet(BEN)).person).toEqual(before.person);
  });

  test("of two callers with one code at once, one is joined", async () => {
    const { workspace, person } = await meet(ANN);
    await workspace.offerLink(person.id, "4711", 5_000);
    const both = [BEN, PHONE].map((caller) => workspace.acceptLink(caller, "4711", 1));
    expect((await Promise.all(both)).filter((joined) => joined !== undefined)).toEqual([person]);
  });

  test("a code of another workspace joins nobody", async () => {
    const { workspace, person } = await meet(ANN);
    await workspace.offerLink(person.id, "4711", 5_000);
    const elsewhere = await meet(STRANGER);
    expect(await elsewhere.workspace.acceptLink(STRANGER, "4711", 1)).toBeUndefined();
    expect((await meet(STRANGER)).person).toEqual(elsewhere.person);
    expect(await workspace.acceptLink(PHONE, "4711", 1)).toEqual(person);
  });
}

function checkMarks(): void {
  const seen = { caution: "line_pressure_high", about: "{}", act: "seen" } as const;

  test("what was done about a caution comes back with who did it, when and at which door", async () => {
    const { workspace, person } = await meet(ANN);
    await workspace.commit(exchangeOf(person, { at_ms: 1000, marks: [seen] }));
    expect(await workspace.cautionMarks("c1")).toEqual([{ ...seen, by: "Ann", at_ms: 1000, door: "slack" }]);
    expect(await workspace.cautionMarks("c2")).toEqual([]);
  });

  test("only the newest act on each caution and its data counts, newest first, with the reason for a skip", async () => {
    const { workspace, person } = await meet(ANN);
    const skipped = { ...seen, act: "skipped", because: "parts on the truck" } as const;
    const other = { ...seen, about: `{"other":1}` };
    for (const [at_ms, mark] of [seen, other, skipped].entries())
      await workspace.commit(exchangeOf(person, { at_ms, marks: [mark] }));
    expect(await workspace.cautionMarks("c1")).toEqual([
      { ...skipped, by: "Ann", at_ms: 2, door: "slack" },
      { ...other, by: "Ann", at_ms: 1, door: "slack" },
    ]);
  });

  test("two people of one conversation see each other's marks, another workspace sees none", async () => {
    const [ann, ben, stranger] = [await meet(ANN), await meet(BEN), await meet(STRANGER)];
    await ben.workspace.commit(exchangeOf(ben.person, { marks: [seen] }));
    expect(await ann.workspace.cautionMarks("c1")).toMatchObject([{ by: "Ben" }]);
    expect(await stranger.workspace.cautionMarks("c1")).toEqual([]);
  });

  test("what was done about the cautions of a job comes back in whichever conversation it was, as it was shown", async () => {
    const { workspace, person } = await meet(ANN);
    const shown = {
      severity: "must",
      data: { pressure: { kind: "pressure", value: 655 }, note: "told" },
      local: {
        action: "replace",
        asks: { en: "Ask the town.", es: "Pregunte al pueblo." },
        because: { en: "the mains surge", es: "la red sube" },
        by: { basis: "invented", document: "Testbench rules", section: "1" },
      },
    } as const;
    const mark = { ...seen, job: "1001", shown };
    const other = { ...mark, caution: "relief_setting_high", act: "skipped", because: "Monday" } as const;
    await workspace.commit(exchangeOf(person, { at_ms: 1, marks: [mark] }));
    await workspace.commit(exchangeOf(person, { at_ms: 2, conversation: "c2", marks: [other] }));
    await workspace.commit(exchangeOf(person, { at_ms: 3, marks: [{ ...seen, job: "1002" }] }));
    const who = { by: "Ann", door: "slack" };
    expect(await workspace.jobMarks("1001")).toEqual([
      { ...other, ...who, at_ms: 2 },
      { ...mark, ...who, at_ms: 1 },
    ]);
    await workspace.commit(exchangeOf(person, { at_ms: 4, marks: [{ ...seen, act: "unseen", job: "1001" }] }));
    expect((await workspace.jobMarks("1001")).map(({ act }) => act)).toEqual(["unseen", "skipped"]);
    expect(await (await meet(STRANGER)).workspace.jobMarks("1001")).toEqual([]);
  });

  test("a refused exchange marks nothing", async () => {
    const { workspace, person } = await meet(ANN);
    await workspace.commit(exchangeOf(person, { delivery: "d1" }));
    await expect(workspace.commit(exchangeOf(person, { delivery: "d1", marks: [seen] }))).rejects.toThrow();
    expect(await workspace.cautionMarks("c1")).toEqual([]);
  });
}

function checkIsolation(): void {
  test("the same user id in another organisation sees nothing of this one", async () => {
    const [ann, stranger] = [await meet(ANN), await meet(STRANGER)];
    await ann.workspace.commit(exchangeOf(ann.person, { delivery: "secret", state: stateWith("w1") }));
    expect(await stranger.workspace.findDelivery("secret")).toBeUndefined();
    expect(await stranger.workspace.loadConversation(ann.person.id, "c1")).toBeUndefined();
    expect(await stranger.workspace.findOpenWalk(ann.person.id, "c9")).toBeUndefined();
  });

  const step = fc.record({
    caller: fc.constantFrom(ANN, BEN, STRANGER),
    conversation: fc.constantFrom("c1", "c2"),
    delivery: fc.constantFrom("d1", "d2", "d3", "d4", "d5"),
    walk: fc.option(fc.constantFrom("w1", "w2"), { nil: undefined }),
  });

  test("after any exchanges, every workspace holds exactly its own", async () => {
    let run = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 12 }), async (steps) => {
        run += 1;
        const apart = (caller: Caller): Caller => ({ ...caller, organisation: `${caller.organisation}-${run}` });
        const cards = new Map<string, string>();
        const states = new Map<string, string | undefined>();
        for (const [index, { caller, conversation, delivery, walk }] of steps.entries()) {
          const { workspace, person } = await meet(apart(caller));
          const said = { conversation, delivery, card: card(`${run} ${index}`), state: stateWith(walk) };
          const answered = `${caller.organisation} ${delivery}`;
          const committed = workspace.commit(exchangeOf(person, said));
          if (cards.has(answered)) {
            await expect(committed).rejects.toThrow();
            continue;
          }
          await committed;
          cards.set(answered, `${run} ${index}`);
          states.set(`${caller.organisation} ${caller.user} ${conversation}`, walk);
        }
        for (const caller of [ANN, BEN, STRANGER]) {
          const { workspace, person } = await meet(apart(caller));
          for (const delivery of ["d1", "d2", "d3", "d4", "d5"])
            expect((await workspace.findDelivery(delivery))?.title).toBe(
              cards.get(`${caller.organisation} ${delivery}`),
            );
          for (const conversation of ["c1", "c2"]) {
            const key = `${caller.organisation} ${caller.user} ${conversation}`;
            const state = await workspace.loadConversation(person.id, conversation);
            expect(state).toEqual(states.has(key) ? stateWith(states.get(key)) : undefined);
          }
        }
      }),
      { numRuns: 40 },
    );
  });
}

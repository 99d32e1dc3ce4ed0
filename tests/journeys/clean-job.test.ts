import { describe, expect, test } from "vitest";
import { DOORS } from "../../src/ports/store.ts";
import { SMALL_JPEG } from "../support/small-jpeg.ts";
import { type Play, play, rowsOf } from "./play.ts";

/** Many messages, each committed to the disk, while other tests run [ms]. */
const LONGEST_ms = 120_000;
const NUMBER = "1015";
const PHOTO = { name: "panel.jpg", bytes: SMALL_JPEG };

/** A job from the first call to the manager's Monday, on which nothing is left open. */
async function cleanJob(crew: Play): Promise<void> {
  await beginAndPlan(crew);
  crew.waitsUntil("2026-11-27T13:05:00Z");
  await survey(crew);
  await askAround(crew);
  await startUp(crew);
  await close(crew);
  crew.waitsUntil("2026-11-30T14:05:00Z");
  await readAsManager(crew);
}

async function beginAndPlan({ answers, says, house }: Play): Promise<void> {
  await answers("lupe", "job new", "A. B.", "Ostrowick");
  await says("lupe", "tomorrow", `Job ${NUMBER} is begun: A. B., Ostrowick.`);
  await says("lupe", `job ${NUMBER} plan tomorrow ebbe, wren`, "2026-11-27: Ebbe Tarnowell, Wren Oduyami");
  await says("lupe", `job ${NUMBER} unit hollin-50`, "unit: Hollin 50");
  await says("lupe", "permit P-2120", "permit: P-2120");
  expect(await house.job(NUMBER)).toMatchObject({
    ...{ customer: "A. B.", place: "Ostrowick", status: "planned", day: "2026-11-27" },
    ...{ people: ["ebbe", "wren"], model: "hollin-50", permit: "P-2120" },
  });
}

async function survey({ says, presses, sends, house }: Play): Promise<void> {
  await says("ebbe", "today", "Your jobs: 3");
  await presses("ebbe", `Job ${NUMBER}`, `Job ${NUMBER}: A. B., Ostrowick.`);
  await says("ebbe", "survey", "Where does the heater stand?");
  await presses("ebbe", "Basement", "How large is the room?");
  await says("ebbe", "1400 cu ft", "What door does the room have?");
  await presses("ebbe", "Plain");
  await presses("ebbe", "From the room");
  await says("ebbe", "34 in", "Narrowest passage: 34 in");
  await presses("ebbe", "Electric tank");
  await presses("ebbe", "Nothing burns", "Where does the condensate go?");
  // What is said of a photo answers no question, and the question stands.
  const asked = await sends("ebbe", PHOTO, "the panel, two free spaces", "Note kept", "Where does the condensate go?");
  expect(asked.text).not.toMatch(/I do not know|Find a fault/);
  await says("ebbe", "drain with air gap");
  await presses("ebbe", "No");
  await says("ebbe", "no pan");
  await says("ebbe", "66 psi");
  await says("ebbe", "yes", "Closed system: Yes");
  await presses("ebbe", "No expansion tank");
  await presses("ebbe", "No");
  await says("ebbe", "240 V");
  await says("ebbe", "40 ft");
  await presses("ebbe", "Yes");
  await says("ebbe", "3 people");
  await says("ebbe", "2 bathrooms");
  await presses("ebbe", "None of these");
  // The survey and the kit name one and the same tank.
  const [size] = [/Expansion tank: 4\.4 gal, air set to 66 psi/];
  const end = await says("ebbe", "125 F", "The survey is whole: 23 facts.", size, "Expansion tank, 4.4 gal", "176 lb");
  expect(end.buttons).toContain("Kit");
  const job = await house.job(NUMBER);
  expect(job).toMatchObject({ status: "surveyed", notes: [{ text: "the panel, two free spaces" }] });
  expect(await house.file(job.files[0]?.hash ?? "")).toBeDefined();
}

/** What was measured is asked nowhere again. */
async function askAround({ says, presses, house }: Play): Promise<void> {
  const before = (await house.history(NUMBER)).length;
  const kit = await says("ebbe", "kit", "To load: 1 of 16 kinds of parts.", /On the truck/);
  expect(kit.text).not.toContain("Name a job with a crew");
  await says("ebbe", "size days=20", /3 of 20 sampled days/, /People/);
  await presses("ebbe", "Store at 140 °F, mixing valve", "0 of 20 sampled days run cold");
  await says("ebbe", "room", "vents by draft");
  await presses("ebbe", "No", /Balance|room/);
  await says("ebbe", "circuit", "rated current");
  await presses("ebbe", "Skip", "10 AWG Cu", "A licensed electrician decides and connects");
  const caution = await says("ebbe", "caution", "nothing takes up the growth of the water");
  expect(caution.buttons).toContain("Seen, done");
  await says("ebbe", "seen heavy_to_lift");
  expect((await house.history(NUMBER)).length).toBeGreaterThanOrEqual(before);
}

async function startUp({ answers, says, presses, house }: Play): Promise<void> {
  await says("ebbe", "startup", "Is the tank full, with the power still off?");
  await presses("ebbe", "Done", "140 °F (60 °C) burns in seconds");
  await answers("ebbe", "done", "done");
  const outside = await says("ebbe", "92 psi", "92 psi is not accepted. Accepted: 20 psi to 80 psi.");
  expect(outside.buttons).toContain("Look for the fault");
  expect((await house.job(NUMBER)).readings["line_pressure"]?.isAccepted).toBe(false);
  await says("ebbe", "66 psi", "66 psi is accepted");
  await answers("ebbe", "65 psi", "done", "0.2 ohm", "239 V", "done", "done", "140 F", "done", "68 F", "15 F");
  await says("ebbe", "118 F", "118 °F is accepted");
  await says("ebbe", "done", "All 15 steps are taken");
  const { status, readings } = await house.job(NUMBER);
  expect(status).toBe("under_way");
  expect(Object.values(readings).filter(({ isAccepted }) => !isAccepted)).toEqual([]);
}

async function close({ says, presses, readsTeam, house }: Play): Promise<void> {
  await says("ebbe", "done", "Were the parts of the kit list used as listed?");
  await presses("ebbe", "Yes", `Job ${NUMBER} is complete.`, "The team's channel gets the summary.");
  expect(await house.job(NUMBER)).toMatchObject({ status: "complete", items: [], parts: { heater: 1 } });
  const [summary, thread, ...others] = await readsTeam();
  expect(others).toEqual([]);
  expect(thread?.follows).toBe(summary?.id);
  expect(summary?.card.title).toBe(`Job ${NUMBER}: complete`);
  expect(summary && rowsOf(summary.card)).toMatchObject({ Customer: "A. B.", Readings: "7 of 7 accepted" });
  expect(thread && rowsOf(thread.card)).toMatchObject({ "Tank temperature": "140 °F" });
  const table = thread?.card.blocks.find((block) => block.kind === "table");
  expect(table?.rows).toContainEqual(["Supply voltage", "239 V", "240 V", "Accepted"]);
  const files = (thread?.card.blocks ?? []).flatMap((block) => (block.kind === "file" ? [block.file] : []));
  expect(files.map(({ type }) => type)).toEqual(expect.arrayContaining(["image/jpeg", "application/pdf"]));
  for (const { hash } of files) expect(await house.file(hash)).toBeDefined();
}

async function readAsManager({ says }: Play): Promise<void> {
  await says("tobias", `record ${NUMBER}`, `Record of job ${NUMBER}: A. B., Ostrowick.`, /record\.pdf/);
  await says("tobias", "today", "Digest of the week");
  await says("tobias", "digest last week", "finished 3", /Opened jobs/);
}

describe("a job on which nothing goes wrong", () => {
  test.each(DOORS)("through %s", (door) => play("clean-job", door, cleanJob), LONGEST_ms);
});

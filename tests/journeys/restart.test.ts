import { expect, test } from "vitest";
import { DOORS } from "../../src/ports/store.ts";
import { SMALL_JPEG } from "../support/small-jpeg.ts";
import { openJourneyHouse } from "./journey-house.ts";
import { JOURNEY_DOORS } from "./play.ts";

test.each(DOORS)("a walk goes on where it was after the house was shut and opened again, through %s", async (door) => {
  const house = await openJourneyHouse(JOURNEY_DOORS[door]);
  try {
    await house.door.say("ebbe", "job 1006");
    await house.door.say("ebbe", "startup");
    await house.door.say("ebbe", "done");
    await house.door.say("ebbe", "", [{ name: "drain.jpg", bytes: SMALL_JPEG }]);
    const asked = await house.door.say("ebbe", "done");
    expect(asked.text).toContain("Is every joint dry under full pressure?");
    await house.restart();
    // A terminal begins with an empty screen; everywhere else what stood there can still be pressed.
    const next = door === "terminal" ? house.door.say("ebbe", "done") : house.door.press("ebbe", "Done");
    expect((await next).text).toMatch(/why is it left like this|What does the tire gauge read/);
    const job = await house.job("1006");
    expect(job.facts).toMatchObject({
      start_filled: { value: "done" },
      start_purged: { value: "done" },
      start_tight: { value: "done" },
    });
    expect(await house.file(job.files[0]?.hash ?? "")).toEqual(Buffer.from(SMALL_JPEG));
    expect(house.faults).toEqual([]);
  } finally {
    await house.close();
  }
});

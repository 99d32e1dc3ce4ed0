import type { Settings } from "../src/boundary/settings.ts";
import { describeClosed, describeStart } from "./commands/describe-start.ts";
import { pickQuestions, pickToday } from "./commands/pick-questions.ts";
import { shutInTurn, untilStopped } from "./commands/until-stopped.ts";
import { type DoorState, openDoors } from "./open-doors.ts";
import { openHouse } from "./open-house.ts";

const DOOR_NAMES = { web: "Web", slack: "Slack", teams: "Teams" } as const;
/** How long the doors may take to finish what is going on; then the process ends all the same. */
const LONGEST_STOP_ms = 15_000;

/** Opens the house and its doors, says where they are, and runs until it is told to stop. */
export async function runStart(settings: Settings, warnings: readonly string[], root: string): Promise<number> {
  // Listens before there is anything to stop: a signal that comes while the doors open is kept, not deadly.
  const stopped = untilStopped(process);
  const house = await openHouse(settings, root);
  const { company } = house.books;
  const questions = { en: pickQuestions(house.library, "en"), es: pickQuestions(house.library, "es") };
  const doors = await openDoors(house, settings, root, { questions, ...pickToday(house.library) });
  const shut = [shutDoors(doors), () => house.close()];
  const closed = doors.find((state) => state.name === "web" && !state.isOpen);
  if (closed && !closed.isOpen) {
    await shutInTurn(shut);
    process.stderr.write(`The web chat did not open: ${closed.because.join("\n")}.\n`);
    return 1;
  }
  process.stdout.write(
    describeStart({ company, doors: doors.flatMap(toLines), questions: questions[company.language], warnings }),
  );
  for (const warning of warnings) house.log.warn({ because: warning }, "a setting to look at");
  const signal = await stopped;
  stopHardOnSecondSignal();
  process.stdout.write("\nStopping. What is going on is finished first.\n");
  const failed = await shutInTurn(shut);
  for (const error of failed) house.log.error({ error, signal }, "something did not shut");
  return failed.length === 0 ? 0 : 1;
}

/** All doors at once: each finishes its own work, and one that fails does not cut another short. */
function shutDoors(doors: readonly DoorState[]): () => Promise<void> {
  return async () => {
    const closing = doors.map(async (state) => state.isOpen && (await state.door.close()));
    const failed = (await Promise.allSettled(closing)).find((closed) => closed.status === "rejected");
    if (failed) throw new Error("a door did not shut", { cause: failed.reason });
  };
}

function stopHardOnSecondSignal(): void {
  untilStopped(process).then(() => process.exit(1));
  setTimeout(() => process.exit(1), LONGEST_STOP_ms).unref();
}

function toLines(state: DoorState): readonly string[] {
  return state.isOpen ? [state.door.describe] : describeClosed(DOOR_NAMES[state.name], state.because);
}

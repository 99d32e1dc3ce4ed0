import type { FaultLog } from "../../src/ports/fault-log.ts";
import type { Log } from "./open-log.ts";

/** Writes faults of ours to the log, each under the id that the person was given. */
export function createFaultLog(log: Log): FaultLog {
  return {
    report: ({ id, doing, door, workspace, error }) => {
      const known = error instanceof Error ? error : new Error("something was thrown that is no error");
      log.error({ id, doing, door, error: known, ...(workspace !== undefined && { workspace }) }, "a fault of ours");
    },
  };
}

import { type Logger, LogLevel } from "@slack/bolt";

/** What the door needs of a log; pino's logger fits. */
export interface DoorLog {
  info(data: object, message: string): void;
  warn(data: object, message: string): void;
  error(data: object, message: string): void;
}

/** The same log, with the name of this door on every line. */
export function nameDoor(log: DoorLog): DoorLog {
  const named = (data: object) => ({ door: "slack", ...data });
  return {
    info: (data, message) => log.info(named(data), message),
    warn: (data, message) => log.warn(named(data), message),
    error: (data, message) => log.error(named(data), message),
  };
}

/** Lets Bolt and its client write to the same log. What they say at debug level holds payloads and is left out. */
export function toBoltLogger(log: DoorLog): Logger {
  const said = (parts: readonly unknown[]) => parts.map(String).join(" ");
  const about = (parts: readonly unknown[]) => ({ from: "bolt", error: parts.find((part) => part instanceof Error) });
  return {
    debug: () => {},
    info: (...parts) => log.info(about(parts), said(parts)),
    warn: (...parts) => log.warn(about(parts), said(parts)),
    error: (...parts) => log.error(about(parts), said(parts)),
    setLevel: () => {},
    getLevel: () => LogLevel.INFO,
    setName: () => {},
  };
}

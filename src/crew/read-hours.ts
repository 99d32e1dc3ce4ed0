import type { Shift } from "./crew.ts";

const DAY_min = 1440;
const SHIFT = /^(\d{1,2}):([0-5]\d) ?(?:-|–|to|a) ?(\d{1,2}):([0-5]\d)$/;
const NONE = ["none", "off", "ninguno", "ninguna", "libre"];

/**
 * Hours of a day as people type them: "07:00-15:30", two stretches with a comma between, or "none".
 * A stretch that ends before it begins ends on the next day.
 * @returns nothing where they cannot be read
 */
export function readHours(typed: string): readonly Shift[] | undefined {
  const text = typed.trim().toLowerCase();
  if (NONE.includes(text)) return [];
  const shifts = text.split(/ ?[,;] ?/).map(readShift);
  const good = shifts.filter((shift) => shift !== undefined);
  return good.length === shifts.length ? good : undefined;
}

function readShift(text: string): Shift | undefined {
  const [, fromHour, fromMinute, toHour, toMinute] = SHIFT.exec(text) ?? [];
  const from_min = Number(fromHour) * 60 + Number(fromMinute);
  const to_min = Number(toHour) * 60 + Number(toMinute);
  if (!(from_min < DAY_min && to_min <= DAY_min && from_min !== to_min)) return undefined;
  return { from_min, to_min: to_min > from_min ? to_min : to_min + DAY_min };
}

/** Hours by the clock on the wall, as they are typed. */
export function writeHours(shifts: readonly Shift[]): string {
  return shifts.map(({ from_min, to_min }) => `${clock(from_min)}-${clock(to_min)}`).join(", ");
}

function clock(minutes: number): string {
  // Midnight at the end of a day is 24:00; past it the clock begins anew.
  const within = minutes > DAY_min ? minutes - DAY_min : minutes;
  const pad = (value: number) => String(value).padStart(2, "0");
  return `${pad(Math.floor(within / 60))}:${pad(within % 60)}`;
}

import { toBase } from "../units/convert.ts";
import { type DayProgram, mostChanges, type Setting } from "./day-program.ts";
import type { RunMode, UnitCase } from "./unit-case.ts";

export interface ScheduleFacts {
  readonly people: number;
  readonly bathrooms: number;
  readonly wanted_C: number;
  readonly mixing_valve: boolean | undefined;
}

/** Hours of heating ahead that are tried. */
const AHEAD_h = [0, 2, 4] as const;
/** How far the tank may be let down outside the hours ahead, so that there is something to heat up to [K]. */
const LET_DOWN_K = toBase(9, "F_diff");
/** Above the wanted temperature by this, a lowered setpoint still delivers it: judgement [K]. */
const OVER_WANTED_K = toBase(5, "F_diff");
/** With a mixing valve heat may be stored up to here, where health guidance wants it anyway [C]. */
const STORE_AHEAD_C = toBase(140, "F");
/** Less than this is no change worth making [K]. */
const LEAST_CHANGE_K = 1;

/** The program that never changes anything. */
export function leaveAlone({ mode, setpoint_C }: UnitCase): DayProgram {
  const usual: Setting = { mode, setpoint_C };
  return { ahead_h: 0, settings: { dear: usual, before: usual, other: usual, level: usual } };
}

/**
 * The programs that are tried: in dear hours up to three setpoints, in the usual mode or with the heat pump alone; before
 * them two or four hours of heating ahead, from a tank that was let down or, with a mixing valve, to a hotter one.
 */
export function candidates(known: UnitCase, facts: ScheduleFacts): readonly DayProgram[] {
  const { model, mode, plan } = known;
  const modes = new Set<RunMode>([mode]);
  if (model.heater.controls.policies.includes("heat_pump_only")) modes.add("heat_pump_only");
  const programs = [...modes].flatMap((dearMode) =>
    dearSetpoints_C(known, facts).flatMap((dear_C) =>
      aheadOf(known, facts).map(({ ahead_h, before_C, other_C }): DayProgram => {
        const usual: Setting = { mode, setpoint_C: known.setpoint_C };
        return {
          ahead_h,
          settings: {
            dear: { mode: dearMode, setpoint_C: Math.min(dear_C, other_C) },
            before: { mode, setpoint_C: before_C },
            other: { mode, setpoint_C: other_C },
            level: usual,
          },
        };
      }),
    ),
  );
  return programs.filter((program) => {
    const changes = mostChanges(program, plan);
    return changes > 0 && changes <= model.changesADay;
  });
}

/** Setpoints for dear hours: the usual one, one that still delivers what is wanted, and the lowest of the unit. */
function dearSetpoints_C({ model, setpoint_C }: UnitCase, { wanted_C }: ScheduleFacts): readonly number[] {
  const [lowest_C] = model.heater.controls.setpoint_C;
  const still_C = wanted_C + OVER_WANTED_K;
  const all = [setpoint_C, still_C, lowest_C];
  return [...new Set(all.map((low_C) => Math.min(setpoint_C, Math.max(lowest_C, low_C))))];
}

interface Ahead {
  readonly ahead_h: number;
  readonly before_C: number;
  readonly other_C: number;
}

function aheadOf({ model, setpoint_C }: UnitCase, { wanted_C, mixing_valve }: ScheduleFacts): readonly Ahead[] {
  const [lowest_C, highest_C] = model.heater.controls.setpoint_C;
  const letDown_C = Math.max(lowest_C, wanted_C, setpoint_C - LET_DOWN_K);
  const hotter_C = Math.min(highest_C, STORE_AHEAD_C);
  return AHEAD_h.flatMap((ahead_h): Ahead[] => {
    if (ahead_h === 0) return [{ ahead_h, before_C: setpoint_C, other_C: setpoint_C }];
    const letDown = { ahead_h, before_C: setpoint_C, other_C: letDown_C };
    const hotter = { ahead_h, before_C: hotter_C, other_C: setpoint_C };
    return [
      ...(letDown_C <= setpoint_C - LEAST_CHANGE_K ? [letDown] : []),
      ...(mixing_valve === true && hotter_C >= setpoint_C + LEAST_CHANGE_K ? [hotter] : []),
    ];
  });
}

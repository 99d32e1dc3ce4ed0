import { toBase } from "../../units/convert.ts";
import { type KitRule, some } from "../kit-rule.ts";

/** Hotter than this must not leave a tub or shower. */
const TAP_LIMIT_C = toBase(120, "F");

export const rule: KitRule = {
  id: "tempering",
  asks: ["setpoint", "occupants", "mixing_valve"],
  parts: ({ setpoint_C = 0, occupants, mixing_valve }) => {
    if (mixing_valve === true) return undefined;
    return setpoint_C > TAP_LIMIT_C || occupants === "frail"
      ? [some("mixing-valve"), some("mixing-valve-union", 3)]
      : undefined;
  },
  source: { basis: "published", document: "IPC", edition: "2021", section: "412.5: 120 F; valve to ASSE 1017" },
  cases: {
    fires: [
      {
        name: "kept at 140 F",
        site: { setpoint_C: toBase(140, "F") },
        brings: [some("mixing-valve"), some("mixing-valve-union", 3)],
      },
      { name: "an old couple at 120 F", site: { setpoint_C: toBase(120, "F"), occupants: "frail" } },
    ],
    silent: [
      { name: "kept at 120 F", site: { setpoint_C: toBase(120, "F"), occupants: "sturdy" } },
      { name: "a valve is there", site: { setpoint_C: toBase(140, "F"), mixing_valve: true } },
    ],
  },
};

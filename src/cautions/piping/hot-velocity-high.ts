import { q } from "../../declaration/answer.ts";
import { COPPER_VELOCITY, PLASTIC_VELOCITY, velocityLimit_m_s } from "../../physics/velocity-limit.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

export const caution = declareCaution({
  id: "hot_velocity_high",
  severity: "should",
  cites: [
    { ...COPPER_VELOCITY, checkedOn: "2026-11-25" },
    { ...PLASTIC_VELOCITY, checkedOn: "2026-11-25" },
  ],
  decides: "plumber",
  data: { velocity: "velocity", limit: "velocity" },
  check: ({ hotPipeVelocity_m_s, hotPipe_C, pipeMetal }) => {
    if (hotPipeVelocity_m_s === undefined || hotPipe_C === undefined || pipeMetal === undefined) return undefined;
    const limit_m_s = velocityLimit_m_s(pipeMetal, "hot", hotPipe_C);
    if (!isOver(hotPipeVelocity_m_s, limit_m_s)) return undefined;
    return { velocity: q("velocity", hotPipeVelocity_m_s), limit: q("velocity", limit_m_s) };
  },
  examples: {
    fires: [
      {
        name: "6 ft/s in copper at 120 °F",
        site: { hotPipeVelocity_m_s: toBase(6, "ft_s"), hotPipe_C: toBase(120, "F"), pipeMetal: "copper" },
      },
      {
        name: "4 ft/s in copper at 160 °F",
        site: { hotPipeVelocity_m_s: toBase(4, "ft_s"), hotPipe_C: toBase(160, "F"), pipeMetal: "copper" },
      },
    ],
    silent: [
      {
        name: "exactly 5 ft/s in copper at 140 °F",
        site: { hotPipeVelocity_m_s: toBase(5, "ft_s"), hotPipe_C: toBase(140, "F"), pipeMetal: "copper" },
      },
      {
        name: "6 ft/s in plastic",
        site: { hotPipeVelocity_m_s: toBase(6, "ft_s"), hotPipe_C: toBase(120, "F"), pipeMetal: "plastic" },
      },
      { name: "temperature not known", site: { hotPipeVelocity_m_s: toBase(9, "ft_s"), pipeMetal: "copper" } },
    ],
  },
});

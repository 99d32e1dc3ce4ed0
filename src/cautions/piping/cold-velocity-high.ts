import { q } from "../../declaration/answer.ts";
import { COPPER_VELOCITY, PLASTIC_VELOCITY, velocityLimit_m_s } from "../../physics/velocity-limit.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

/** Any cold water will do: the limit for cold pipes does not depend on it. */
const COLD_C = 10;

export const caution = declareCaution({
  id: "cold_velocity_high",
  severity: "should",
  cites: [
    { ...COPPER_VELOCITY, checkedOn: "2026-11-25" },
    { ...PLASTIC_VELOCITY, checkedOn: "2026-11-25" },
  ],
  decides: "plumber",
  data: { velocity: "velocity", limit: "velocity" },
  check: ({ coldPipeVelocity_m_s, pipeMetal }) => {
    if (coldPipeVelocity_m_s === undefined || pipeMetal === undefined) return undefined;
    const limit_m_s = velocityLimit_m_s(pipeMetal, "cold", COLD_C);
    if (!isOver(coldPipeVelocity_m_s, limit_m_s)) return undefined;
    return { velocity: q("velocity", coldPipeVelocity_m_s), limit: q("velocity", limit_m_s) };
  },
  examples: {
    fires: [{ name: "9 ft/s in copper", site: { coldPipeVelocity_m_s: toBase(9, "ft_s"), pipeMetal: "copper" } }],
    silent: [
      { name: "exactly 8 ft/s in copper", site: { coldPipeVelocity_m_s: toBase(8, "ft_s"), pipeMetal: "copper" } },
      { name: "pipe not known", site: { coldPipeVelocity_m_s: toBase(9, "ft_s") } },
    ],
  },
});

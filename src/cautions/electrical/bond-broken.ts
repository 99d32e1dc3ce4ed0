import { q } from "../../declaration/answer.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

const MOST_ohm = 1;

export const caution = declareCaution({
  id: "bond_broken",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "NEC (NFPA 70)",
      edition: "forum quotations",
      section: "250.104: metal water pipe is bonded; a hot-to-cold jumper is a local matter",
      checkedOn: "2026-11-25",
    },
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "under 1 ohm hot to cold to tank to ground",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "electrician",
  data: { bond: "resistance" },
  check: ({ bond_ohm }) =>
    bond_ohm !== undefined && isOver(bond_ohm, MOST_ohm) ? { bond: q("resistance", bond_ohm) } : undefined,
  examples: {
    fires: [{ name: "dielectric unions, 2 kΩ across", site: { bond_ohm: 2000 } }],
    silent: [
      { name: "0.3 ohm", site: { bond_ohm: 0.3 } },
      { name: "not measured", site: { hasDielectricFitting: true } },
    ],
  },
});

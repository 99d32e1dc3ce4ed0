import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "unlike_metals",
  severity: "must",
  cites: [
    {
      basis: "from_memory",
      document: "IPC",
      edition: "2021",
      section: "605.24: copper alloy to steel; the section has moved between editions",
      checkedOn: "2026-11-25",
    },
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "listed dielectric fitting or brass between them",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: {},
  check: ({ joinsUnlikeMetals, hasDielectricFitting }) =>
    joinsUnlikeMetals === true && hasDielectricFitting !== true ? {} : undefined,
  examples: {
    fires: [
      { name: "copper on a steel port, fitting not known", site: { joinsUnlikeMetals: true } },
      { name: "copper straight on steel", site: { joinsUnlikeMetals: true, hasDielectricFitting: false } },
    ],
    silent: [
      { name: "dielectric nipples", site: { joinsUnlikeMetals: true, hasDielectricFitting: true } },
      { name: "plastic pipe", site: { joinsUnlikeMetals: false } },
    ],
  },
});

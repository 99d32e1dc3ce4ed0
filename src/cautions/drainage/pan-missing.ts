import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "pan_missing",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IPC",
      edition: "2021",
      section: "504.7: where a leak would do damage",
      checkedOn: "2026-11-25",
    },
    { basis: "from_memory", document: "IRC", edition: "2021", section: "P2801.6", checkedOn: "2026-11-25" },
    { basis: "from_memory", document: "UPC", edition: "2021", section: "507.5", checkedOn: "2026-11-25" },
  ],
  decides: "authority",
  data: {},
  check: ({ room, leakDoesDamage, hasPan }) =>
    hasPan === false && (leakDoesDamage === true || room === "attic") ? {} : undefined,
  examples: {
    fires: [
      { name: "second floor, no pan", site: { leakDoesDamage: true, hasPan: false } },
      { name: "attic, no pan", site: { room: "attic", hasPan: false } },
    ],
    silent: [
      { name: "pan in place", site: { leakDoesDamage: true, hasPan: true } },
      { name: "bare concrete over a drain", site: { leakDoesDamage: false, hasPan: false } },
      { name: "pan not known", site: { room: "attic" } },
    ],
  },
});

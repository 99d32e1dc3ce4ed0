import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "pan_drain_missing",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IPC",
      edition: "2018 and later",
      section: "504.7.2: drain to a receptor or outdoors; none asked at replacement where none was",
      checkedOn: "2026-11-25",
    },
    { basis: "published", document: "IRC", section: "P2801.6.1; P2801.5.1 in other copies", checkedOn: "2026-11-25" },
  ],
  decides: "authority",
  data: {},
  check: ({ isReplacement, hasPan, hasPanDrain }) =>
    hasPan === true && hasPanDrain === false && isReplacement !== true ? {} : undefined,
  examples: {
    fires: [{ name: "new spot, pan without a drain", site: { hasPan: true, hasPanDrain: false } }],
    silent: [
      { name: "replacement where no drain was", site: { hasPan: true, hasPanDrain: false, isReplacement: true } },
      { name: "pan with a drain", site: { hasPan: true, hasPanDrain: true } },
      { name: "drain not known", site: { hasPan: true } },
    ],
  },
});

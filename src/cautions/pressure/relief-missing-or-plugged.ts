import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "relief_missing_or_plugged",
  severity: "stop",
  cites: [
    {
      basis: "published",
      document: "IAPMO code spotlight on UPC 608.3",
      edition: "2018",
      section: "relief valve on every storage heater",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "Municipal plumbing code adopting ANSI Z21.22",
      section: "nothing that closes between tank and relief valve",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ hasReliefValve, isReliefPlugged }) =>
    hasReliefValve === false || isReliefPlugged === true ? {} : undefined,
  examples: {
    fires: [
      { name: "no relief valve", site: { hasReliefValve: false } },
      { name: "discharge pipe capped", site: { hasReliefValve: true, isReliefPlugged: true } },
    ],
    silent: [
      { name: "relief valve open to the air", site: { hasReliefValve: true, isReliefPlugged: false } },
      { name: "valve not known", site: { tank_L: 190 } },
    ],
  },
});

import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "fixtures_not_limited",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "ASSE 1016, 1017 and 1070 scopes",
      section: "a valve at the source does not protect the bather",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "Florida Residential Code",
      edition: "secondary copy",
      section: "P2708.4: an in-line valve does not stand in for a shower valve",
      checkedOn: "2026-11-25",
    },
    { basis: "published", document: "IPC", edition: "2021", section: "412.5", checkedOn: "2026-11-25" },
  ],
  decides: "plumber",
  data: {},
  check: ({ hasMixingValve, areFixturesLimited }) =>
    hasMixingValve === true && areFixturesLimited === false ? {} : undefined,
  examples: {
    fires: [
      { name: "valve at the tank, plain two-handle shower", site: { hasMixingValve: true, areFixturesLimited: false } },
    ],
    silent: [
      { name: "valve at the tank, limited shower valves", site: { hasMixingValve: true, areFixturesLimited: true } },
      { name: "shower valves not known", site: { hasMixingValve: true } },
    ],
  },
});

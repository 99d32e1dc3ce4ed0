import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "loop_without_check",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "Trade page on plumbing crossover",
      section: "recirculation check valves among the causes",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: {},
  check: ({ hasCirculationLoop, hasLoopCheckValve }) =>
    hasCirculationLoop === true && hasLoopCheckValve === false ? {} : undefined,
  examples: {
    fires: [{ name: "loop without a check valve", site: { hasCirculationLoop: true, hasLoopCheckValve: false } }],
    silent: [
      { name: "check valve with its arrow right", site: { hasCirculationLoop: true, hasLoopCheckValve: true } },
      { name: "check valve not known", site: { hasCirculationLoop: true } },
    ],
  },
});

import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "not_locked_out",
  severity: "stop",
  cites: [
    {
      basis: "published",
      document: "29 CFR 1910.333, Washington State text",
      section: "disconnect, lock, tag, prove dead",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "DOE electrical safety handbook",
      section: "tester proved before and after; no proximity tester",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "electrician",
  data: {},
  check: ({ work, isLockedOut }) =>
    isLockedOut === false || (isLockedOut === undefined && (work === "wiring" || work === "removal")) ? {} : undefined,
  examples: {
    fires: [
      { name: "about to open the wiring cover", site: { work: "wiring" } },
      { name: "breaker not locked", site: { isLockedOut: false } },
      { name: "old heater comes out", site: { work: "removal" } },
    ],
    silent: [
      { name: "locked and proved dead", site: { work: "wiring", isLockedOut: true } },
      { name: "survey only", site: { work: "survey" } },
    ],
  },
});

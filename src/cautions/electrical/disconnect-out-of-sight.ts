import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "disconnect_out_of_sight",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "NEC (NFPA 70)",
      section: "422.31: in sight within 50 ft, or breaker lockable open; read in the trade press",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "electrician",
  data: {},
  check: ({ hasDisconnectInSight, isBreakerLockable }) =>
    hasDisconnectInSight === false && isBreakerLockable !== true ? {} : undefined,
  examples: {
    fires: [
      { name: "panel out of sight, no lock", site: { hasDisconnectInSight: false } },
      {
        name: "panel out of sight, breaker cannot be locked",
        site: { hasDisconnectInSight: false, isBreakerLockable: false },
      },
    ],
    silent: [
      { name: "disconnect at the heater", site: { hasDisconnectInSight: true } },
      { name: "breaker lockable", site: { hasDisconnectInSight: false, isBreakerLockable: true } },
      { name: "not looked for", site: {} },
    ],
  },
});

import { declareCaution } from "../caution.ts";

/** Families of plumbing codes that keep the relief pipe out of the pan. */
const PAN_FORBIDDEN: readonly string[] = ["UPC", "CPC"];

export const caution = declareCaution({
  id: "relief_discharge_into_pan",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "UPC",
      edition: "2015",
      section: "608.5: not into the pan; followed where the UPC is adopted",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "IPC",
      edition: "2018",
      section: "504.6: the pan is among the receivers; followed where the IPC or IRC is adopted",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "IRC",
      edition: "older copy",
      section: "P2803.6.1: the pan is not among the receivers",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: { family: "word" },
  check: ({ reliefDischargeEndsIn }, code) =>
    reliefDischargeEndsIn === "pan" && PAN_FORBIDDEN.includes(code.adopted.plumbing.family)
      ? { family: code.adopted.plumbing.family }
      : undefined,
  examples: {
    fires: [
      { name: "ends in the pan, UPC adopted", site: { reliefDischargeEndsIn: "pan" }, plumbing: "UPC" },
      {
        name: "ends in the pan, California's UPC adopted",
        site: { reliefDischargeEndsIn: "pan", hasReliefDischarge: true },
        plumbing: "CPC",
      },
    ],
    silent: [
      { name: "ends in the pan, IPC adopted", site: { reliefDischargeEndsIn: "pan" }, plumbing: "IPC" },
      { name: "ends over the floor, UPC adopted", site: { reliefDischargeEndsIn: "floor" }, plumbing: "UPC" },
      { name: "end not known", site: { hasReliefDischarge: true } },
    ],
  },
});

import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "wet_place",
  severity: "must",
  cites: [
    {
      basis: "from_memory",
      document: "NEC (NFPA 70)",
      edition: "2023",
      section: "210.8: ground-fault protection outdoors and in wet places; 404.4, 406.9: covers for wet places",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "electrician",
  data: {},
  check: ({ room, isWetPlace, hasGroundFault }) =>
    (room === "outdoors" || isWetPlace === true) && hasGroundFault !== true ? {} : undefined,
  examples: {
    fires: [
      { name: "outdoor unit, protection not known", site: { room: "outdoors" } },
      { name: "wet basement, none", site: { isWetPlace: true, hasGroundFault: false } },
    ],
    silent: [
      { name: "outdoors, protected", site: { room: "outdoors", hasGroundFault: true } },
      { name: "dry closet", site: { room: "closet", isWetPlace: false } },
    ],
  },
});

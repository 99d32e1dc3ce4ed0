import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "recover_before_scrap",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "40 CFR 82",
      edition: "older print",
      section: "82.154: knowing release forbidden; carbon dioxide exempt",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "40 CFR 82",
      edition: "subpart F",
      section: "82.156: recovery before disposal",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ oldHeaterHoldsRefrigerant }) => (oldHeaterHoldsRefrigerant === true ? {} : undefined),
  examples: {
    fires: [{ name: "old heat pump unit comes out", site: { oldHeaterHoldsRefrigerant: true } }],
    silent: [
      { name: "plain electric tank", site: { oldHeaterHoldsRefrigerant: false } },
      { name: "not known", site: { work: "removal", isLockedOut: true } },
    ],
  },
});

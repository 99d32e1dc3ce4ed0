import { q } from "../../declaration/answer.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

/** Five degrees Fahrenheit. */
const MOST_K = 5 / 1.8;

export const caution = declareCaution({
  id: "breathes_its_own_air",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "NREL/SR-5500-64860",
      edition: "2016",
      section: "units cooled their own closet; 5 ft between terminals",
      checkedOn: "2026-11-25",
    },
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "5 °F colder than the room after half an hour",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: { colder: "temperature_difference" },
  check: ({ intakeBelowRoom_K }) =>
    intakeBelowRoom_K !== undefined && isOver(intakeBelowRoom_K, MOST_K)
      ? { colder: q("temperature_difference", intakeBelowRoom_K) }
      : undefined,
  examples: {
    fires: [{ name: "8 °F colder at the intake", site: { intakeBelowRoom_K: 8 / 1.8 } }],
    silent: [
      { name: "5 °F colder", site: { intakeBelowRoom_K: 5 / 1.8 } },
      { name: "not measured", site: { room: "closet" } },
    ],
  },
});

import { toBase } from "../../units/convert.ts";
import type { StartupStep } from "../startup-step.ts";

/** A tire gauge and a valve stem may be out by a tenth. */
const BAND = 0.1;

export const step: StartupStep = {
  id: "precharge",
  isCritical: false,
  hazards: ["water_off"],
  appliesTo: ({ control, isClosed }) => control === "tank" || (control !== "relief_valve" && isClosed !== false),
  reading: {
    quantity: "pressure",
    min: 0,
    max: toBase(200, "psi"),
    usual: [60, 70, 50].map((psi) => toBase(psi, "psi")),
    accepts: ({ measuredLine_kPa, line_kPa }) => {
      const expected = measuredLine_kPa ?? line_kPa;
      return expected === undefined ? undefined : { low: (1 - BAND) * expected, high: (1 + BAND) * expected, expected };
    },
  },
  source: {
    basis: "published",
    document: "Griffith, Thermal Expansion Tanks part 2",
    edition: "2015",
    section: "air charge equal to the line pressure; a tenth either way is common practice",
  },
  cases: [
    {
      name: "62 psi of air, 65 psi in the line",
      site: { measuredLine_kPa: toBase(65, "psi") },
      reading: toBase(62, "psi"),
      isAccepted: true,
    },
    {
      name: "40 psi of air, 65 psi in the line",
      site: { measuredLine_kPa: toBase(65, "psi") },
      reading: toBase(40, "psi"),
      isAccepted: false,
    },
    {
      name: "what was read counts before what was surveyed",
      site: { measuredLine_kPa: toBase(50, "psi"), line_kPa: toBase(65, "psi") },
      reading: toBase(50, "psi"),
      isAccepted: true,
    },
    {
      name: "a closed system that had no tank at the survey: the kit brings one",
      site: { control: "none", isClosed: true, measuredLine_kPa: toBase(65, "psi") },
      reading: toBase(65, "psi"),
      isAccepted: true,
    },
    { name: "line not known", site: {}, reading: toBase(40, "psi") },
    { name: "open system", site: { isClosed: false }, isLeftOut: true },
    { name: "a relief valve instead of a tank", site: { control: "relief_valve", isClosed: true }, isLeftOut: true },
  ],
};

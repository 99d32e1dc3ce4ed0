import type { caution } from "../../../cautions/air/breathes-its-own-air.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ colder }) =>
    `Air at the intake is ${colder} colder than the room: it draws its own exhaust. Turn the exhaust away or part the two by a duct.`,
  show: "Measure intake and room 3 ft away after half an hour of running; write down both.",
};

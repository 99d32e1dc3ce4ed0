import type { caution } from "../../../cautions/place/heavy-to-lift.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ unit, person }) =>
    `The unit weighs ${unit} dry, far over ${person} for one back. Two people and a stair dolly with straps, the tank strapped high, nobody below on stairs.`,
  show: "Photograph the dolly and straps ready before the unit leaves the truck.",
};

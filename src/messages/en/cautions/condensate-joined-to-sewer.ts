import type { caution } from "../../../cautions/drainage/condensate-joined-to-sewer.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The condensate line is joined tight to a sewer pipe: gas and sewage can come back to the coil. End it over a trapped receptor, with an air gap.",
  show: "Photograph the gap between the pipe's end and the receptor.",
};

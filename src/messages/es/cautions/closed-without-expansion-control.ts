import type { caution } from "../../../cautions/pressure/closed-without-expansion-control.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El sistema es cerrado y nada recibe la expansión del agua. Los códigos modelo piden control de expansión después de la check o del regulador.",
  show: "Foto del tanque de expansión puesto y de su carga de aire en un manómetro.",
};

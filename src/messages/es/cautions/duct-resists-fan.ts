import type { caution } from "../../../cautions/air/duct-resists-fan.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ drop, allowed }) =>
    `Los ductos piden ${drop} y el ventilador da ${allowed}: menos aire, escarcha y ruido. Suba una medida, estire el flexible, quite codos.`,
  show: "Mida la presión estática en los dos cuellos; foto del ducto estirado.",
};

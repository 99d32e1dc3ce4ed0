import type { caution } from "../../../cautions/place/filter-out-of-reach.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () => "El filtro de aire no sale donde quedó el equipo. Gírelo o mueva el tubo, o nadie lo va a limpiar.",
  show: "Saque el filtro por completo, y grábelo.",
};

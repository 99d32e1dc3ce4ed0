import type { caution } from "../../../cautions/place/crawl-space-access.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Bajo la casa: ventile, busque cables vivos, agua y animales, y nunca entre solo. El equipo pide base seca y paso libre.",
  show: "Foto de la entrada, la base sobre la tierra, la luz y el contacto.",
};

import type { caution } from "../../../cautions/electrical/wet-place.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Lugar mojado: nunca trabaje parado en agua. Cajas y tubo para intemperie, y pregunte al electricista dónde va protección de falla a tierra.",
  show: "Oprima el botón de prueba; foto de tapas, conectores y aparato.",
};

import type { caution } from "../../../cautions/electrical/not-locked-out.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Antes de quitar una tapa: breaker abajo, su candado y etiqueta puestos, y compruebe sin voltaje con un medidor probado antes y después.",
  show: "Foto de candado y etiqueta en el breaker, y del medidor en cero entre todos los cables y tierra.",
};

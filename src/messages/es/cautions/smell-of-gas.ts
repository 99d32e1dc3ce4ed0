import type { caution } from "../../../cautions/fuel/smell-of-gas.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Saque a todos ya. Ni apagador, ni flama, ni teléfono adentro; deje la puerta abierta y llame a la compañía de gas desde afuera.",
  show: "Solo se sigue cuando la compañía de gas o bomberos lo digan; anote quién y a qué hora.",
};

import type { caution } from "../../../cautions/piping/loop-without-check.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El retorno no tiene check: el agua fría corre al revés hacia las llaves calientes. Ponga una, flecha al calentador, con tanque de expansión de ese lado.",
  show: "Bomba apagada y llave caliente abierta: el retorno no debe enfriarse.",
};

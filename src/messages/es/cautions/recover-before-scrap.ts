import type { caution } from "../../../cautions/refrigerant/recover-before-scrap.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El equipo viejo tiene refrigerante: no lo corte ni lo aplaste. Primero lo recupera alguien certificado, salvo que la placa diga dióxido de carbono.",
  show: "Guarde el registro de recuperación y el recibo del depósito.",
};

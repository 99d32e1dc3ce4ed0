import type { caution } from "../../../cautions/scald/public-lavatory-hot.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ tap, limit }) =>
    `${tap} en un lavabo público pasa de ${limit}. Ponga o ajuste un limitador en el lavabo, listado en ASSE 1070.`,
  show: "Mida en el lavabo, todo a caliente, después de dos minutos; foto del termómetro.",
};

import type { caution } from "../../../cautions/scald/bidet-hot.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ tap, limit }) => `${tap} en el bidé pasa de ${limit}. Baje su limitador, o ponga uno listado en ASSE 1070.`,
  show: "Mida en el bidé, todo a caliente; foto del termómetro.",
};

import type { caution } from "../../../cautions/hygiene/dead-leg.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () => "Un ramal caliente sin uso guarda agua tibia donde crecen bacterias. Córtelo hasta la línea que sí corre.",
  show: "Foto del corte y el tapón en la te de la línea.",
};

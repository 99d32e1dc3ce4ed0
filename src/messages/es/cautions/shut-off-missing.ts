import type { caution } from "../../../cautions/piping/shut-off-missing.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "La fría no tiene llave de paso en el calentador. Ponga una de paso completo a la mano, y ninguna del lado del alivio.",
  show: "Ciérrela, abra una llave caliente y muestre que deja de correr.",
};

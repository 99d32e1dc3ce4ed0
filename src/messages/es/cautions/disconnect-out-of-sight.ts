import type { caution } from "../../../cautions/electrical/disconnect-out-of-sight.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "No hay desconectador a la vista del calentador. Ponga uno a la vista, o un porta candado fijo en el breaker.",
  show: "Foto del desconectador desde el calentador, o del porta candado en el breaker.",
};

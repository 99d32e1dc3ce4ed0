import type { caution } from "../../../cautions/fuel/flue-may-backdraft.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Sacar aire de la casa puede regresar gases de la chimenea: el monóxido mata. No lo trabaje así; lleve ducto a la entrada y mande probar el tiro.",
  show: "Alguien capacitado mide tiro, derrame y monóxido con todo ventilador prendido; foto de las lecturas.",
};

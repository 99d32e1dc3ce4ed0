import type { caution } from "../../../cautions/place/no-room-to-service.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ space, limit }) =>
    `Hay ${space} de piso parejo frente a los controles; se piden ${limit} por lado. Gire el equipo o libere el espacio.`,
  show: "Foto de la cinta en el piso, en los dos sentidos.",
};

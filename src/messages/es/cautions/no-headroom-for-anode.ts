import type { caution } from "../../../cautions/place/no-headroom-for-anode.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ headroom, needed }) =>
    `Hay ${headroom} arriba del equipo, y ánodo o filtro piden ${needed}. Escoja equipo más bajo, otro lugar o ánodo en tramos.`,
  show: "Mida de la tapa del equipo a lo más bajo de arriba; foto de la cinta.",
};

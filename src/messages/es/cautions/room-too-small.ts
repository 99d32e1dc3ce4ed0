import type { caution } from "../../../cautions/air/room-too-small.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ volume, needed, openings }) =>
    `Hay ${volume} de aire donde se quieren ${needed}: el equipo enfría su propio aire y acaba en resistencias. Abra ${openings} libres, arriba y abajo, o póngale ductos.`,
  show: "Mida el cuarto por los tres lados; foto de las rejillas y su área libre.",
};

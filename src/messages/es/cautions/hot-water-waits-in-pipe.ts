import type { caution } from "../../../cautions/piping/hot-water-waits-in-pipe.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ contents, limit }) =>
    `${contents} de agua caliente se quedan y se enfrían en el tubo cada vez; WaterSense pide ${limit} o menos. Acórtelo o use tubo más chico.`,
  show: "Junte el agua en una cubeta hasta que salga caliente y mídala.",
};

import type { caution } from "../../../cautions/scald/hot-storage-without-mixing-valve.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ storage, time }) =>
    `Guardada a ${storage} sin válvula mezcladora: el agua de la llave quema a un adulto en ${time} o menos. Ponga la válvula antes de usarla, o baje el tanque.`,
  show: "Foto de la válvula y de su sello de listado; mida la llave más cercana después de dos minutos.",
};

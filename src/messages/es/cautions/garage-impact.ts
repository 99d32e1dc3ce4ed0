import type { caution } from "../../../cautions/place/garage-impact.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () => "Está en un garaje: protéjalo de los carros con poste, tope, base alta o nicho.",
  show: "Foto de lo que hay entre el carro y el calentador, del lado del chofer.",
};

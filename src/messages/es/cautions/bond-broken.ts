import type { caution } from "../../../cautions/electrical/bond-broken.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ bond }) =>
    `Hay ${bond} entre caliente, fría, tanque y tierra: una falla puede dejar un tubo con corriente. Corte la corriente y reponga la unión a tierra y el puente.`,
  show: "Mida con la corriente bloqueada; foto de abrazaderas y medidor.",
};

import type { caution } from "../../../cautions/pressure/relief-discharge-into-pan.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ family }) =>
    `El tubo de alivio termina en la charola. El ${family} adoptado aquí lo prohíbe, aunque el IPC lo permite. Dele su propio tubo hasta un drenaje o afuera.`,
  show: "Foto de dónde termina el tubo de alivio.",
};

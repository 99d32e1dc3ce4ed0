import type { caution } from "../../../cautions/drainage/condensate-pump-without-float.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The condensate pump does not stop the unit when it fails, so its cup will overflow. Power off, then wire the float switch as the sheet shows.",
  show: "Lift the float: the heat pump must stop; film it.",
};

import type { caution } from "../../../cautions/place/garage-impact.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () => "It stands in a garage: keep cars off it with a bollard, a wheel stop, a platform or an alcove.",
  show: "Photograph what stands between car and heater, from the driver's side.",
};

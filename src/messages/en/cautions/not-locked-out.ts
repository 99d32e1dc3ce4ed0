import type { caution } from "../../../cautions/electrical/not-locked-out.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Before a cover comes off: breaker off, your lock and tag on, then prove dead with a meter, itself proved before and after.",
  show: "Photograph lock and tag on the breaker, and the meter at zero between all wires and ground.",
};

import type { caution } from "../../../cautions/hygiene/storage-in-growth-range.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ storage, from, to }) =>
    `Un tanque a ${storage} está donde la Legionella se multiplica, de ${from} a ${to}. Guarde más caliente, con válvula mezcladora contra quemaduras.`,
  show: "Lea el termostato y la parte alta del tanque ya recuperado; anote los dos.",
};

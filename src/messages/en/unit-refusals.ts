import type { UNIT_REFUSALS as specs } from "../../household/unit-case.ts";
import type { Worded } from "../topic-texts.ts";

/** Why a unit of the catalogue cannot be worked with as asked; shared by the topics that simulate one. */
export const unitRefusals: { readonly [C in keyof typeof specs]: (data: Worded<(typeof specs)[C]>) => string } = {
  unknown_model: ({ typed, nearest }) =>
    nearest === ""
      ? `I do not know a model “${typed}”: the company's catalogue is empty.`
      : `I do not know a model “${typed}”. Nearest in the catalogue: ${nearest}.`,
  unknown_place: ({ typed, nearest }) =>
    nearest === ""
      ? "The company's books have no place yet, so I know neither the water nor the air. Add one to places.yaml."
      : `I do not know a place “${typed}”. In the books: ${nearest}.`,
  setpoint_outside_unit: ({ model, setpoint, lowest, highest }) =>
    `${model} can be set from ${lowest} to ${highest}, so ${setpoint} does not fit. Type one in that range.`,
  mode_only_heat_pump: ({ model }) => `${model} has no elements. Its one mode is heat pump only.`,
  mode_only_elements: ({ model }) => `${model} has no heat pump. Its one mode is elements only.`,
  mode_not_offered: ({ model }) =>
    `${model} does not offer that mode. Its sheet in the catalogue lists the ones it has.`,
  supply_unfit: ({ model, supply, made_for }) => `${model} is made for ${made_for}, not for ${supply}.`,
  rate_not_in_books: ({ company }) => `The books of ${company} have no price plan of that kind. Try the other rate.`,
};

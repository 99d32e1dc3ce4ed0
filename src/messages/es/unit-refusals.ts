import type { UNIT_REFUSALS as specs } from "../../household/unit-case.ts";
import type { Worded } from "../topic-texts.ts";

/** Por qué no se puede calcular con un equipo del catálogo; lo comparten los temas que lo simulan. */
export const unitRefusals: { readonly [C in keyof typeof specs]: (data: Worded<(typeof specs)[C]>) => string } = {
  unknown_model: ({ typed, nearest }) =>
    nearest === ""
      ? `No conozco el modelo “${typed}”: el catálogo de la empresa está vacío.`
      : `No conozco el modelo “${typed}”. Los más parecidos del catálogo: ${nearest}.`,
  unknown_place: ({ typed, nearest }) =>
    nearest === ""
      ? "Los libros de la empresa no tienen lugares, así que no sé del agua ni del aire. Agregue uno en places.yaml."
      : `No conozco el lugar “${typed}”. En los libros: ${nearest}.`,
  setpoint_outside_unit: ({ model, setpoint, lowest, highest }) =>
    `${model} se ajusta de ${lowest} a ${highest}; ${setpoint} no le queda. Escriba una de ese rango.`,
  mode_only_heat_pump: ({ model }) => `${model} no tiene resistencias. Su único modo es solo bomba de calor.`,
  mode_only_elements: ({ model }) => `${model} no tiene bomba de calor. Su único modo es solo resistencias.`,
  mode_not_offered: ({ model }) => `${model} no ofrece ese modo. Su hoja del catálogo dice cuáles tiene.`,
  supply_unfit: ({ model, supply, made_for }) => `${model} es para ${made_for}, no para ${supply}.`,
  rate_not_in_books: ({ company }) => `Los libros de ${company} no tienen una tarifa de ese tipo. Pruebe la otra.`,
};

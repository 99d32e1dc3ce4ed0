import { buildStartupTexts } from "../../startup-texts.ts";
import { commonFacts } from "../common-facts.ts";
import { startupSteps } from "../startup-steps.ts";
import { texts as caution } from "./caution.ts";

const { model, setpoint, line_pressure, closed, supply, mode, air, cold, place } = commonFacts;

export const texts = buildStartupTexts({
  title: "Puesta en marcha",
  names: ["puesta en marcha", "arranque"],
  summary: "Puesta en marcha paso a paso: cada lectura se juzga al escribirla y queda en el trabajo.",
  examples: ["puesta en marcha lista", "arranque modelo hollin-50, lista"],
  steps: startupSteps,
  siteFacts: {
    ...{ model, setpoint, line_pressure, closed, supply, mode, air, cold, place },
    control: caution.facts.control,
    list: {
      label: "Solo la lista de pasos",
      question: "¿Mostrar todos los pasos sin preguntar?",
      words: ["lista", "todos los pasos", "resumen"],
    },
  },
  passedOver: "Sin responder",
  done: { label: "Hecho", words: ["hecho", "si", "sí", "listo"] },
  notDone: { label: "Sin hacer", words: ["sin hacer", "no", "todavia no", "todavía no"] },
  why: (label) => `${label}: ¿por qué queda así?`,
  whyHelp: "En pocas palabras. Si se midió de nuevo, escribir la lectura nueva.",
  results: { steps_done: "Pasos hechos", steps_open: "Pasos abiertos" },
  ok: (label, measured) => `${label}: ${measured} se acepta.`,
  out: (label, measured, low, high) => `${label}: ${measured} no se acepta. Se acepta de ${low} a ${high}.`,
  noted: (label, measured) => `${label}: ${measured}. Faltan datos para juzgarlo.`,
  expect: (low, high) => `Se acepta de ${low} a ${high}.`,
  range: (low, high) => `de ${low} a ${high}`,
  plain: {
    all_accepted: ({ steps }) => `Los ${steps} pasos están hechos, o quedan con un motivo.`,
    some_open: ({ open, steps }) => `Quedan abiertos ${open} de ${steps} pasos.`,
    accepted: () => "Se acepta",
    outside: () => "No se acepta",
    outside_reasoned: () => "No se acepta, con motivo",
    not_judged: () => "Sin juzgar",
    done: () => "Hecho",
    not_done: () => "Sin hacer",
    reasoned: ({ because }) => `Queda así: ${because}`,
    open: () => "Abierto",
    left_out: () => "Aquí no hace falta",
    fix_or_say: () => "Corregirlo y escribir la lectura nueva, o decir por qué queda así.",
    critical_left: () => "Este puede lastimar a alguien. Volver y hacerlo, o decir por qué se deja.",
    offer_fault: () => "Si no se arregla, escribir «falla» para buscar la causa.",
    element_gives: ({ supply, rated, power }) =>
      `Con ${supply}, una resistencia para ${rated} da ${power}. Comprobar que la placa la permite aquí.`,
    rise_counted_with: ({ cold }) => `La primera hora se juzga con agua que entró a ${cold}.`,
    unknown_model: ({ typed }) => `No hay un modelo «${typed}» en el catálogo.`,
    not_kept: () => "No hay un trabajo abierto y nada de esto se guarda. Antes, escribir «trabajo» y su número.",
    step_close: () => "Cerrar el trabajo",
    step_fault: () => "Buscar la falla",
    step_walk: () => "Hacer los pasos",
  },
  table: {
    title: "Pasos",
    columns: { step: "Paso", measured: "Medido", accepted: "Se acepta", stands: "Cómo está" },
  },
});

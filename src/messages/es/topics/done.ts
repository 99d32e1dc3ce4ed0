import type { done } from "../../../topics/done.ts";
import { nameSteps } from "../../startup-texts.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { startupSteps } from "../startup-steps.ts";

export const texts: TopicTexts<typeof done> = {
  title: "Cierre",
  names: ["cierre", "cerrar trabajo", "terminar"],
  summary: "Cierra el trabajo abierto: terminado, o con pendientes que tienen responsable; el equipo lee un resumen.",
  examples: ["cierre"],
  facts: {
    kit_used: {
      label: "Piezas usadas según la lista",
      question: "¿Se usaron las piezas tal como están en la lista?",
      help: "Con un sí, la lista de piezas queda como piezas usadas.",
      words: ["piezas usadas", "lista usada"],
    },
    owner: {
      label: "Responsable de lo pendiente",
      question: "¿Quién se ocupa de lo pendiente?",
      words: ["responsable"],
    },
    due: {
      label: "Fecha límite",
      question: "¿Para qué día?",
      help: "Año, mes y día: 2026-11-30.",
      words: ["para el", "hasta el", "fecha"],
    },
    passed_over: { label: "Sin responder", question: "¿Sin responder?", words: [] },
  },
  results: { items_left: "Pendientes", readings_taken: "Lecturas tomadas" },
  findings: {
    ...nameSteps(startupSteps),
    complete: ({ job }) => `El trabajo ${job} está terminado.`,
    with_items: ({ job, items }) => `El trabajo ${job} se cierra con pendientes: ${items}.`,
    closed_before: ({ job }) => `El trabajo ${job} ya está cerrado.`,
    no_job: () => "Aquí no hay un trabajo abierto. Antes, escribir «trabajo» y su número.",
    needs_owner: ({ items }) =>
      `No se cierra. Sin lectura ni motivo: ${items}. Hacerlos, o decir quién se ocupa y para cuándo.`,
    day_passed: ({ due }) => `El ${due} ya pasó. Escribir un día desde hoy.`,
    unknown_owner: ({ typed, nearest }) => `No hay nadie «${typed}» en los libros. Parecidos: ${nearest}.`,
    blocks: ({ items }) =>
      `Lo que falta puede lastimar a alguien: ${items}. Hacerlo con «puesta en marcha», o dar responsable y fecha.`,
    still_left: ({ items }) => `Mientras no se resuelvan, el trabajo no está terminado. Pendientes: ${items}.`,
    kit_not_counted: () => "No hay piezas anotadas en este trabajo.",
    step_startup: () => "Hacer los pasos abiertos",
    step_jobs: () => "Trabajos",
  },
  tables: { left: { title: "Lo que falta", columns: { step: "Paso" } } },
};

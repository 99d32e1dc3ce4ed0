import type { record } from "../../../topics/record.ts";
import type { TopicTexts } from "../../topic-texts.ts";

export const texts: TopicTexts<typeof record> = {
  title: "Registro",
  names: ["registros"],
  summary: "Muestra todo lo que se guarda de un trabajo y lo entrega en PDF para imprimir y en JSON.",
  examples: ["registro", "registro número=1001"],
  facts: {
    number: {
      label: "Número del trabajo",
      question: "¿El registro de qué trabajo?",
      words: ["número", "número del trabajo", "del trabajo"],
    },
  },
  results: {
    readings_taken: "Lecturas tomadas",
    items_open: "Pendientes",
    files_kept: "Fotos y papeles",
    entries: "Anotaciones",
  },
  findings: {
    shown: ({ job, customer, place }) => `Registro del trabajo ${job}: ${customer}, ${place}.`,
    unknown_job: ({ typed }) => `No hay un trabajo «${typed}». Revise el número.`,
    none_open: () => "Aquí no hay un trabajo abierto. Diga cuál, por ejemplo «registro 1001».",
    no_record: () => "Los papeles se hacen solo en un chat. Pídalos ahí.",
    step_open: ({ job }) => `Trabajo ${job}`,
    step_jobs: () => "Trabajos por venir",
  },
};

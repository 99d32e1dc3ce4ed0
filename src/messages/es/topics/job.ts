import type { job } from "../../../topics/job.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

export const texts: TopicTexts<typeof job> = {
  title: "Trabajo",
  names: ["trabajo", "trabajos"],
  summary: "Abre un trabajo por su número, empieza uno nuevo y muestra lo que se sabe de él.",
  examples: ["trabajo", "trabajo número=1001"],
  facts: {
    number: { label: "Número de trabajo", question: "¿Qué trabajo?", words: ["número", "numero", "número de trabajo"] },
    task: {
      label: "Qué hacer",
      question: "¿Mostrar un trabajo, empezar uno nuevo o dejar el abierto?",
      words: ["tarea"],
      options: {
        show: { label: "Mostrar", words: ["mostrar", "abrir"] },
        new: { label: "Nuevo", words: ["nuevo", "empezar"] },
        leave: { label: "Dejar", words: ["dejar", "cerrar", "ninguno"] },
      },
    },
    customer: {
      label: "Cliente",
      question: "¿Para quién? ¿Solo iniciales o apodo?",
      help: "Por ejemplo T. M. o Tía Berta. Sin nombre completo, teléfono ni calle.",
      words: ["cliente"],
    },
    town: { ...commonFacts.place, help: "Un lugar de los libros de la empresa. De él depende qué código rige." },
    day: {
      label: "Día",
      question: "¿Para qué día?",
      help: "Año, mes y día: 2026-11-30.",
      words: ["día", "dia", "fecha"],
    },
    passed_over: { label: "Sin responder", question: "¿Sin responder?", words: [] },
  },
  results: {
    jobs_open: "Trabajos por hacer",
    facts_known: "Datos conocidos",
    readings_taken: "Lecturas tomadas",
    items_open: "Pendientes",
  },
  findings: {
    shown: ({ job, customer, place }) => `Trabajo ${job}: ${customer}, ${place}.`,
    opened: ({ job, customer, place }) => `Trabajo ${job} empezado: ${customer}, ${place}.`,
    left: ({ job }) => `Se deja el trabajo ${job}. Lo que se pregunte ahora no se guarda en ninguno.`,
    none_open: ({ jobs }) => `Aquí no hay un trabajo abierto. Trabajos por hacer: ${jobs}.`,
    unknown_job: ({ typed }) => `No hay un trabajo «${typed}». Revisar el número, o empezar uno nuevo.`,
    facts_travel: () => "Desde ahora, lo que se diga queda en este trabajo y no se vuelve a preguntar.",
    say_number: () => "Para abrir uno, escribir «trabajo» y su número.",
    customer_too_much: () => "Solo iniciales o apodo, como T. M.: dos palabras cortas a lo más, sin números.",
    unknown_place: ({ typed, nearest }) => `No hay un lugar «${typed}» en los libros. Parecidos: ${nearest}.`,
    no_record: () => "Los trabajos solo se empiezan en una conversación. Pedirlo allí.",
    step_survey: () => "Visita al sitio",
    step_startup: () => "Puesta en marcha",
    step_done: () => "Cierre",
    step_leave: () => "Dejar este trabajo",
    step_new: () => "Trabajo nuevo",
    step_open: ({ job }) => `Trabajo ${job}`,
  },
  tables: {
    jobs: {
      title: "Trabajos por hacer",
      columns: { job: "Trabajo", customer: "Cliente", place: "Lugar", day: "Día" },
    },
  },
};

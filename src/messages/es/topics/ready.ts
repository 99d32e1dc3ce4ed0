import type { ready } from "../../../topics/ready.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { crewWords } from "../crew-words.ts";

export const texts: TopicTexts<typeof ready> = {
  title: "Listo",
  summary:
    "Si una persona, un trabajo o un día está listo: licencias, herramienta, horario, material, papeles y lo que vence.",
  examples: ["ready 2026-11-30", "ready persona=marisol fecha=2026-12-01"],
  facts: {
    day: {
      label: "Fecha",
      question: "¿Para qué fecha?",
      help: "Año, mes y día: 2026-11-30.",
      words: ["fecha", "día"],
    },
    person: { label: "Persona", question: "¿Para quién?", words: ["persona", "quién", "técnico"] },
    job: { label: "Trabajo", question: "¿Para qué trabajo?", words: ["trabajo", "número de trabajo"] },
  },
  results: {
    ready_count: "Listos",
    stops: "Detienen el trabajo",
    cares: "Por atender",
    lapses_30: "Vencen en 30 días",
    lapses_60: "Vencen en 60 días",
    lapses_90: "Vencen en 90 días",
  },
  findings: {
    ...crewWords,
    person_ready: ({ name, day }) => `${name}: todo listo para ${day}.`,
    person_with_care: ({ name, day, cares }) => `${name} puede trabajar el ${day}. Por atender: ${cares}.`,
    person_not_ready: ({ name, day, stops }) => `${name} no puede ir el ${day}. Lo impide: ${stops}.`,
    job_ready: ({ job, day }) => `El trabajo ${job} está listo para ${day}.`,
    job_with_care: ({ job, day, cares }) => `El trabajo ${job} se puede hacer el ${day}. Por atender: ${cares}.`,
    job_not_ready: ({ job, day, stops }) => `El trabajo ${job} no está listo para ${day}. Lo impide: ${stops}.`,
    day_ready: ({ day, crew, jobs }) => `El ${day} puede seguir. Trabajan: ${crew}; trabajos: ${jobs}.`,
    day_not_ready: ({ day, stops }) => `El ${day} no está listo. Lo impide: ${stops}.`,
    registers_decide: () =>
      "Esto dice el libro de la cuadrilla. El registro de quien emite y las reglas locales deciden quién puede hacer qué.",
    nobody_assigned: () => "Todavía no hay nadie en este trabajo.",
    no_crew_book: () => "Los libros no nombran a nadie que vaya a obra. Primero llene crew.yaml.",
    unknown_person: ({ typed, nearest }) => `Nadie de la cuadrilla se llama “${typed}”. Parecidos: ${nearest}.`,
    unknown_job: ({ typed, nearest }) =>
      nearest === "" ? "Todavía no hay trabajos en el registro." : `No hay trabajo “${typed}”. Parecidos: ${nearest}.`,
    why_none: () => "Falta",
    why_lapsed: ({ until }) => `Venció después del ${until}`,
    why_grace: ({ until }) => `Vencida; se puede trabajar hasta el ${until}`,
    why_warns: ({ until }) => `Venció después del ${until}; no detiene nada`,
    why_unchecked: () => "Sin revisar en el registro en 90 días",
    why_calibration: ({ until }) => `La calibración servía hasta el ${until}`,
    why_short: ({ short }) => `Faltan ${short}, y no hay en el taller`,
    why_short_length: ({ short }) => `Faltan ${short}, y no hay en el taller`,
    why_load: ({ short }) => `Cargar ${short} del taller`,
    why_load_length: ({ short }) => `Cargar ${short} del taller`,
    why_hours: ({ needed, free }) => `Toma ${needed} con el camino; trabaja ${free}`,
    why_off: () => "Día libre",
    why_no_hours: () => "No trabaja ese día",
    why_helpers: ({ needed, given }) => `Pide ${needed}, tiene ${given}`,
    why_not_in_crew_book: () => "No está en el libro de la cuadrilla",
    calibration_of: ({ es, id }) => `Calibración: ${es} (${id})`,
    within: ({ horizon }) => `En ${horizon} días`,
    step_plan: ({ day }) => `Planear el ${day}`,
    step_kit: ({ job }) => `Material del trabajo ${job}`,
  },
  tables: {
    missing: {
      title: "Lo que falta",
      columns: { who: "Quién o trabajo", what: "Qué", why: "Por qué", others: "Quién más puede" },
    },
    lapses: {
      title: "Lo que vence pronto",
      columns: { who: "Quién", what: "Qué", on: "Sirve hasta", within: "Cuándo" },
    },
  },
};

import type { digest } from "../../../topics/digest.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { digestWords } from "../digest-words.ts";

const when = (from: string, to: string) => (from === to ? from : `${from} a ${to}`);
const counts = (finished: string, items: string, callbacks: string) =>
  `terminados ${finished}, pendientes ${items}, reclamos ${callbacks}.`;
type Jobs = { readonly from: string; readonly to: string; readonly jobs: string };

export const texts: TopicTexts<typeof digest> = {
  title: "Resumen",
  summary:
    "Un día o una semana de la empresa: terminado, pendiente, reclamos, medidas y lo que vence; cada cifra abre sus trabajos.",
  examples: ["resumen semana", "digest fecha=2026-11-24", "resumen semana pasada mostrar=reclamos"],
  facts: {
    span: {
      label: "Lapso",
      question: "¿Esta semana o la pasada?",
      words: ["lapso"],
      options: {
        week: { label: "Semana", words: ["semana", "esta semana", "semanal"] },
        last_week: { label: "Semana pasada", words: ["semana pasada", "semana anterior"] },
      },
    },
    day: { label: "Fecha", question: "¿Qué día?", help: "Una fecha, hoy o ayer.", words: ["fecha", "día"] },
    from: { label: "Desde", question: "¿Desde qué día?", words: ["desde"] },
    to: { label: "Hasta", question: "¿Hasta qué día?", words: ["hasta"] },
    show: {
      label: "Mostrar",
      question: "¿Los trabajos de qué cifra?",
      words: ["mostrar", "ver"],
      options: {
        finished: { label: "Terminados", words: ["terminados"] },
        opened: { label: "Abiertos", words: ["abiertos"] },
        cancelled: { label: "Cancelados", words: ["cancelados"] },
        open_items: { label: "Pendientes", words: ["pendientes"] },
        overdue: { label: "Atrasados", words: ["atrasados", "vencidos"] },
        callbacks: { label: "Reclamos", words: ["reclamos", "llamadas de regreso"] },
        first_visit: { label: "En la primera visita", words: ["primera visita"] },
        readings: { label: "Medidas", words: ["medidas", "lecturas"] },
        on_site: { label: "Tiempo en obra", words: ["tiempo en obra", "horas"] },
        lapses: { label: "Vencimientos", words: ["vencimientos", "vence"] },
        parts: { label: "Material usado", words: ["material", "material usado"] },
      },
    },
    csv: { label: "Hoja (CSV)", question: "¿Como hoja de cálculo?", words: ["hoja", "hoja de cálculo"] },
  },
  results: {
    finished: "Trabajos terminados",
    open_items: "Pendientes",
    overdue: "De estos, atrasados",
    callbacks: "Reclamos",
    opened: "Trabajos abiertos",
    cancelled: "Trabajos cancelados",
    first_visit: "Hechos en la primera visita",
    not_accepted: "Medidas no aceptadas",
    on_site: "Tiempo en obra",
    lapses_30: "Vencen en 30 días",
    lapses_60: "Vencen en 60 días",
    lapses_90: "Vencen en 90 días",
  },
  findings: {
    ...digestWords,
    of_day: ({ day, finished, items, callbacks }) => `${day}: ${counts(finished, items, callbacks)}`,
    of_days: ({ from, to, finished, items, callbacks }) => `${when(from, to)}: ${counts(finished, items, callbacks)}`,
    jobs_finished: ({ from, to, jobs }: Jobs) => `Terminados, ${when(from, to)}. Trabajos: ${jobs}.`,
    jobs_opened: ({ from, to, jobs }: Jobs) => `Abiertos, ${when(from, to)}. Trabajos: ${jobs}.`,
    jobs_cancelled: ({ from, to, jobs }: Jobs) => `Cancelados, ${when(from, to)}. Trabajos: ${jobs}.`,
    jobs_open_items: ({ from, to, jobs }: Jobs) => `Pendientes, ${when(from, to)}. Trabajos: ${jobs}.`,
    jobs_overdue: ({ from, to, jobs }: Jobs) => `Pendientes atrasados, ${when(from, to)}. Trabajos: ${jobs}.`,
    jobs_callbacks: ({ from, to, jobs }: Jobs) => `Reclamos, ${when(from, to)}. Trabajos: ${jobs}.`,
    jobs_first_visit: ({ from, to, jobs }: Jobs) => `Cerrados por primera vez, ${when(from, to)}. Trabajos: ${jobs}.`,
    jobs_readings: ({ from, to, jobs }: Jobs) => `Medidas tomadas, ${when(from, to)}. Trabajos: ${jobs}.`,
    jobs_on_site: ({ from, to, jobs }: Jobs) => `Tiempo en obra, ${when(from, to)}. Trabajos: ${jobs}.`,
    jobs_parts: ({ from, to, jobs }: Jobs) => `Material usado, ${when(from, to)}. Trabajos: ${jobs}.`,
    jobs_lapses: ({ day, lapses }) => `Lo que vence en los 90 días desde el ${day}: ${lapses}.`,
    for_the_office: () => "El resumen es para la gerencia y el dueño; despacho ve trabajos, pendientes y lo que vence.",
    not_this_figure: () => "Esta cifra la ven la gerencia y el dueño. Diga “resumen” para ver las suyas.",
    your_own_jobs: () => "Sus propios trabajos: diga “hoy”.",
    running: ({ today }) => `Todavía no termina: contado hasta el ${today}.`,
    lies_ahead: ({ today }) =>
      `Eso todavía no llega; hoy es ${today}. Diga “resumen semana pasada” o escriba una fecha anterior.`,
    first_visits: ({ some, all }) =>
      `Cerrados por primera vez: ${all}. Completos en la primera visita: ${some} de ${all}.`,
    came_back_rate: ({ some, all, days }) =>
      `De los trabajos cerrados por primera vez en los últimos ${days} días (${all}), volvieron: ${some}.`,
    share_is: ({ share, low, high }) => `Eso es ${share}; el puro azar permitiría de ${low} a ${high} (95 %).`,
    few_for_share: ({ enough }) => `Un número chico: sin porcentaje con menos de ${enough} trabajos.`,
    sheet_made: ({ rows }) => `Una hoja con una fila por trabajo. Filas: ${rows}.`,
    from_after_to: () => "El último día es antes del primero. Escriba from= con el día anterior.",
    from_missing: () => "Falta el primer día. Escriba from= y to=, como from=2026-11-16 to=2026-11-22.",
    too_long: ({ most }) => `Es demasiado largo. Escriba un lapso de ${most} días cuando mucho.`,
    how_finished: () =>
      "Terminado: la cuadrilla cerró el trabajo en esos días, con o sin pendientes. Cada trabajo cuenta una vez.",
    how_items: () =>
      "Pendiente: sin atender al final de esos días. Atrasado: la fecha acordada es anterior a ese final.",
    how_callbacks: () =>
      "Reclamos: cuentan el día en que llamó el cliente. Lo cerrado hace poco ha tenido menos tiempo de volver.",
    how_first_visit: () =>
      "Primera visita: de los cerrados por primera vez, los que quedaron completos tras empezar una sola vez.",
    how_on_site: () =>
      "Tiempo en obra: de la primera a la última anotación del día, por trabajo. Es un mínimo, no una tarjeta de horas.",
    how_measured: ({ enough }) =>
      `Medido menos esperado, en porcentaje; las temperaturas en grados. Cuenta la última medida por trabajo; sin mediana con menos de ${enough}.`,
    how_nobody_ranked: () => "De los registros de la empresa. Ninguna cifra se compara con una persona.",
    step_finished: () => "Terminados",
    step_open_items: () => "Pendientes",
    step_overdue: () => "Atrasados",
    step_callbacks: () => "Reclamos",
    step_opened: () => "Abiertos",
    step_first_visit: () => "Primeras visitas",
    step_readings: () => "Medidas",
    step_on_site: () => "Tiempo en obra",
    step_lapses: () => "Lo que vence",
    step_parts: () => "Material usado",
    step_csv: () => "Hoja (CSV)",
    step_whole: () => "Todo el resumen",
    step_today: () => "Mis trabajos de hoy",
  },
  tables: {
    items: { title: "Pendientes", columns: { job: "Trabajo", what: "Qué", owner: "Quién", due: "Cuándo" } },
    callbacks: {
      title: "Reclamos",
      columns: { job: "Trabajo", place: "Lugar", unit: "Equipo", why: "Llamada", cause: "Causa" },
    },
    by_model: {
      title: "Reclamos por equipo",
      columns: {
        unit: "Equipo",
        callbacks: "Reclamos",
        finished: "Cerrados en 90 días",
        came_back: "De estos volvieron",
      },
    },
    by_cause: { title: "Reclamos por causa", columns: { cause: "Causa", callbacks: "Reclamos" } },
    measured: {
      title: "Medido contra esperado",
      columns: {
        step: "Paso",
        taken: "Trabajos",
        compared: "Con esperado",
        middle: "Mediana de la desviación",
        farthest: "La más lejana",
        not_accepted: "No aceptadas",
      },
    },
    parts: { title: "Material más usado", columns: { part: "Material", amount: "Cuánto", jobs: "Trabajos" } },
    lapses_soon: {
      title: "Lo que vence",
      columns: { who: "Quién", what: "Qué", on: "Vale hasta", within: "Cuándo" },
    },
    lapses: { title: "Lo que vence", columns: { who: "Quién", what: "Qué", on: "Vale hasta", within: "Cuándo" } },
    jobs: {
      title: "Trabajos",
      columns: { job: "Trabajo", customer: "Cliente", place: "Lugar", day: "Día", unit: "Equipo", about: "Detalle" },
    },
  },
};

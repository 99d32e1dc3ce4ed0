import type { HistoryTexts } from "../history-texts.ts";

const because = (why: string | undefined) => (why === undefined ? "" : `, porque ${why}`);

export const jobHistory: HistoryTexts = {
  doors: { slack: "Slack", teams: "Teams", web: "chat web", terminal: "terminal" },
  heading: "Historial, lo último al final",
  earlier: (entries) => `Anotaciones anteriores: ${entries}`,
  entry: (moment, by, door, said) => `${moment}, ${by}, ${door}: ${said}`,
  putRightBy: (entry) => `ya no cuenta: corregida por la anotación ${entry}`,
  takenBackBy: (entry) => `ya no cuenta: retirada por la anotación ${entry}`,
  putsRight: (entry) => `corrige la anotación ${entry}`,
  was: (entry, was) => `Anotación ${entry}, antes: ${was}`,
  is: (entry, is) => `Anotación ${entry}, ahora: ${is}`,
  wasTakenBack: (entry, was) => `La anotación ${entry} ya no cuenta: ${was}`,
  said: {
    opened: (customer, place, day) => `empezado para ${customer}, ${place}${day === undefined ? "" : `, ${day}`}`,
    planned: (day, people) => `previsto para el ${day}${people === "" ? "" : `: ${people}`}`,
    unit: (unit) => `equipo: ${unit}`,
    permit: (permit) => `permiso: ${permit}`,
    status: (status, why) => `${status}${because(why)}`,
    facts: (facts) => facts,
    reading: (label, value, stands) => `${label}: ${value} (${stands.toLowerCase()})`,
    item_opened: (what, owner, due) => `pendiente: ${what}, ${owner}, para el ${due}`,
    item_closed: (what) => `pendiente resuelto: ${what}`,
    file: (name) => `archivo: ${name}`,
    parts: (parts) => `piezas usadas: ${parts}`,
    note: (text) => `nota: «${text}»`,
    trail: (text) => `falla: ${text}`,
    withdrawn: (why) => `retirada${because(why)}`,
  },
};

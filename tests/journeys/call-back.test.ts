import { describe, expect, test } from "vitest";
import type { Card } from "../../src/messages/card.ts";
import { DOORS } from "../../src/ports/store.ts";
import { type Play, play, rowsOf } from "./play.ts";

/** Many messages, each committed to the disk, while other tests run [ms]. */
const LONGEST_ms = 120_000;
const NUMBER = "1009";

/** A job that is closed with something left, and comes back a week later; the technician speaks Spanish. */
async function callBack(crew: Play): Promise<void> {
  await crew.says("lupe", `job ${NUMBER} plan today marisol`, "Marisol Vantreaux");
  await crew.says("lupe", `job ${NUMBER} unit hollin-50`);
  await crew.says("lupe", `job ${NUMBER} permit P-2130`);
  await firstVisit(crew);
  await closeWithItem(crew);
  crew.waitsUntil("2026-12-03T14:05:00Z");
  await customerCalls(crew);
  await findFault(crew);
  await putRight(crew);
  await closeAgain(crew);
  await readAfterwards(crew);
}

async function firstVisit({ says, answers, presses }: Play): Promise<void> {
  await says("marisol", "hoy", "Sus trabajos: 2");
  await presses("marisol", `Trabajo ${NUMBER}`, `Trabajo ${NUMBER}: Mrs. Q, Ostrowick.`);
  await presses("marisol", "Puesta en marcha", "¿Está lleno el tanque, todavía sin corriente?");
  await presses("marisol", "Hecho", "quema en segundos");
  await answers("marisol", "hecho", "hecho");
  await says("marisol", "60 psi", "60 psi se acepta");
  await says("marisol", "60 psi", "¿Va el tubo de alivio a tamaño completo");
  await presses("marisol", "Sin hacer", "¿por qué queda así?");
  await says("marisol", "omitir", "Bloqueo y etiqueta");
  await says("marisol", "0,2 ohm", "Unión a tierra: 0.2 Ω se acepta");
  await answers("marisol", "239 V", "hecho", "hecho", "125 F", "hecho", "60 F", "15 F", "118 F");
  await says("marisol", "hecho", "Quedan abiertos 1 de 15 pasos.");
}

async function closeWithItem({ says, presses, readsTeam, house }: Play): Promise<void> {
  await presses("marisol", "Cerrar el trabajo", "¿Se usaron las piezas");
  await presses("marisol", "Sí", "¿Quién se ocupa de lo pendiente?", "Descarga de la válvula de alivio");
  await presses("marisol", "Marisol Vantreaux", "¿Para qué día?");
  await says("marisol", "2026-12-04", `El trabajo ${NUMBER} se cierra con pendientes: 1.`);
  expect(await house.job(NUMBER)).toMatchObject({
    status: "open_items",
    items: [{ id: "relief_free", owner: "marisol", due: "2026-12-04" }],
  });
  const [summary] = await readsTeam();
  expect(summary?.card.title).toBe(`Job ${NUMBER}: closed with open items`);
  expect(summary && rowsOf(summary.card)).toMatchObject({ "Relief discharge": "Marisol Vantreaux, 2026-12-04" });
}

async function customerCalls({ says, house }: Play): Promise<void> {
  await says("lupe", `job ${NUMBER} call back no hot water since last night`, "no hot water since last night");
  await says("lupe", `job ${NUMBER} plan today marisol`);
  expect((await house.job(NUMBER)).status).toBe("called_back");
  const day = await says("marisol", "hoy", "Reclamo", "Descarga de la válvula de alivio");
  expect(day.text).not.toContain("relief_free");
}

async function findFault({ says, presses, readsTeam, house }: Play): Promise<void> {
  await presses("marisol", `Trabajo ${NUMBER}`, "El cliente dice: «no hot water since last night».");
  await presses("marisol", "Buscar la falla", "Entendí: No hay agua caliente en ningún lado.");
  await presses("marisol", "Menos de 60 días");
  await presses("marisol", "Nada", "Qué dice la pantalla");
  await presses("marisol", "Apagada", "Horas que trabajó en un día");
  await presses("marisol", "No se puede saber", "Partes con corriente", "Voltaje en el equipo, sin carga");
  await presses("marisol", "Hecho", "voltaje");
  await says("marisol", "0 V", "Breaker o desconectador apagado");
  const before = (await house.team()).length;
  await presses("marisol", "Contar al equipo cómo se halló");
  const posts = await readsTeam();
  expect(posts.length).toBe(before + 1);
  expect(posts.at(-1)?.card.title).toBe(`Job ${NUMBER}: how the fault was found`);
  await presses("marisol", "Hecho, y ya funciona", "Breaker o desconectador apagado");
}

/** What was left is done, and what the fault had touched is measured anew. */
async function putRight({ says, house }: Play): Promise<void> {
  await says("marisol", "puesta en marcha", "Descarga de la válvula de alivio: ¿por qué queda así?");
  // The name of the walk is no reason for leaving a step that can hurt somebody.
  await says("marisol", "puesta en marcha", "Su pregunta sigue abierta.");
  await says("marisol", "hecho", "Los 15 pasos están hechos");
  await says("marisol", "puesta en marcha caliente en la llave 117 F", "117 °F");
  const { readings, facts } = await house.job(NUMBER);
  expect(readings["outlet_temperature"]).toMatchObject({ isAccepted: true, by: "Marisol Vantreaux" });
  expect(facts["start_relief_free"]?.value).toBe("done");
}

async function closeAgain({ says, readsTeam, house }: Play): Promise<void> {
  const before = await house.team();
  await says("marisol", "cierre", `El trabajo ${NUMBER} está terminado.`, "Pendiente resuelto: Descarga de la válvula");
  expect((await house.job(NUMBER)).status).toBe("complete");
  const posts = await readsTeam();
  // Summary and thread stand where they stood; nothing is posted twice.
  expect(posts.map(({ id, follows }) => [id, follows])).toEqual(before.map(({ id, follows }) => [id, follows]));
  const [summary, thread] = posts;
  expect(summary?.card.title).toBe(`Job ${NUMBER}: complete`);
  const [first, second] = [timeOnSite(before[0]?.card), timeOnSite(summary?.card)];
  expect(first).toMatch(/^\d+ min$/);
  expect(Number.parseInt(second, 10)).toBeGreaterThan(Number.parseInt(first, 10) + 10);
  expect(thread && rowsOf(thread.card)).toMatchObject({ "Relief discharge": expect.stringContaining("Marisol") });
}

function timeOnSite(card: Card | undefined): string {
  return card === undefined ? "" : (rowsOf(card)["Time on site"] ?? "");
}

async function readAfterwards({ says }: Play): Promise<void> {
  await says("lupe", `job ${NUMBER} history`, "no hot water since last night");
  await says("tobias", "digest week", "Breaker or disconnect off");
}

describe("a job that goes wrong and comes back", () => {
  test.each(DOORS)("through %s", (door) => play("call-back", door, callBack), LONGEST_ms);
});

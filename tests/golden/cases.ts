import type { Reader } from "../../src/messages/voice.ts";

/** One message whose card is kept in all its renderings. */
export interface GoldenCase {
  readonly topic: string;
  readonly name: string;
  readonly text: string;
  readonly reader: Reader;
  /** Id of somebody of the demo company who asks. */
  readonly by?: string;
}

const US: Reader = { language: "en", units: "us" };
const SI: Reader = { language: "en", units: "si" };
const ES: Reader = { language: "es", units: "us" };

export const GOLDEN_CASES: readonly GoldenCase[] = [
  { topic: "expansion", name: "closed-80-gal", text: "expansion 80 gal tank, 50F cold 140F hot 60 psi", reader: US },
  {
    topic: "expansion",
    name: "cerrado-80-gal",
    text: "expansion tanque 80 gal, fría 50F caliente 140F 60 psi",
    reader: ES,
  },
  { topic: "expansion", name: "first-question", text: "expansion", reader: US },
  { topic: "expansion", name: "primera-pregunta", text: "expansion", reader: ES },
  { topic: "expansion", name: "cold-above-hot", text: "expansion 80 gal tank 100F cold 90F hot 60 psi", reader: US },
  { topic: "mix", name: "135-to-120-with-50-in", text: "mix 135 to 120 with 50 in", reader: US },
  { topic: "mix", name: "in-si", text: "mix storage=60C wanted=49C cold=10C", reader: SI },
  { topic: "circuit", name: "4500-w-at-208-v", text: "circuit 4500W at 208V 60 ft", reader: US },
  { topic: "wait", name: "60-ft-three-quarter-pex", text: "wait 60 ft of 3/4 pex at 2 gpm", reader: US },
  {
    topic: "wait",
    name: "loop-in-half-inch-foam",
    text: "wait 3/4 copper L 60 ft, 1/2 in foam, loop, tank=80gal",
    reader: US,
  },
  {
    topic: "circuit",
    name: "long-run-on-a-feeder",
    text: "circuit 4500W 240V 150 ft, feeder=100A feeder_load=70A drop_limit=2%",
    reader: US,
  },
  {
    topic: "circuit",
    name: "de-enchufe",
    text: "circuit elemento 0W, suministro 120V, compresor 8 A, breaker 15 A, cochera",
    reader: ES,
  },
  {
    topic: "supply",
    name: "two-baths-copper",
    text: "supply 2 full bathrooms, copper L, 80 ft, 60 psi, rise 20 ft",
    reader: US,
  },
  {
    topic: "supply",
    name: "tres-cuartos-no-alcanza",
    text: "supply baños completos 2, PEX, largo 100 ft, presión 55 psi, medida 3/4, UPC",
    reader: ES,
  },
  { topic: "size", name: "hollin-80-for-four", text: "size people=4 model=hollin-80 setpoint=125F", reader: US },
  { topic: "size", name: "unknown-model", text: "size people=4 model=hollyn-80 setpoint=125F", reader: US },
  { topic: "cost", name: "gas-tank-out", text: "cost model=hollin-80 people=4 replaces=gas_tank", reader: US },
  { topic: "pick", name: "low-spot-narrow-door", text: "pick people=2 height=66in door=21in", reader: US },
  { topic: "pick", name: "nothing-fits", text: "pick people=4 height=50in supply=240V", reader: US },
  { topic: "pick", name: "lugar-bajo", text: "pick personas=2 altura=66in puerta=21in", reader: ES },
  { topic: "away", name: "cinco-semanas", text: "away 5 semanas en febrero, modelo tarnley-50", reader: ES },
  { topic: "room", name: "small-utility-room", text: "room 4x5x8 ft utility room model hollin-50", reader: US },
  { topic: "room", name: "basement-exhaust-duct", text: "room 700 cu ft basement, duct=exhaust", reader: US },
  { topic: "room", name: "closet-700-pies", text: "room 7x10x10 pies clóset", reader: ES },
  {
    topic: "kit",
    name: "gas-tank-out-ducts",
    text: "kit closed, replaces gas, breathes through ducts, circuit right no",
    reader: US,
  },
  { topic: "kit", name: "trabajo-1006-camioneta", text: "kit trabajo=1006 persona=marisol", reader: ES },
  { topic: "ready", name: "monday", text: "ready 2026-11-30", reader: US },
  { topic: "ready", name: "persona-con-dia-libre", text: "ready persona=marisol fecha=2026-12-01", reader: ES },
  { topic: "ready", name: "person-with-care", text: "ready marisol 2026-11-30", reader: US },
  { topic: "ready", name: "job-to-load", text: "ready job=1006 2026-11-25", reader: US },
  { topic: "ready", name: "trabajo-sin-licencia", text: "listo trabajo=1007 2026-11-26", reader: ES },
  { topic: "ready", name: "dia", text: "listo 2026-11-26", reader: ES },
  { topic: "ready", name: "unknown-job", text: "ready 2026-11-26 job=1099", reader: US },
  { topic: "crew", name: "list", text: "crew", reader: US, by: "lupe" },
  { topic: "crew", name: "lista", text: "cuadrilla", reader: ES, by: "lupe" },
  { topic: "crew", name: "own-record", text: "crew person=wren", reader: US, by: "wren" },
  { topic: "crew", name: "su-ficha", text: "cuadrilla persona=marisol", reader: ES, by: "marisol" },
  { topic: "crew", name: "days-off", text: "crew wren off 2026-12-24 to 2027-01-02", reader: US, by: "lupe" },
  { topic: "crew", name: "carga", text: "cuadrilla existencias truck-2 mixing-valve +2", reader: ES, by: "lupe" },
  { topic: "crew", name: "history", text: "crew history", reader: US, by: "tobias" },
  { topic: "crew", name: "historial", text: "cuadrilla historial", reader: ES, by: "tobias" },
  { topic: "crew", name: "not-for-technicians", text: "crew wren off 2026-12-24", reader: US, by: "ebbe" },
  { topic: "crew", name: "no-es-de-despacho", text: "cuadrilla ebbe puesto=owner", reader: ES, by: "lupe" },
  { topic: "crew", name: "which-day", text: "crew wren off", reader: US, by: "lupe" },
  { topic: "ready", name: "job-without-permit", text: "ready job=1003 day=2026-11-30", reader: SI },
  { topic: "plan", name: "monday", text: "plan 2026-11-30", reader: US },
  { topic: "plan", name: "cinco-dias", text: "plan fecha=2026-11-30 días=5", reader: ES },
  { topic: "digest", name: "week-of-the-demo", text: "digest from=2026-11-16 to=2026-11-22", reader: US, by: "tobias" },
  { topic: "digest", name: "semana-hasta-hoy", text: "resumen semana", reader: ES, by: "ingrid" },
  { topic: "digest", name: "call-backs", text: "digest last week show=callbacks", reader: US, by: "tobias" },
  { topic: "digest", name: "dispatcher", text: "digest week", reader: SI, by: "lupe" },
  { topic: "digest", name: "para-la-oficina", text: "resumen semana", reader: ES, by: "marisol" },
  { topic: "today", name: "technician", text: "today", reader: US, by: "ebbe" },
  { topic: "today", name: "tecnica", text: "hoy", reader: ES, by: "marisol" },
  { topic: "today", name: "dispatcher", text: "today", reader: US, by: "lupe" },
  { topic: "today", name: "manager", text: "today", reader: US, by: "tobias" },
  { topic: "caution", name: "garage-140-f", text: "caution garage, set to 140F, no mixing valve, closed", reader: US },
  { topic: "fault", name: "burning-smell", text: "fault smells like burning plastic", reader: US },
  {
    topic: "fault",
    name: "runs-out",
    text: "fault runs out after one shower, unit=integrated age=mid lately=nothing",
    reader: US,
  },
  {
    topic: "fault",
    name: "filter-matted",
    text: "fault display_code=A1 model=hollin-50 age=mid lately=nothing",
    reader: US,
  },
  {
    topic: "fault",
    name: "no-enciende",
    text: "falla pantalla apagada, unit=integrated age=mid lately=power_outage",
    reader: ES,
  },
  { topic: "book", name: "a1-hollin-50", text: "book A1 hollin-50", reader: US },
  { topic: "help", name: "all-topics", text: "help", reader: US },
  { topic: "help", name: "todos-los-temas", text: "ayuda", reader: ES },
  { topic: "help", name: "one-topic", text: "help mix", reader: US },
  { topic: "problem", name: "unknown-word", text: "expansion 80 gal tnak 60 psi", reader: US },
  { topic: "problem", name: "unknown-topic", text: "expnsion 80 gal", reader: US },
];

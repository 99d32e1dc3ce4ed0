import type { Reader } from "../../src/messages/voice.ts";

/** One message whose card is kept in all its renderings. */
export interface GoldenCase {
  readonly topic: string;
  readonly name: string;
  readonly text: string;
  readonly reader: Reader;
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
  { topic: "size", name: "hollin-80-for-four", text: "size people=4 model=hollin-80 setpoint=125F", reader: US },
  { topic: "size", name: "unknown-model", text: "size people=4 model=hollyn-80 setpoint=125F", reader: US },
  { topic: "cost", name: "gas-tank-out", text: "cost model=hollin-80 people=4 replaces=gas_tank", reader: US },
  { topic: "away", name: "cinco-semanas", text: "away 5 semanas en febrero, modelo tarnley-50", reader: ES },
  { topic: "help", name: "all-topics", text: "help", reader: US },
  { topic: "help", name: "todos-los-temas", text: "ayuda", reader: ES },
  { topic: "help", name: "one-topic", text: "help mix", reader: US },
  { topic: "problem", name: "unknown-word", text: "expansion 80 gal tnak 60 psi", reader: US },
  { topic: "problem", name: "unknown-topic", text: "expnsion 80 gal", reader: US },
];

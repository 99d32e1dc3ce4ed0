import { declareCaution } from "../../src/cautions/caution.ts";
import { q } from "../../src/declaration/answer.ts";
import type { Source } from "../../src/declaration/source.ts";
import { declareTopic } from "../../src/declaration/topic.ts";
import { NO_FAULTS } from "../../src/faults/knowledge.ts";
import type { Library } from "../../src/library.ts";
import type { AnyTopicTexts, CautionTexts, TopicTexts } from "../../src/messages/topic-texts.ts";
import { toBase } from "../../src/units/convert.ts";

/*
 * Two small topics that use everything a topic can declare, so that the conversation is tested without the real ones.
 * Their physics is only arithmetic and every figure is invented.
 */

const INVENTED: Source = { basis: "invented", document: "Test bench notes", section: "2" };
const HABIT: Source = { basis: "common_practice", document: "Habit of the test bench" };

const barrel = declareTopic({
  id: "barrel",
  work: "short",
  facts: {
    drum: {
      type: "quantity",
      quantity: "volume",
      min: toBase(1, "gal"),
      max: toBase(500, "gal"),
      usual: [toBase(30, "gal"), toBase(55, "gal")],
    },
    hose: { type: "quantity", quantity: "water_flow", min: toBase(0.1, "gpm"), max: toBase(50, "gpm") },
    cold: {
      type: "quantity",
      quantity: "temperature",
      min: toBase(33, "F"),
      max: toBase(120, "F"),
      usual: [toBase(40, "F"), toBase(50, "F")],
      ask: true,
      default: { value: toBase(50, "F"), source: HABIT },
    },
    warm: {
      type: "quantity",
      quantity: "temperature",
      min: toBase(33, "F"),
      max: toBase(200, "F"),
      default: { value: toBase(100, "F"), source: INVENTED },
    },
    lined: { type: "flag", ask: true, default: { value: true, source: HABIT } },
    metal: { type: "choice", options: ["steel", "plastic"], optional: true },
    helpers: { type: "quantity", quantity: "count", min: 0, max: 9, whole: true, optional: true, byNameOnly: true },
  },
  results: ["fill_time", "stir_time", "warming", "plug"],
  findings: {
    fills: { time: "time" },
    slow: { fact: "fact", time: "time" },
    not_warmer: { cold: "temperature", warm: "temperature" },
    half: {},
    row: { part: "share" },
  },
  tables: { stages: ["stage", "time"] },
  charts: { level: ["water"] },
  compute: ({ drum_L, hose_L_s, cold_C, warm_C }, _books, report) => {
    report(1, 2);
    if (warm_C < cold_C)
      return {
        kind: "out-of-range",
        fact: "warm",
        value: q("temperature", warm_C),
        reason: { code: "not_warmer", data: { cold: q("temperature", cold_C), warm: q("temperature", warm_C) } },
      };
    const fill_s = drum_L / hose_L_s;
    const time = q("time", fill_s);
    const how = (equation: string) => ({
      equation,
      inputs: [{ symbol: "V", quantity: q("volume", drum_L) }],
      sources: [INVENTED] as const,
    });
    return {
      kind: "answer",
      verdict: fill_s > 3600 ? "no" : "good",
      headline: { code: "fills", data: { time } },
      results: [
        { id: "fill_time", quantity: time, how: how("t = V / Q") },
        { id: "stir_time", quantity: q("time", 8), upTo: 30, how: how("by feel") },
        { id: "warming", quantity: q("temperature_difference", warm_C - cold_C), how: how("dT = warm - cold") },
        { id: "plug", name: "M8", how: how("by eye") },
      ],
      findings: fill_s > 3600 ? [{ code: "slow", data: { fact: "hose", time } }] : [],
      tables: [{ id: "stages", rows: [[{ code: "row", data: { part: q("share", 0.5) } }, q("time", fill_s / 2)]] }],
      charts: [
        {
          id: "level",
          xKind: "time",
          series: [{ id: "water", mark: "line", kind: "volume", x: [0, fill_s], y: [0, drum_L] }],
        },
      ],
      next: [{ say: { code: "half", data: {} }, request: "barrel drum=15gal hose=2gpm" }],
    };
  },
  site: ({ warm_C }) => ({ storage_C: warm_C }),
});

const barrelEn: TopicTexts<typeof barrel> = {
  title: "Filling a barrel",
  summary: "How long a hose takes to fill a barrel.",
  examples: ["barrel 55 gal drum, hose 5 gpm", "barrel drum=30gal hose=2gpm"],
  facts: {
    drum: {
      label: "Drum",
      question: "How large is the drum?",
      help: "Look on its side.",
      words: ["drum"],
      first: true,
    },
    hose: { label: "Hose", question: "How much does the hose give?", words: ["hose"] },
    cold: { label: "Cold water", question: "How cold is the water?", words: ["cold"] },
    warm: { label: "Warm water", question: "How warm shall it be?", words: ["warm"] },
    lined: { label: "Lined", question: "Is the drum lined?", words: ["lined"] },
    metal: {
      label: "Material",
      question: "What is the drum made of?",
      words: ["material"],
      options: { steel: { label: "Steel", words: ["steel"] }, plastic: { label: "Plastic", words: ["plastic"] } },
    },
    helpers: { label: "Helpers", question: "How many help?", words: ["helpers"] },
  },
  results: { fill_time: "Time to fill", stir_time: "Stirring", warming: "Warming", plug: "Plug" },
  findings: {
    fills: ({ time }) => `Full in ${time}`,
    slow: ({ fact, time }) => `${fact} is slow: ${time}.`,
    not_warmer: ({ cold, warm }) => `Warm (${warm}) must be above cold (${cold}).`,
    half: () => "Half of it",
    row: ({ part }) => `At ${part}`,
  },
  tables: { stages: { title: "Stages", columns: { stage: "Stage", time: "Time" } } },
  charts: { level: { title: "Level in the drum", columns: { water: "Water" } } },
};

const barrelEs: TopicTexts<typeof barrel> = {
  title: "Llenar un barril",
  summary: "Cuánto tarda una manguera en llenar un barril.",
  examples: ["barrel tambor de 55 gal, manguera 5 gpm", "barrel drum=30gal hose=2gpm"],
  facts: {
    drum: { label: "Tambor", question: "¿De qué tamaño es el tambor?", words: ["tambor"], first: true },
    hose: { label: "Manguera", question: "¿Cuánto da la manguera?", words: ["manguera"] },
    cold: { label: "Agua fría", question: "¿Qué tan fría está el agua?", words: ["fria"] },
    warm: { label: "Agua tibia", question: "¿Qué tan tibia debe estar?", words: ["tibia"] },
    lined: { label: "Forrado", question: "¿El tambor está forrado?", words: ["forrado"] },
    metal: {
      label: "Material",
      question: "¿De qué es el tambor?",
      words: ["material"],
      options: { steel: { label: "Acero", words: ["acero"] }, plastic: { label: "Plástico", words: ["plastico"] } },
    },
    helpers: { label: "Ayudantes", question: "¿Cuántos ayudan?", words: ["ayudantes"] },
  },
  results: { fill_time: "Tiempo de llenado", stir_time: "Mezclado", warming: "Calentamiento", plug: "Tapón" },
  findings: {
    fills: ({ time }) => `Lleno en ${time}`,
    slow: ({ fact, time }) => `${fact} es lenta: ${time}.`,
    not_warmer: ({ cold, warm }) => `La tibia (${warm}) debe pasar de la fría (${cold}).`,
    half: () => "La mitad",
    row: ({ part }) => `Al ${part}`,
  },
  tables: { stages: { title: "Etapas", columns: { stage: "Etapa", time: "Tiempo" } } },
  charts: { level: { title: "Nivel en el tambor", columns: { water: "Agua" } } },
};

const ramp = declareTopic({
  id: "ramp",
  work: "long",
  facts: {
    run: { type: "quantity", quantity: "length", min: 0.1, max: 100 },
    rise: { type: "quantity", quantity: "dimension", min: 0.001, max: 5 },
  },
  results: ["slope"],
  findings: { slopes: { slope: "share" } },
  compute: ({ run_m, rise_m }) => {
    const slope = q("share", rise_m / run_m);
    const how = { equation: "s = h / l", inputs: [], sources: [INVENTED] as const };
    return {
      kind: "answer",
      verdict: "info",
      headline: { code: "slopes", data: { slope } },
      results: [{ id: "slope", quantity: slope, how }],
      findings: [],
    };
  },
});
const rampEn: TopicTexts<typeof ramp> = {
  title: "Slope of a ramp",
  summary: "How steep a ramp is.",
  examples: ["ramp run=12ft rise=12in"],
  facts: {
    run: { label: "Run", question: "How long is the ramp?", words: ["run"] },
    rise: { label: "Rise", question: "How high does it go?", words: ["rise"] },
  },
  results: { slope: "Slope" },
  findings: { slopes: ({ slope }) => `Slope ${slope}` },
};
const rampEs: TopicTexts<typeof ramp> = {
  title: "Pendiente de una rampa",
  summary: "Qué tan inclinada es una rampa.",
  examples: ["ramp run=12ft rise=12in"],
  facts: {
    run: { label: "Largo", question: "¿Qué largo tiene la rampa?", words: ["largo"] },
    rise: { label: "Altura", question: "¿Cuánto sube?", words: ["altura"] },
  },
  results: { slope: "Pendiente" },
  findings: { slopes: ({ slope }) => `Pendiente ${slope}` },
};

const CITE = { ...INVENTED, checkedOn: "2026-01-01" } as const;
const hotBarrel = declareCaution({
  id: "hot_barrel",
  severity: "stop",
  cites: [CITE],
  decides: "health",
  data: { warm: "temperature" },
  check: ({ storage_C }) =>
    storage_C !== undefined && storage_C > 60 ? { warm: q("temperature", storage_C) } : undefined,
  examples: {
    fires: [{ name: "70 C", site: { storage_C: 70 } }],
    silent: [{ name: "60 C", site: { storage_C: 60 } }],
  },
});
const wetFloor = declareCaution({
  id: "wet_floor",
  severity: "note",
  cites: [CITE],
  decides: "household",
  data: {},
  check: ({ storage_C }) => (storage_C === undefined ? undefined : {}),
  examples: { fires: [{ name: "any", site: { storage_C: 1 } }], silent: [{ name: "unknown", site: {} }] },
});
const hotEn: CautionTexts<typeof hotBarrel.data> = { ask: ({ warm }) => `${warm} burns skin.`, show: "Measure it." };
const hotEs: CautionTexts<typeof hotBarrel.data> = { ask: ({ warm }) => `${warm} quema la piel.`, show: "Mídalo." };
const wetEn: CautionTexts<typeof wetFloor.data> = { ask: () => "The floor gets wet.", show: "Look." };
const wetEs: CautionTexts<typeof wetFloor.data> = { ask: () => "El piso se moja.", show: "Mire." };

/** The library of the two test topics. */
export const fixtureLibrary: Library = {
  topics: new Map([barrel, ramp].map((topic) => [topic.id, topic])),
  cautions: [hotBarrel, wetFloor],
  faults: NO_FAULTS,
  texts: {
    en: {
      topics: new Map<string, AnyTopicTexts>([
        ["barrel", barrelEn],
        ["ramp", rampEn],
      ]),
      cautions: new Map([
        ["hot_barrel", hotEn],
        ["wet_floor", wetEn],
      ]),
    },
    es: {
      topics: new Map<string, AnyTopicTexts>([
        ["barrel", barrelEs],
        ["ramp", rampEs],
      ]),
      cautions: new Map([
        ["hot_barrel", hotEs],
        ["wet_floor", wetEs],
      ]),
    },
  },
};

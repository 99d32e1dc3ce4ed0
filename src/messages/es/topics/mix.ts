import type { mix } from "../../../topics/mix.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

export const texts: TopicTexts<typeof mix> = {
  title: "Válvula mezcladora",
  names: ["mezcla", "mezclar"],
  summary: "Cuánta agua mezclada da un tanque caliente, y qué tan rápido quema esa agua.",
  examples: [
    "mix 135 a 120 con 50",
    "mix caliente 140F, deseada 120F, fría 50F, tanque 50 gal",
    "mix tanque 80 gal a 140F, deseada 105F, fría 45F, válvula mezcladora",
  ],
  facts: {
    setpoint: { ...commonFacts.setpoint, before: ["desde"], first: true },
    wanted: {
      label: "Temperatura deseada",
      question: "¿Qué temperatura se quiere en las llaves?",
      help: "Después de la válvula mezcladora. La regadera anda cerca de 105 °F; tinas y regaderas tienen límite de 120 °F.",
      words: ["deseada", "mezclada", "mezcla", "en la llave", "salida", "quiero"],
      before: ["a"],
    },
    cold: { ...commonFacts.cold, before: ["con"], after: ["de entrada"] },
    tank: { ...commonFacts.tank, help: "Omítalo y le doy porcentajes en lugar de galones." },
    drawable: {
      label: "Parte que sale caliente",
      question: "¿Qué parte del tanque sale caliente antes de enfriarse?",
      help: "Las reglas del oficio dicen de 67 a 80 %. Un día simulado lo dice mejor.",
      words: ["aprovechable", "parte útil"],
    },
    mixing_valve: commonFacts.mixing_valve,
  },
  results: {
    mix_fraction_hot: "Parte caliente de la mezcla",
    mixed_volume: "Agua mezclada de un tanque",
    hot_volume: "Agua caliente que lleva",
    gain_over_unmixed: "Más que sin mezclar",
    scald_time_storage: "Quema la piel, agua del tanque",
    scald_time_tap: "Quema la piel, agua de la llave",
  },
  findings: {
    mixes_volume: ({ volume, wanted, hot }) => `Un tanque da ${volume} a ${wanted}, de ${hot} de agua caliente.`,
    mixes: ({ hot, wanted, gain }) =>
      `La mezcla a ${wanted} lleva ${hot} de agua caliente: ${gain} más agua que sin mezclar.`,
    mixes_nothing: ({ wanted }) => `El tanque y la temperatura deseada están a ${wanted}: no hay mezcla ni ganancia.`,
    gain_needs_valve: ({ gain, setpoint }) =>
      `Ese ${gain} más pide una válvula mezcladora en el calentador. Sin ella, llega agua a ${setpoint} a las llaves.`,
    tap_burns: ({ wanted }) =>
      `${wanted} pasa del límite de 120 °F para tinas y regaderas. Ajuste la válvula más baja.`,
    below_scald_table: ({ wanted, lowest }) =>
      `Las tablas de quemaduras empiezan en ${lowest}; para ${wanted} no dan tiempo. Aun así pruebe con la mano.`,
    children_burn_faster: () => "Los tiempos son para adultos. Los niños y las personas mayores se queman más rápido.",
    fixtures_keep_theirs: () =>
      "La válvula del calentador no es la protección de tinas y regaderas contra quemaduras; esas llevan la suya.",
    measure_at_tap: ({ wanted }) => `Mida en la llave más cercana después de dos minutos: la meta es ${wanted}.`,
    wanted_above_storage: ({ wanted, setpoint }) =>
      `Pide ${wanted} de un tanque a ${setpoint}, y mezclar solo enfría. Suba el tanque o pida menos.`,
    cold_above_wanted: ({ cold, wanted }) =>
      `El agua fría a ${cold} no puede bajar una mezcla a ${wanted}. Revise la temperatura del agua fría.`,
    step_hotter: ({ setpoint }) => `Tanque a ${setpoint} con válvula`,
    step_expansion: () => "Tanque de expansión para esto",
  },
};

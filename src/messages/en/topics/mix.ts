import type { mix } from "../../../topics/mix.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

export const texts: TopicTexts<typeof mix> = {
  title: "Mixing valve",
  summary: "How much mixed water a hot tank makes, and how fast that water burns skin.",
  examples: [
    "mix 135 to 120 with 50 in",
    "mix setpoint=140F wanted=120F cold=50F tank=50gal",
    "mix 80 gal tank at 140F to 105F, 45F cold, mixing valve",
  ],
  facts: {
    setpoint: { ...commonFacts.setpoint, before: ["at", "from"], first: true },
    wanted: {
      label: "Wanted temperature",
      question: "What temperature is wanted at the taps?",
      help: "Behind the mixing valve. Showers run near 105 °F; tubs and showers are limited to 120 °F.",
      words: ["wanted", "mixed", "mixed to", "tap", "at the tap", "delivered", "outlet", "want"],
      before: ["to"],
    },
    cold: { ...commonFacts.cold, before: ["with"], after: ["in"] },
    tank: { ...commonFacts.tank, help: "Skip it, and I give shares instead of gallons." },
    drawable: {
      label: "Share drawn hot",
      question: "What share of the tank comes out hot before it cools?",
      help: "Trade rules say 67 to 80 %. A simulated day says it better.",
      words: ["drawable", "usable", "usable share", "draw efficiency"],
    },
    mixing_valve: commonFacts.mixing_valve,
  },
  results: {
    mix_fraction_hot: "Hot share of the mix",
    mixed_volume: "Mixed water from one tank",
    hot_volume: "Hot water it is made of",
    gain_over_unmixed: "More than unmixed",
    scald_time_storage: "Burns skin, tank water",
    scald_time_tap: "Burns skin, tap water",
  },
  findings: {
    mixes_volume: ({ volume, wanted, hot }) => `One tank makes ${volume} at ${wanted}, from ${hot} of hot water.`,
    mixes: ({ hot, wanted, gain }) => `${hot} hot water makes the mix at ${wanted}: ${gain} more water than unmixed.`,
    mixes_nothing: ({ wanted }) => `Stored and wanted are both ${wanted}, so nothing mixes and nothing is gained.`,
    gain_needs_valve: ({ gain, setpoint }) =>
      `The ${gain} more needs a mixing valve at the heater. Without one, ${setpoint} water reaches the taps.`,
    tap_burns: ({ wanted, limit }) => `${wanted} is over the ${limit} limit for tubs and showers. Set the valve lower.`,
    below_scald_table: ({ wanted, lowest }) =>
      `Burn tables start at ${lowest}; for ${wanted} they give no time. Still test with a hand first.`,
    children_burn_faster: () => "Burn times are for adults. Children and older people burn faster.",
    fixtures_keep_theirs: () =>
      "The valve at the heater is not the scald protection of tubs and showers; those keep their own.",
    measure_at_tap: ({ wanted }) => `Measure at the nearest tap after two minutes: ${wanted} is the target.`,
    wanted_above_storage: ({ wanted, setpoint }) =>
      `You want ${wanted} from a tank at ${setpoint}, and mixing only cools. Store hotter or ask for less.`,
    cold_above_wanted: ({ cold, wanted }) =>
      `Cold water at ${cold} cannot cool a mix to ${wanted}. Check the cold water temperature.`,
    step_hotter: ({ setpoint }) => `Store at ${setpoint} with a valve`,
    step_expansion: () => "Expansion tank for this",
  },
};

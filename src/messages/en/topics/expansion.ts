import type { expansion } from "../../../topics/expansion.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

export const texts: TopicTexts<typeof expansion> = {
  title: "Expansion tank",
  summary: "How much the water grows, and the expansion tank and air charge that take it.",
  examples: [
    "expansion 80 gal tank, 50F cold 140F hot 60 psi",
    "expansion tank=50gal setpoint=120F line_pressure=60psi pressure_limit=80psi",
    "expansion 66 gal, hot 140F, cold 40F, 60 psi, existing tank 2 gal, precharge 40 psi",
  ],
  facts: {
    tank: commonFacts.tank,
    setpoint: commonFacts.setpoint,
    line_pressure: commonFacts.line_pressure,
    cold: commonFacts.cold,
    closed: commonFacts.closed,
    relief_setting: commonFacts.relief_setting,
    control: {
      label: "What takes the growth now",
      question: "What takes up the growth of the water today?",
      words: ["expansion control", "growth goes to"],
      options: {
        none: { label: "No expansion tank", words: ["nothing fitted", "no expansion control"] },
        tank: { label: "Expansion tank fitted", words: ["has expansion tank", "expansion tank installed"] },
        relief_valve: { label: "Relief valve drips", words: ["relief drips", "drips at the relief", "t&p drips"] },
      },
    },
    pressure_limit: {
      label: "Pressure limit",
      question: "How high may the pressure climb?",
      help: "Without a limit of your own I stay 10 % under the relief setting.",
      words: ["pressure limit", "limit", "max", "maximum", "max pressure", "maximum pressure", "ceiling"],
    },
    pipe_volume: {
      label: "Water in the hot pipes",
      question: "How much water stands in the hot pipes?",
      help: "Small in one house; give it for long runs or a circulation loop.",
      words: ["pipe volume", "pipe contents", "pipes", "piping"],
    },
    vessel_metal: {
      label: "Metal that grows along",
      question: "What is the tank made of?",
      help: "Only the full formula counts it. The next size follows the safer number without it.",
      words: ["metal", "vessel metal", "tank metal"],
      options: {
        steel: { label: "Steel", words: ["steel", "lined steel", "glass lined"] },
        copper: { label: "Copper", words: ["copper"] },
        none: { label: "Leave it out", words: ["no metal", "without metal"] },
      },
    },
    existing_tank: {
      label: "Expansion tank that is there",
      question: "How big is the expansion tank that is there?",
      help: "Its total volume, from the label.",
      words: ["existing tank", "existing expansion tank", "old expansion tank", "fitted tank"],
    },
    existing_precharge: {
      label: "Its air charge",
      question: "What air pressure does it have?",
      help: "Tire gauge on the air valve, with the water side drained to no pressure.",
      words: ["precharge", "air charge", "air pressure", "existing precharge"],
    },
  },
  results: {
    expanded_volume: "Water grows by",
    acceptance_volume: "Acceptance needed",
    tank_volume_minimum: "Smallest tank, by acceptance",
    tank_volume_full_formula: "Smallest tank, full formula",
    next_stock_size: "Next common size",
    precharge: "Air charge",
    pressure_ceiling: "Pressure may climb to",
    tank_volume_code_limit: "Smallest tank for the code limit",
    existing_acceptance: "Takes in, the tank that is there",
  },
  findings: {
    needs_tank: ({ ceiling, minimum, size, precharge }) =>
      `To stay under ${ceiling}, fit an expansion tank of at least ${minimum}: next common size ${size}, air charge ${precharge}.`,
    needs_large_tank: ({ minimum, precharge }) =>
      `Needs at least ${minimum} with ${precharge} air: beyond common sizes. Use several tanks or ask an engineer.`,
    existing_enough: ({ acceptance, needed }) =>
      `The expansion tank there takes ${acceptance}; the water grows by ${needed}.`,
    existing_short: ({ acceptance, needed }) =>
      `Too small: the expansion tank there takes ${acceptance}, the water grows by ${needed}. Fit a larger one.`,
    open_system: ({ expanded }) =>
      `Open system: ${expanded} of growth goes back to the street. A check valve or regulator would change that.`,
    code_limit_larger: ({ volume, limit }) =>
      `Model codes ask to stay at ${limit} or less: that takes at least ${volume}. Ask which limit counts here.`,
    check_acceptance: ({ acceptance }) =>
      `Check the maker's acceptance volume: at least ${acceptance}. The diaphragm may stop before the tank is full.`,
    set_precharge_dry: ({ precharge }) =>
      `Set the air to ${precharge} before water reaches it. Many come from the factory at another pressure.`,
    place_tank: () =>
      "Fit it on the cold side, after the check valve or regulator, with nothing that shuts in between.",
    existing_precharge_assumed: ({ precharge }) =>
      `I took its air charge as ${precharge}. Measure it with the water side drained, and tell me.`,
    give_existing_size: () => "Give me its total volume and air charge, and I check whether it is enough.",
    hot_not_above_cold: ({ setpoint, cold }) =>
      `A tank at ${setpoint} is not hotter than ${cold} cold water, so nothing grows. Check both temperatures.`,
    line_at_ceiling: ({ line_pressure, ceiling }) =>
      `Line pressure ${line_pressure} leaves no room below ${ceiling}. Reduce the pressure first, then size the tank.`,
    limit_above_relief: ({ limit, relief }) =>
      `A limit of ${limit} lies above the relief setting of ${relief}. Give a limit below it.`,
    step_code_limit: ({ limit }) => `Keep it under ${limit}`,
    step_mix: ({ setpoint }) => `Mixing from ${setpoint}`,
  },
};

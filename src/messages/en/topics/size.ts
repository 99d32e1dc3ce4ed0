import type { size } from "../../../topics/size.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

export const texts: TopicTexts<typeof size> = {
  title: "Tank for a household",
  summary: "Whether this tank keeps this household in hot water, day after day, and what to change if not.",
  examples: [
    "size people=4 tank=80gal setpoint=135F",
    "size 4 people, 80 gal tank at 125F, mixing valve",
    "size people=3 tank=50gal setpoint=120F mode=both_together",
  ],
  facts: {
    people: { ...commonFacts.people, first: true },
    bedrooms: commonFacts.bedrooms,
    model: {
      ...commonFacts.model,
      help: "Its short name in the company's catalogue. Skip it, and I ask for the tank.",
    },
    tank: {
      ...commonFacts.tank,
      help: "It is on the rating plate, in gallons. A model of the catalogue does as well: model= and its name.",
    },
    setpoint: { ...commonFacts.setpoint, before: ["at"] },
    mixing_valve: commonFacts.mixing_valve,
    bathrooms: commonFacts.bathrooms,
    element: {
      label: "Element power",
      question: "How strong is each element?",
      help: "On the plate, such as 4500 W. Zero for a unit without elements.",
      words: ["element", "elements", "element power"],
    },
    heat_pump: {
      label: "Heat pump output",
      question: "How much heat does the heat pump give?",
      help: "Heat into the water at the rating point. Zero for a plain electric tank.",
      words: ["heat pump output", "heat pump heat", "heat pump capacity"],
    },
    wanted: commonFacts.wanted,
    cold: commonFacts.cold,
    place: commonFacts.place,
    month: commonFacts.month,
    air: commonFacts.air,
    mode: commonFacts.mode,
    supply: commonFacts.supply,
    shower: {
      label: "Showers in the busiest hour",
      question: "How many showers are taken in the busiest hour?",
      help: "For the worksheet only. Not said, I take three for every four people.",
      words: ["shower", "showers", "busiest showers"],
    },
    shave: {
      label: "Shaves in the busiest hour",
      question: "How many people shave at the sink in the busiest hour?",
      words: ["shave", "shaves"],
    },
    hand_dishes: {
      label: "Hand dish washes in the busiest hour",
      question: "How often are dishes washed by hand in the busiest hour?",
      words: ["hand dishes", "hand dish wash", "dishes by hand"],
    },
    dishwasher: {
      label: "Dishwasher loads in the busiest hour",
      question: "How many dishwasher loads run in the busiest hour?",
      words: ["dishwasher", "dishwasher loads"],
    },
    clothes_washer: {
      label: "Laundry loads in the busiest hour",
      question: "How many loads of laundry run in the busiest hour?",
      words: ["clothes washer", "washing machine", "loads of laundry", "laundry loads"],
    },
    worksheet: {
      label: "Worksheet",
      question: "Which edition of the peak-hour worksheet?",
      help: "The present page counts 20 gal a shower, the one before it 10 gal. They differ by half, so I name the one used.",
      words: ["worksheet", "worksheet edition"],
      options: {
        present: { label: "Present page", words: ["20 gal shower page"] },
        middle: { label: "Ten-gallon shower page", words: ["10 gal shower page", "older page"] },
      },
    },
    appliances: {
      label: "Washers run",
      question: "When do the washing machine and the dishwasher run?",
      help: "Quiet hours: laundry from 2 in the afternoon, dishes from 10 at night.",
      words: ["appliances", "appliance hours"],
      options: {
        any_hour: { label: "At any hour", words: ["any time"] },
        quiet_hours: { label: "In quiet hours", words: ["off peak", "staggered laundry"] },
      },
    },
    limit: {
      label: "Cold days allowed",
      question: "On what share of days may somebody run cold?",
      help: "Five of a hundred is a habit of ours, not a rule. Ask the household what they accept.",
      words: ["limit", "cold days allowed", "chance limit"],
    },
    days: {
      label: "Days sampled",
      question: "How many days shall I sample?",
      help: "More days take longer and narrow the chance down.",
      words: ["days", "sampled days", "sample days"],
    },
  },
  results: {
    peak_hour_demand: "Busiest hour asks for",
    first_hour_delivery: "Hot water in the first hour",
    usable_volume_mixed: "Mixed water in one go",
    recovery_rate_heat_pump: "Heat pump recovers",
    recovery_rate_elements: "Elements recover",
    lowest_outlet_temperature: "Coldest out of the tank, worst day",
    shortfall_volume: "Too cold, worst day",
    chance_of_running_cold: "Days that run cold",
    sampling_error: "Sampling error, plus or minus",
    recovery_time: "Full tank, from cold to hot",
    energy_per_day: "Electricity a day",
    cop_day: "Heat out for power in",
    storage_gain: "Gained by storing hotter",
  },
  findings: {
    runs_warm: ({ cold, days, low, high, limit }) =>
      `It serves: ${cold} of ${days} sampled days run cold. With 95 % confidence that is ${low} to ${high}; your limit is ${limit}.`,
    too_close: ({ cold, days, low, high, limit }) =>
      `Too close to call: ${cold} of ${days} sampled days run cold. With 95 % confidence that is ${low} to ${high}; your limit is ${limit}.`,
    runs_cold: ({ cold, days, low, high, limit }) =>
      `It runs cold too often: ${cold} of ${days} sampled days. With 95 % confidence that is ${low} to ${high}; your limit is ${limit}.`,
    worksheet_met: ({ demand, delivery }) =>
      `By the worksheet it would do: the busiest hour asks for ${demand}, and the tank gives ${delivery}.`,
    worksheet_short: ({ demand, delivery }) =>
      `By the worksheet it falls short: the busiest hour asks for ${demand}, and the tank gives ${delivery}.`,
    days_decide: () => "The worksheet is a rule of thumb for one hour. Where it differs, trust the sampled days.",
    counted_for: ({ cold, air }) =>
      `Chance and energy are for ${cold} cold water and ${air} air, not for the whole year.`,
    generic_sheet: ({ volume }) =>
      `No model named, so I took a usual unit that holds ${volume}, 90 % of its plate. Name the model for its own sheet.`,
    bedrooms_as_people: ({ people }) => `So many bedrooms are taken as ${people} people, a mean over many homes.`,
    not_used: ({ left, taken }) => `I went by: ${taken}. Not used: ${left}.`,
    heat_pump_barred: ({ air }) =>
      `At ${air} the air is outside what the heat pump works in, so it stays off part or all of the time.`,
    heat_pump_outside_map: () =>
      "The heat pump ran outside its measured range; I used the nearest edge. Take its energy as rough.",
    never_recovers: () => "From cold it does not get hot within four days in this mode. Pick another mode.",
    valve_taken_at: ({ valve }) => `The mixing valve is taken to be set to ${valve}. Measure at the nearest tap.`,
    showers_spread: () =>
      "Sampled showers are spread over the day as in many homes. A family that showers back to back runs cold more often.",
    nothing_helps: () =>
      "No single change brings it under the limit. Combine two, or share the water between two tanks.",
    change_none: () => "As asked",
    change_hotter: ({ setpoint }) => `Store at ${setpoint}, mixing valve`,
    change_heat_pump_first: () => "Mode: heat pump first",
    change_both_together: () => "Mode: both together",
    change_quiet_hours: () => "Laundry and dishes in quiet hours",
    change_model: ({ model }) => `Larger tank: ${model}`,
    change_hotter_and_mode: ({ setpoint }) => `Store at ${setpoint}, mixing valve, both together`,
    remark_fit_valve: ({ setpoint, time }) =>
      `Fit the mixing valve first: ${setpoint} burns in ${time} or less. Good against bacteria.`,
    remark_stays_hot: ({ setpoint }) => `Still ${setpoint}: the scald caution stands.`,
    remark_stays_cool: ({ setpoint, advised }) =>
      `Still ${setpoint}, under the ${advised} that health advice asks for.`,
    remark_as_before: () => "Scald and hygiene as before.",
    step_more_days: ({ days }) => `Sample ${days} days`,
    step_expansion: () => "Expansion tank for this",
    unknown_model: ({ typed, nearest }) =>
      `“${typed}” is not in the catalogue. Nearest: ${nearest}. Type one of these.`,
    no_catalogue: ({ typed }) =>
      `“${typed}” is not known: the company's catalogue is empty. Type the tank's gallons instead.`,
    unknown_place: ({ typed, nearest }) => `“${typed}” is not a place in the books. Nearest: ${nearest}.`,
    no_source: () => "Without elements and without a heat pump nothing heats the water. Give one of them its power.",
    setpoint_outside_unit: ({ setpoint, lowest, highest }) =>
      `This unit cannot be set to ${setpoint}. Type a tank temperature from ${lowest} to ${highest}.`,
    mode_only_heat_pump: () => "This unit has no elements, so it only runs on its heat pump. Type: heat pump only.",
    mode_only_elements: () => "This unit has no heat pump, so it only runs on its elements. Type: elements only.",
    mode_not_offered: () => "This unit does not offer that mode. Leave the mode out, and I take its usual one.",
    supply_unfit: ({ supply, made_for }) =>
      `This unit is made for ${made_for}, not for ${supply}. Type its own supply.`,
    wanted_above_storage: ({ wanted, setpoint }) =>
      `You want ${wanted} from a tank at ${setpoint}, and mixing only cools. Store hotter or ask for less.`,
    cold_above_wanted: ({ cold, wanted }) =>
      `Cold water at ${cold} cannot cool a mix to ${wanted}. Check the cold water temperature.`,
  },
  tables: {
    remedies: {
      title: "What to change, run through the same sampled days",
      columns: { change: "Change", chance: "Cold days", energy: "Energy a day", remark: "Scald and hygiene" },
    },
  },
  charts: {
    day: {
      title: "The hardest sampled day",
      columns: {
        outlet: "Leaving the tank",
        wanted: "Wanted at the taps",
        layers: "Tank layers, top to bottom",
        layer_1: "Layer 1, top",
        layer_2: "Layer 2",
        layer_3: "Layer 3",
        layer_4: "Layer 4",
        layer_5: "Layer 5",
        layer_6: "Layer 6",
        layer_7: "Layer 7",
        layer_8: "Layer 8",
        layer_9: "Layer 9",
        layer_10: "Layer 10",
        layer_11: "Layer 11",
        layer_12: "Layer 12, bottom",
        drawn: "Hot water drawn",
        heat_pump: "Heat pump",
        upper: "Upper element",
        lower: "Lower element",
      },
    },
  },
};

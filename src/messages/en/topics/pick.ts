import type { pick } from "../../../topics/pick.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";
import { unitRefusals } from "../unit-refusals.ts";

interface Best {
  readonly model: string;
  readonly setpoint: string;
  readonly cost: string;
}
const best =
  (mode: string) =>
  ({ model, setpoint, cost, share }: Best & { readonly share: string }) =>
    `${model} at ${setpoint}, ${mode}: ${cost} a year, and cold on ${share} of days.`;
const soFar =
  (mode: string) =>
  ({ model, setpoint, cost }: Best) =>
    `Best so far: ${model} at ${setpoint}, ${mode}, about ${cost} a year.`;
const cold =
  (mode: string) =>
  ({ share, setpoint, limit }: { readonly share: string; readonly setpoint: string; readonly limit: string }) =>
    `Runs cold on ${share} of days even at its warmest, ${setpoint}, ${mode}; the limit is ${limit}.`;

const MODES = {
  heat_pump_first: "heat pump first",
  heat_pump_only: "heat pump only",
  both_together: "both together",
  elements_only: "elements only",
} as const;

export const texts: TopicTexts<typeof pick> = {
  title: "Pick a model",
  summary: "Which models fit this site and keep this household in hot water, the cheapest to run first.",
  examples: [
    "pick people=2 height=66in door=21in",
    "pick for 3 people, ceiling 64 in, 240V, tank at 130F",
    "pick people=2 height=70in door=22in mode=heat_pump_first setpoint=130F limit=10%",
  ],
  facts: {
    people: { ...commonFacts.people, first: true },
    bedrooms: commonFacts.bedrooms,
    height: {
      label: "Height available",
      question: "How high is the spot, from the floor to the first thing in the way?",
      help: "Each unit's own height and what its anode rod and filter need above it are counted. Skip it, and height is not checked.",
      words: ["height", "headroom", "ceiling", "ceiling height"],
      after: ["high", "tall"],
    },
    door: {
      label: "Narrowest door",
      question: "How wide is the narrowest door or passage on the way in?",
      help: "Measure the clear opening, hinges and handrails too. Skip it, and the way in is not checked.",
      words: ["door", "doorway", "narrowest door", "passage", "hallway", "stairs", "way in"],
    },
    supply: {
      ...commonFacts.supply,
      question: "What voltage is there for the heater?",
      help: "240 V in most houses, 208 V off a three-phase service. With either, a 120 V plug-in unit can have its own circuit.",
    },
    breaker: {
      label: "Largest breaker",
      question: "How large a breaker does the panel have room for?",
      help: "What panel and feeder can still carry; an electrician says so.",
      words: ["breaker", "largest breaker", "breaker size", "circuit breaker"],
    },
    spaces: {
      label: "Free breaker spaces",
      question: "How many spaces are free in the panel?",
      help: "Count those of the old heater's breaker. 240 V takes two, 120 V one.",
      words: ["spaces", "free spaces", "breaker spaces", "slots", "panel spaces"],
    },
    room: {
      label: "Room volume",
      question: "How large is the room, closed?",
      help: "Length by width by height. Leave it open where grilles, louvers or ducts join it to more air.",
      words: ["room", "room volume", "room size", "closet"],
    },
    floor: {
      label: "Weight the floor may carry",
      question: "How heavy may a full heater be on that spot?",
      help: "From whoever answers for the floor. A slab on the ground carries any of these: leave it open.",
      words: ["floor", "floor limit", "floor carries", "weight limit", "full weight"],
    },
    bedroom: {
      label: "Nearest bedroom",
      question: "How far is it from the heater to the nearest bedroom?",
      words: ["bedroom away", "nearest bedroom", "to the bedroom", "bedroom distance", "from the bedroom"],
    },
    sound: {
      label: "Loudest allowed",
      question: "How loud may it be there, at the most?",
      help: "In dBA at the bedroom, or at one metre where the distance is not told. A quiet talk is near 50.",
      words: ["sound", "noise", "loudest", "sound limit", "noise limit"],
    },
    mixing_valve: {
      ...commonFacts.mixing_valve,
      help: "Tanks over 120 °F are tried behind one in any case; without one I say that it is needed.",
    },
    setpoint: {
      ...commonFacts.setpoint,
      question: "Which one tank temperature shall I try?",
      help: "Leave it open, and I try 120, 130 and 140 °F as far as each unit can be set.",
      before: ["at"],
    },
    hottest: {
      label: "Hottest tank",
      question: "How hot may the tank be kept at the most?",
      help: "120 °F, for example, where no mixing valve will be fitted.",
      words: ["hottest", "hottest tank", "no hotter than", "at most"],
    },
    mode: { ...commonFacts.mode, question: "Which one mode shall I try?" },
    bathrooms: commonFacts.bathrooms,
    wanted: commonFacts.wanted,
    place: commonFacts.place,
    month: {
      ...commonFacts.month,
      question: "In which month shall I count the cold days?",
      help: "The coldest one where nobody says otherwise. Costs are always of a whole year.",
    },
    rate: commonFacts.rate,
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
    cost_per_year: "Cost a year",
    energy_per_year: "Electricity a year",
    cop_year: "Heat out for power in, over the year",
    chance_of_running_cold: "Days that run cold",
    sampling_error: "Sampling error, plus or minus",
    height_needed: "Height needed, clearance in",
    full_mass: "Weight when full",
    footprint_load: "Load under it when full",
    sound_at_bedroom: "Sound at the bedroom",
  },
  findings: {
    unknown_place: unitRefusals.unknown_place,
    rate_not_in_books: unitRefusals.rate_not_in_books,
    wanted_above_storage: ({ wanted, setpoint }) =>
      `You want ${wanted} from a tank at ${setpoint}, and mixing only cools. Store hotter or ask for less.`,
    setpoint_above_hottest: ({ setpoint, hottest }) =>
      `You ask for a tank at ${setpoint} and for none hotter than ${hottest}. Leave one of the two out.`,

    best_heat_pump_first: best(MODES.heat_pump_first),
    best_heat_pump_only: best(MODES.heat_pump_only),
    best_both_together: best(MODES.both_together),
    best_elements_only: best(MODES.elements_only),
    so_far_heat_pump_first: soFar(MODES.heat_pump_first),
    so_far_heat_pump_only: soFar(MODES.heat_pump_only),
    so_far_both_together: soFar(MODES.both_together),
    so_far_elements_only: soFar(MODES.elements_only),
    nothing_fits: ({ models }) => `None fits: all ${models} models of the catalogue are refused.`,
    all_cold: ({ models, limit }) =>
      `None serves: of ${models} models that fit the site, each runs cold on more than ${limit} of days.`,
    empty_catalogue: () => "The company's catalogue is empty, so there is nothing to pick from.",
    tried: ({ settings, models, refused }) =>
      `Tried: ${settings} ways to run ${models} models; the site refuses ${refused}. The best way of each is listed.`,
    too_close: ({ low, high, limit }) =>
      `Too close to call: with 95 % confidence it runs cold on ${low} to ${high} of days; the limit is ${limit}.`,
    surely: ({ model, setpoint, cost }) =>
      `The cheapest that stays under the limit with 95 % confidence: ${model} at ${setpoint}, ${cost} a year.`,
    chance_for: ({ cold, air, days }) =>
      `Cold days are counted over ${days} days with ${cold} water and ${air} air. The cost is of a simulated year.`,
    bedrooms_as_people: ({ people }) => `So many bedrooms are taken as ${people} people, a mean over many homes.`,
    fit_valve: ({ setpoint, time }) =>
      `Fit the mixing valve before it is set to ${setpoint}: that burns in ${time} or less. Its price is not counted.`,
    weighs_full: ({ mass, load, usual }) =>
      `Full it weighs ${mass}: ${load} where it stands. Living floors are planned for ${usual} over the room, not on one spot. Whoever answers for the building decides.`,
    own_circuit: ({ models }) =>
      `These need a 120 V circuit of their own: ${models}. An electrician says what it takes.`,
    outdoor_units: ({ models }) =>
      `These stand with the heat pump outdoors: ${models}. I ran them in the heater room's air, so winter costs more than shown.`,
    sound_without_walls: () =>
      "Sound is the sheet's at one metre, falling with distance as outdoors. Walls take more off; a bare room echoes.",
    prices_set: ({ plan, day }) => `Prices: plan “${plan}” of the company's books, set ${day}.`,
    only_running_cost: () => "Ranked by running cost alone. Ask for the yearly cost to see price and payback.",
    not_checked: ({ limits }) => `Not told, so not checked: ${limits}.`,
    relax_first: ({ limit, models }) =>
      `One limit alone keeps out most. Limit: ${limit}. Models that it alone refuses: ${models}.`,
    two_limits: () => "Each model is refused by two limits or more, so no single one helps.",

    heat_pump_first: () => "Heat pump first",
    heat_pump_only: () => "Heat pump only",
    both_together: () => "Both together",
    elements_only: () => "Elements only",
    cold_heat_pump_first: cold(MODES.heat_pump_first),
    cold_heat_pump_only: cold(MODES.heat_pump_only),
    cold_both_together: cold(MODES.both_together),
    cold_elements_only: cold(MODES.elements_only),
    remark_needs_valve: () => "Needs a mixing valve",
    remark_has_valve: () => "Behind the mixing valve",
    remark_close: ({ low, high }) => `Too close to call: ${low} to ${high}`,
    remark_valve_and_close: ({ low, high }) => `Needs a mixing valve. Too close to call: ${low} to ${high}`,
    remark_none: () => "–",
    limit_of: ({ limit }) => limit,
    refused_door: ({ needed, there }) => `It is ${needed} wide; the narrowest door is ${there}.`,
    refused_height: ({ needed, there }) => `It needs ${needed} with the clearance above; there are ${there}.`,
    refused_floor: ({ needed, there }) => `Full it weighs ${needed}; the floor may carry ${there}.`,
    refused_room: ({ needed, there }) =>
      `It asks for a closed room of ${needed}; there are ${there}. Grilles or ducts may make up for it.`,
    refused_supply: ({ made_for, there }) => `It is made for ${made_for}; there are ${there}.`,
    refused_breaker: ({ needed, there }) => `It asks for a breaker of ${needed}; there is room for ${there}.`,
    refused_spaces: ({ needed, there }) => `It takes breaker spaces: ${needed}; free are ${there}.`,
    refused_sound: ({ needed, there, distance }) => `It makes ${needed} at ${distance}; the limit is ${there}.`,
    refused_mode: () => "It does not offer that mode.",
    refused_setpoint: ({ lowest, highest }) => `It can be set from ${lowest} to ${highest} only.`,

    step_size: ({ model }) => `Will it serve: ${model}`,
    step_cost: ({ model }) => `Yearly cost: ${model}`,
    step_circuit: ({ model }) => `Circuit: ${model}`,
    step_expansion: ({ model }) => `Expansion tank: ${model}`,
    step_relax: ({ limit }) => `Try with more: ${limit}`,
    step_limit: ({ limit }) => `Allow ${limit} cold days`,
  },
  tables: {
    ranking: {
      title: "Models that serve, the cheapest to run first",
      columns: {
        rank: "No.",
        model: "Model",
        setpoint: "Tank",
        mode: "Mode",
        cost: "Cost a year",
        energy: "Energy a year",
        chance: "Cold days",
        remark: "Remark",
      },
    },
    refused: { title: "Refused, and why", columns: { model: "Model", reason: "Reason" } },
    limits: {
      title: "What the site allows",
      columns: {
        limit: "Limit",
        there: "There is",
        refuses: "Refuses",
        admits: "Alone keeps out",
        from: "First fits at",
      },
    },
  },
};

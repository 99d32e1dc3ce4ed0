import type { commonFacts as specs } from "../../declaration/common-facts.ts";
import type { FactTexts, OptionTexts } from "../topic-texts.ts";

/** Words of the facts that several topics share. */
export const commonFacts = {
  tank: {
    label: "Tank",
    question: "How much water does the tank hold?",
    help: "It is on the rating plate, in gallons.",
    words: ["tank", "tank size", "size", "tank volume", "heater", "water heater", "storage tank"],
  },
  setpoint: {
    label: "Tank temperature",
    question: "What is the tank set to?",
    help: "The temperature the thermostat keeps, or the hottest it may get.",
    words: ["setpoint", "set point", "set to", "storage", "stored", "stored at", "hot", "thermostat", "tank temp"],
  },
  cold: {
    label: "Cold water",
    question: "How cold is the incoming water?",
    help: "Run the cold tap a minute and measure. The coldest week of winter counts most.",
    words: ["cold", "incoming", "incoming water", "inlet", "cold water", "mains"],
  },
  line_pressure: {
    label: "Line pressure",
    question: "What is the water pressure with everything shut?",
    help: "Read a gauge on the cold side near the heater, with no water running.",
    words: ["line pressure", "line", "house pressure", "street pressure", "static pressure", "static", "pressure"],
  },
  relief_setting: {
    label: "Relief setting",
    question: "At what pressure does the relief valve open?",
    help: "It is stamped on the valve's tag, usually 150 psi.",
    words: ["relief setting", "relief", "relief pressure", "relief valve", "t&p", "t&p setting", "t&p valve"],
  },
  closed: {
    label: "Closed system",
    question: "Is there a check valve, pressure regulator or backflow preventer before the heater?",
    help: "With one of these the water cannot push back to the street when it grows.",
    words: ["closed", "closed system", "check valve", "backflow preventer", "prv"],
  },
  mixing_valve: {
    label: "Mixing valve",
    question: "Is there a mixing valve between the tank and the taps?",
    help: "A thermostatic valve at the heater that blends in cold water.",
    words: ["mixing valve", "mixer", "tempering valve", "tmv", "thermostatic valve"],
  },
  people: {
    label: "People",
    question: "How many people live there?",
    help: "Count everybody who showers there on a usual day.",
    words: ["people", "persons", "occupants", "residents", "family of", "household of"],
  },
  bedrooms: {
    label: "Bedrooms",
    question: "How many bedrooms does the home have?",
    help: "Only where the people are not known; a home of so many bedrooms is taken to have the usual number of people.",
    words: ["bedrooms", "bedroom", "br", "bdrm"],
  },
  bathrooms: {
    label: "Bathrooms",
    question: "How many rooms have a shower or a tub?",
    help: "As many people can shower at once.",
    words: ["bathrooms", "baths", "full baths", "showers at once"],
  },
  model: {
    label: "Model",
    question: "Which model of the catalogue?",
    help: "Its short name in the company's catalogue, such as hollin-80.",
    words: ["model"],
  },
  wanted: {
    label: "Wanted at the taps",
    question: "How warm should showers and taps be?",
    help: "Mixed at the fixture. Showers run near 105 °F; tubs and showers are limited to 120 °F.",
    words: ["wanted", "at the tap", "tap temperature", "shower temperature"],
  },
  place: {
    label: "Place",
    question: "Which place?",
    help: "A place of the company's books. It gives the cold water and the air at the heater.",
    words: ["place", "town"],
  },
  air: {
    label: "Air at the heater",
    question: "How warm is the air where the heater stands?",
    help: "The heat pump draws its heat from it. The coldest months count most.",
    words: ["air", "room air", "air temperature", "room temperature", "ambient"],
  },
  month: {
    label: "Month",
    question: "Which month?",
    words: ["month"],
    options: {
      "1": { label: "January", words: ["jan"] },
      "2": { label: "February", words: ["feb"] },
      "3": { label: "March", words: [] },
      "4": { label: "April", words: ["apr"] },
      "5": { label: "May", words: [] },
      "6": { label: "June", words: ["jun"] },
      "7": { label: "July", words: ["jul"] },
      "8": { label: "August", words: ["aug"] },
      "9": { label: "September", words: ["sep", "sept"] },
      "10": { label: "October", words: ["oct"] },
      "11": { label: "November", words: ["nov"] },
      "12": { label: "December", words: ["dec"] },
    },
  },
  mode: {
    label: "Mode",
    question: "In which mode does it run?",
    help: "The unit's display has its own names; pick what it does.",
    words: ["mode", "operating mode"],
    options: {
      heat_pump_only: { label: "Heat pump only", words: ["heat pump alone"] },
      heat_pump_first: { label: "Heat pump first", words: ["heat pump with backup", "hybrid"] },
      both_together: { label: "Both together", words: ["both sources"] },
      elements_only: { label: "Elements only", words: ["element only", "resistance only"] },
    },
  },
  supply: {
    label: "Supply voltage",
    question: "What voltage is at the unit?",
    help: "240 V in most houses, 208 V off a three-phase service, 120 V for plug-in units.",
    words: ["supply", "supply voltage", "volts", "voltage"],
  },
  rate: {
    label: "Electricity rate",
    question: "Does electricity cost the same at all hours?",
    help: "It stands on the electric bill. Prices come from the company's books.",
    words: ["rate", "price plan", "tariff", "electric rate"],
    options: {
      flat: { label: "Flat rate", words: ["flat", "same price all day"] },
      time_of_use: { label: "Time of use", words: ["tou", "time of day", "peak pricing"] },
    },
  },
} as const satisfies {
  readonly [I in keyof typeof specs]: FactTexts & { readonly options?: Readonly<Record<string, OptionTexts>> };
};

import type { commonFacts as specs } from "../../declaration/common-facts.ts";
import type { FactTexts } from "../topic-texts.ts";

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
} as const satisfies { readonly [I in keyof typeof specs]: FactTexts };

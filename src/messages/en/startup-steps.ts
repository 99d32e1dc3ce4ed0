import type { StepWords } from "../startup-texts.ts";

/** The steps of starting a heater up, in English. */
export const startupSteps: Readonly<Record<string, StepWords>> = {
  filled: {
    label: "Filled before power",
    question: "Is the tank full, with the power still off?",
    how: "Open a hot tap, open the cold valve, and let it run until the tap runs smooth. No power before that.",
  },
  purged: {
    label: "Air let out",
    question: "Does every hot tap run without spitting?",
    how: "Run each hot tap, the farthest last, until no air comes. Clean the aerators.",
  },
  tight: {
    label: "No leaks",
    question: "Is every joint dry under full pressure?",
    how: "All taps shut. Wipe each joint with a dry paper, wait ten minutes, wipe again.",
  },
  line_pressure: {
    label: "Static pressure, measured",
    question: "What does the gauge read with everything shut?",
    how: "Gauge on the heater's drain or a hose tap, no water running. Read it for a minute: does it creep?",
  },
  precharge: {
    label: "Air in the expansion tank",
    question: "What does the tire gauge read on the expansion tank?",
    how: "Water off and a tap open, so that nothing presses on it. Set it to the line pressure.",
  },
  relief_free: {
    label: "Relief discharge",
    question: "Is the relief pipe full size, downhill and open to its end?",
    how: "Follow it with your eyes: no valve, no cap, no thread at the end, and it ends where nobody stands.",
  },
  bond: {
    label: "Bond to ground",
    question: "How many ohms from hot pipe to cold pipe to tank to ground?",
    how: "Locked out and proved dead. Ohmmeter zeroed on its own leads first.",
  },
  supply: {
    label: "Supply voltage",
    question: "What voltage stands at the unit?",
    how: "Leg to leg, then each leg to ground: the two legs are alike. Right breaker, right label.",
  },
  air_clear: {
    label: "Air way",
    question: "Is the air way open, and the filter in?",
    how: "Nothing before intake and outlet, ducts joined and taped, grilles open, filter clean and seated.",
  },
  condensate_runs: {
    label: "Condensate runs",
    question: "Did a cup of water run to the end of the drain?",
    how: "Pour it into the unit's drain pan and look where it comes out. With a pump, hear it start and stop.",
  },
  set_temperature: {
    label: "Tank setting",
    question: "What temperature does the display show as set?",
    how: "As planned for this house. Above 120 °F (49 °C) a mixing valve stands between tank and taps.",
  },
  controls_set: {
    label: "Mode, schedule and clock",
    question: "Are mode, schedule and clock set as planned?",
    how: "The clock first: a schedule with a wrong clock heats at the wrong hours.",
  },
  first_rise: {
    label: "First hour of heating",
    question: "How much warmer did the tank get in the first hour?",
    how: "Difference of the display or of a tap at the tank, with nobody drawing water meanwhile.",
  },
  outlet_temperature: {
    label: "Hot at the tap",
    question: "How hot does it run at the nearest tap once it is steady?",
    how: "Tank hot first. Set the mixing valve, run three minutes, thermometer in the stream. Set and measure again.",
  },
  handed_over: {
    label: "Handed over",
    question: "Did you show the household how to run it?",
    how: "What the modes do, when to clean the filter, what to set when away, and how hot water burns.",
  },
};

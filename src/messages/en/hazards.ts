import type { HazardTexts } from "../hazard-texts.ts";

/**
 * Precautions before checks and repairs.
 * Source: lock, tag and prove dead after 29 CFR 1910.147 and 1910.333 and NFPA 70E, all from memory; the rest is common
 * practice. Burn times: CPSC 5098. Certificate for refrigerant: 40 CFR 82 (EPA section 608), from memory.
 */
export const hazards: HazardTexts = {
  lockout: {
    label: "Lock out",
    steps: [
      "Breaker or disconnect off; your lock and your tag on it, the key in your pocket.",
      "Prove the tester on something live.",
      "Prove it dead: leg to leg, and each leg to ground.",
      "Prove the tester again on something live.",
      "Wait for capacitors, and discharge the one you will touch.",
    ],
  },
  live: {
    label: "Live parts",
    steps: [
      "Only somebody qualified for live work; anybody else stops here and hands it on.",
      "Meter and leads rated CAT III or better; eye protection and insulating gloves.",
      "Dry floor, no jewellery, one hand where you can, nobody else within reach.",
      "Lock out to open or close the panel; have it live only while you measure.",
    ],
  },
  scald: {
    label: "Hot water",
    steps: [
      "Take the water for scalding until you have measured it: 140 °F (60 °C) burns in seconds.",
      "Gloves and eye protection; run it into a bucket or a drain, with a hose where it goes far.",
      "Keep the household away from the taps meanwhile.",
    ],
  },
  pressure: {
    label: "Pressure",
    steps: [
      "Never plug, cap or tie down a relief valve.",
      "Let the pressure off before anything is opened, and see the gauge at zero.",
      "Gauge rated 200 psi (1400 kPa) or more.",
    ],
  },
  refrigerant: {
    label: "Refrigerant",
    steps: [
      "No gauges and no opening of the circuit without the EPA 608 certificate.",
      "It may burn: no flame, no spark, and air through the room.",
      "If it hisses or smells oily, leave, and air the room.",
    ],
  },
  ladder: {
    label: "Ladder or attic",
    steps: [
      "Ladder on firm ground, tied or held, three points of contact.",
      "In an attic or crawl space: light, boards to stand on, somebody who knows you are there.",
    ],
  },
  gas: {
    label: "Gas or fumes",
    steps: [
      "CO meter on and read outside first; doors open.",
      "Above 35 ppm, or somebody ill: everybody out, and call from outside.",
      "No flame and no spark where gas or hydrogen may have gathered.",
    ],
  },
  water_off: {
    label: "Water shut off",
    steps: [
      "Tell the household before the water goes off.",
      "Heater's power off first: an element in an empty tank burns out.",
      "Shut the valve, open a hot tap, and wait until nothing more comes.",
    ],
  },
};

import type { away } from "../../../topics/away.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";
import { unitRefusals } from "../unit-refusals.ts";

export const texts: TopicTexts<typeof away> = {
  title: "While away",
  summary: "What to set a tank to while nobody is home, what it saves, and when to start reheating.",
  examples: [
    "away model=hollin-80 absence=21days",
    "away 5 weeks in february, model tarnley-50, set to 130F",
    "away 10 days, model brackwell-50",
  ],
  facts: {
    model: commonFacts.model,
    absence: {
      label: "Time away",
      question: "How long is nobody home?",
      help: "With its unit: 10 days, 3 weeks.",
      words: ["absence", "gone", "away for", "time away", "vacation", "trip"],
    },
    month: { ...commonFacts.month, question: "In which month do they leave?" },
    setpoint: commonFacts.setpoint,
    place: commonFacts.place,
    mode: commonFacts.mode,
    supply: commonFacts.supply,
    rate: commonFacts.rate,
  },
  results: {
    hold_temperature: "Hold at",
    reheat_lead: "Reheat before return",
    saving: "Saves",
    energy_saved: "Energy saved",
    energy_left_alone: "Energy if left alone",
    energy_away: "Energy held cool, with reheating",
    growth_time: "Time in the growth range",
    coolest_tank: "Coolest the tank gets",
  },
  findings: {
    ...unitRefusals,
    hold_cool: ({ hold, saving, lead }) =>
      `Hold at ${hold}, and start reheating ${lead} before they are back. It saves ${saving}.`,
    switch_off: ({ saving }) => `It has no away mode. Switched off it saves ${saving}.`,
    hardly_pays: ({ saving }) => `Leave it as it is: holding it cool would save only ${saving}.`,
    leave_it: () => "Leave it as it is: cooling down and reheating takes as much as keeping it hot.",
    no_time_to_reheat: () => "Leave it as it is: the absence is too short to cool down and reheat.",
    breaker_locked: () => "Switch it off at its own breaker and tag it, so that nobody else switches it on.",
    hot_on_arrival: ({ lead }) => `Switched on again, it is hot after ${lead}.`,
    reheat_with_heat_pump: () => "The reheating time is for the heat pump alone, which is the cheap way.",
    growth_time: ({ time, from, to }) =>
      `Held cool, its water spends ${time} between ${from} and ${to}, where Legionella grows.`,
    hydrogen_first: () =>
      "First, no flame and no smoking: hot water that stood for two weeks can hold hydrogen. Open the kitchen hot tap until it runs without spurting.",
    scald_first: ({ storage }) =>
      `Then heat it through. Water at ${storage} burns within seconds: nobody draws from it.`,
    heat_through: ({ storage }) => `Run it up to ${storage} until every source has stopped, then set it back.`,
    flush_outlets: () =>
      "Before the first shower, run every hot tap until it is at its hottest, shower heads off or in a bag. Then run the cold.",
    people_at_risk: () => "Old, ill or smoking people are at most risk. The health authority decides what is enough.",
    frost: ({ air }) =>
      `The room is at ${air}. The tank guards itself while it has power; the pipes do not. Keep heat on.`,
    keep_full: () => "Leave the tank full. Elements that run dry burn out, so never drain it with the power on.",
    prices_set: ({ plan, day }) => `Priced by the plan ${plan}. Prices set on ${day}.`,
    left_alone: () => "Left alone",
    cool_hold: () => "Held cool",
    switched_off: () => "Switched off",
    step_longer: ({ absence }) => `And for ${absence}?`,
  },
  tables: {
    ways: {
      title: "Two ways to leave it",
      columns: { way: "Way", energy: "Energy", cost: "Cost", growth_time: "In growth range", lead: "Reheat before" },
    },
  },
};

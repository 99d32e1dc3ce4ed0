import type { cost } from "../../../topics/cost.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";
import { unitRefusals } from "../unit-refusals.ts";

export const texts: TopicTexts<typeof cost> = {
  title: "Yearly cost",
  summary: "A simulated year of a unit: energy, cost by mode, savings against the old heater, payback.",
  examples: [
    "cost model=hollin-80 people=4 replaces=gas_tank",
    "cost 4 people, time of use, old electric tank, model hollin-50",
    "cost model=sedge-66 people=5 setpoint=130F mode=heat_pump_only old_efficiency=0.9",
  ],
  facts: {
    model: commonFacts.model,
    people: commonFacts.people,
    replaces: {
      label: "Heater that comes out",
      question: "What does it replace?",
      help: "The saving is counted against it. Nothing: a new house.",
      words: ["replaces", "old heater", "instead of", "comes out"],
      options: {
        electric_tank: { label: "Electric tank", words: ["old electric tank", "old electric", "resistance tank"] },
        gas_tank: { label: "Gas tank", words: ["old gas tank", "old gas", "gas"] },
        none: { label: "Nothing", words: ["nothing", "new house", "new construction"] },
      },
    },
    setpoint: { ...commonFacts.setpoint, question: "What will the tank be set to?" },
    old_efficiency: {
      label: "Rating of the old heater",
      question: "What is the energy factor on the old heater's label?",
      help: "UEF or EF on the yellow label, such as 0.58 for gas or 0.92 for electric.",
      words: ["old efficiency", "energy factor", "uef", "efficiency", "ef"],
    },
    old_tank: {
      label: "Size of the old tank",
      question: "How much water does the old tank hold?",
      words: ["old tank", "old tank size", "old size"],
    },
    price: {
      label: "Installed price",
      question: "What does the new unit cost, installed?",
      help: "Leave it open and I take the catalogue's price with installation.",
      words: ["price", "installed price", "quote"],
    },
    instead: {
      label: "Price of the other heater",
      question: "What would the usual heater cost installed instead?",
      help: "Where the old one has to go anyway, only the difference has to pay back.",
      words: ["instead", "other price", "like for like"],
    },
    incentives: {
      label: "Incentives",
      question: "Count the incentives in the books?",
      help: "Rebates and credits that the company's price book lists.",
      words: ["incentives", "rebates", "rebate", "tax credit"],
    },
    bathrooms: commonFacts.bathrooms,
    wanted: commonFacts.wanted,
    place: commonFacts.place,
    mode: commonFacts.mode,
    supply: commonFacts.supply,
    rate: commonFacts.rate,
  },
  results: {
    energy_per_year: "Energy a year",
    cost_per_year: "Cost a year",
    emissions: "CO2 a year",
    cop_year: "Hot water per unit of electricity",
    cold_days: "Days with cold water, of 365",
    saving_per_year: "Saving a year",
    emissions_saved: "CO2 saved a year",
    net_price: "Price that has to come back",
    payback: "Payback, years",
  },
  findings: {
    ...unitRefusals,
    efficiency_outside: ({ lowest, highest }) =>
      `Such tanks were rated from ${lowest} to ${highest}. Read the label again, or leave it open.`,
    wanted_above_setpoint: ({ wanted, setpoint }) =>
      `${wanted} at the taps cannot come from a tank set to ${setpoint}. Set it hotter or ask for less.`,
    saves: ({ cost, saving }) => `Costs ${cost} a year to run. Saves ${saving} a year.`,
    costs_more: ({ cost, more }) => `Costs ${cost} a year to run. That is ${more} more than the old heater.`,
    costs: ({ cost, energy }) => `Costs ${cost} a year to run, for ${energy}.`,
    pays_back: ({ years, net }) => `${net} comes back in ${years} years at these prices.`,
    pays_at_once: () => "It costs no more than what it is compared with, so it pays from the first day.",
    never_pays: ({ net }) => `${net} does not come back: running it costs as much as the old heater, or more.`,
    counts_incentive: ({ name, amount }) => `Counted: ${name}, ${amount}.`,
    check_incentives: () => "Incentives have terms and end dates. Check that this job qualifies before you quote them.",
    never_cold: ({ days, wanted }) => `Nobody got water under ${wanted} on any of ${days} sampled days.`,
    runs_cold: ({ cold, days, wanted }) =>
      `On ${cold} of ${days} sampled days somebody got some water under ${wanted}.`,
    colder_than_old: ({ cold, old }) =>
      `That is ${cold} days against ${old} with the old heater. Weigh it with the cost.`,
    heat_from_room: ({ heat }) =>
      `It takes ${heat} a year out of the room air. Where that room is heated, the heating bill carries it.`,
    gas_by_equation: ({ efficiency }) =>
      `The gas tank is worked out by its rating of ${efficiency}, not simulated. Everybody is taken to stay warm.`,
    gas_work_left_out: () =>
      "Closing off gas and vent, and a new circuit, are work for licensed trades. They are not in the price.",
    prices_set: ({ plan, day }) => `Priced by the plan ${plan}. Prices set on ${day}.`,
    factors_set: ({ day }) => `CO2 factors set on ${day}.`,
    what_is_left_out: () => "Left out: standing charges, taxes, interest, upkeep, and price changes to come.",
    heat_pump_only: () => "Heat pump only",
    heat_pump_first: () => "Heat pump first",
    both_together: () => "Both together",
    elements_only: () => "Elements only",
    electric_tank: () => "Old electric tank",
    gas_tank: () => "Old gas tank",
    not_simulated: () => "not simulated",
    step_heat_pump_only: () => "In heat pump only",
    step_heat_pump_first: () => "In heat pump first",
    step_both_together: () => "In both together",
    step_elements_only: () => "In elements only",
  },
  tables: {
    by_heater: {
      title: "A year, by mode and by heater",
      columns: { heater: "Heater", energy: "Energy", cost: "Cost", emissions: "CO2", cold_days: "Cold days" },
    },
    by_plan: { title: "This mode under each price plan", columns: { plan: "Plan", cost: "Cost a year" } },
  },
  charts: {
    cost_by_month: { title: "Cost by month", columns: { new_heater: "This unit", old_heater: "Old heater" } },
  },
};

import type { schedule } from "../../../topics/schedule.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";
import { unitRefusals } from "../unit-refusals.ts";

export const texts: TopicTexts<typeof schedule> = {
  title: "Schedule",
  summary: "Mode and setpoint changes around peak hours that cost least and leave nobody colder.",
  examples: ["schedule model=hollin-80 people=4 mixing_valve=yes", "schedule 2 people, mixing valve, model tarnley-66"],
  facts: {
    model: commonFacts.model,
    people: commonFacts.people,
    mixing_valve: {
      ...commonFacts.mixing_valve,
      help: "Only behind one do I let the tank run hotter before peak hours.",
    },
    setpoint: commonFacts.setpoint,
    rate: commonFacts.rate,
    bathrooms: commonFacts.bathrooms,
    wanted: commonFacts.wanted,
    place: commonFacts.place,
    mode: commonFacts.mode,
    supply: commonFacts.supply,
  },
  results: {
    saving_per_year: "Saving a year",
    cost_per_year: "Cost a year",
    cost_left_alone: "Cost a year, left alone",
    energy_per_year: "Energy a year",
    changes_a_day: "Changes a day",
    cold_days: "Days with cold water, of 365",
    cold_days_left_alone: "Days with cold water, left alone",
    dear_share: "Energy in peak hours",
    dear_share_left_alone: "Energy in peak hours, left alone",
  },
  findings: {
    ...unitRefusals,
    no_schedule: ({ model }) => `${model} takes no schedule: its sheet allows no changes a day.`,
    no_dear_hours: ({ plan }) =>
      `Under the plan ${plan} no hour costs clearly more than the others, so there is nothing to move. Try time of use.`,
    wanted_above_setpoint: ({ wanted, setpoint }) =>
      `${wanted} at the taps cannot come from a tank set to ${setpoint}. Set it hotter or ask for less.`,
    follow_it: ({ saving, changes }) => `Saves ${saving} a year with ${changes} changes on each day with peak hours.`,
    leave_it_alone: ({ tried }) =>
      `Leave it alone. None of the ${tried} schedules I tried is cheaper without somebody running cold more often.`,
    check_valve_first: ({ storage }) =>
      `First test the mixing valve: the tank goes to ${storage}, which burns within seconds. Measure at the nearest tap.`,
    nobody_colder: ({ cold, alone, days }) =>
      `Nobody runs cold more often: ${cold} of ${days} sampled days, against ${alone} when left alone.`,
    day_by_day: ({ both, only_with, only_alone, short, short_alone }) =>
      `Day by day: cold on ${both} days either way, on ${only_alone} only when left alone, on ${only_with} only with this schedule. Too cold in the year: ${short} against ${short_alone}.`,
    refused_cheaper: ({ saving, cold, alone }) =>
      `Refused: a schedule that saves ${saving}, because ${cold} days would be cold instead of ${alone}.`,
    cools_in_dear_hours: ({ lowest }) =>
      `In peak hours it may fall to ${lowest} before it heats. It is hot again the same day.`,
    moves_out_of_dear: ({ before, after }) => `Energy in peak hours goes from ${before} of the year's to ${after}.`,
    within_limit: ({ changes, limit }) => `The unit allows ${limit} changes a day; this makes ${changes}.`,
    valve_would_help: () => "With a mixing valve at the tank it may store hotter before peak hours. That often pays.",
    set_clock: () => "Check the clock of the unit, and again when daylight saving time begins and ends.",
    searched: ({ tried, days, whole, all }) =>
      `Searched: ${tried} schedules on the same ${days} sampled days. The ${whole} that might cost least went on through all ${all}, or until they were colder than left alone.`,
    prices_set: ({ plan, day }) => `Priced by the plan ${plan}. Prices set on ${day}.`,
    weekdays: ({ months }) => (months === "" ? "Weekdays" : `Weekdays, months ${months}`),
    weekends: ({ months }) => (months === "" ? "Weekends" : `Weekends, months ${months}`),
    heat_pump_only: () => "Heat pump only",
    heat_pump_first: () => "Heat pump first",
    both_together: () => "Both together",
    elements_only: () => "Elements only",
    left_alone: () => "Left alone",
    program: () => "This schedule",
    cheaper_but_colder: () => "Cheaper, but colder",
    step_with_valve: () => "With a mixing valve",
    step_cost: () => "The whole year's cost",
  },
  tables: {
    program: {
      title: "The schedule",
      columns: { days: "Days", from: "From", mode: "Mode", setpoint: "Set to" },
    },
    compared: {
      title: "A year of each",
      columns: { way: "Way", cost: "Cost", energy: "Energy", cold_days: "Cold days", short: "Too cold" },
    },
  },
  charts: {
    schedule_day: {
      title: "A weekday of the dearest season",
      columns: { setpoint: "Set to", price: "Price", heat_ahead: "Heat ahead", dear_hours: "Peak hours" },
    },
  },
};

import type { wait } from "../../../topics/wait.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

const sizes = {
  "3/8": { label: "3/8 in", words: ["3/8", "3/8 inch"] },
  "1/2": { label: "1/2 in", words: ["1/2", "1/2 inch", "half inch"] },
  "5/8": { label: "5/8 in", words: ["5/8", "5/8 inch"] },
  "3/4": { label: "3/4 in", words: ["3/4", "3/4 inch", "three quarter"] },
  "1": { label: "1 in", words: ["1 inch", "one inch"] },
  "1-1/4": { label: "1-1/4 in", words: ["1-1/4", "1-1/4 inch"] },
  "1-1/2": { label: "1-1/2 in", words: ["1-1/2", "1-1/2 inch"] },
  "2": { label: "2 in", words: ["2 inch", "two inch"] },
} as const;

export const texts: TopicTexts<typeof wait> = {
  title: "Wait for hot water",
  summary:
    "How long hot water takes to arrive, what is wasted, and how fast the water runs; how it cools, and what a loop costs.",
  examples: [
    "wait 3/4 in copper L 50 ft 2 gpm",
    "wait pipe=pex size=1/2 length=50ft flow=2gpm",
    "wait 3/4 copper M 40 ft 1.2 gpm branch_size=1/2 branch_length=10ft",
    "wait 3/4 copper L 60 ft, 1/2 in foam, loop, tank=80gal",
  ],
  facts: {
    pipe: {
      label: "Pipe",
      question: "What pipe is it?",
      help: "Copper letters are printed along the tube: K green, L blue, M red.",
      words: ["pipe", "tube", "material"],
      options: {
        copper_k: { label: "Copper K", words: ["copper k", "type k", "k copper", "copper type k"] },
        copper_l: { label: "Copper L", words: ["copper l", "type l", "l copper", "copper type l", "copper"] },
        copper_m: { label: "Copper M", words: ["copper m", "type m", "m copper", "copper type m"] },
        pex: { label: "PEX", words: ["pex"] },
        cpvc: { label: "CPVC", words: ["cpvc"] },
      },
    },
    size: { label: "Pipe size", question: "What nominal size?", words: ["size", "pipe size"], options: sizes },
    length: {
      label: "Length",
      question: "How long is the pipe from heater to fixture?",
      help: "Along the pipe, not through the air.",
      words: ["length", "pipe length", "long", "distance"],
    },
    flow: {
      label: "Flow",
      question: "How much does the fixture run?",
      help: "Fill a bucket for 15 seconds and multiply by 4, or read the shower head.",
      words: ["flow", "fixture flow", "shower"],
    },
    water: {
      label: "Line",
      question: "Hot or cold line?",
      words: ["line", "water"],
      options: {
        hot: { label: "Hot line", words: ["hot line", "hot pipe"] },
        cold: { label: "Cold line", words: ["cold line", "cold pipe"] },
      },
    },
    setpoint: commonFacts.setpoint,
    cold: commonFacts.cold,
    branch_size: {
      label: "Branch size",
      question: "What size is the branch to the fixture?",
      words: ["branch size"],
      options: sizes,
    },
    branch_length: {
      label: "Branch length",
      question: "How long is the branch?",
      words: ["branch length", "branch"],
    },
    insulation: {
      label: "Pipe insulation",
      question: "How thick is the insulation on the hot pipe?",
      help: "The wall of the foam, not its outside.",
      words: ["insulation", "pipe insulation", "foam", "pipe wrap"],
      options: {
        none: { label: "Bare pipe", words: ["bare", "bare pipe", "not insulated", "uninsulated"] },
        half: { label: "1/2 in foam", words: ["half inch foam", "1/2 insulation", "1/2 in insulation"] },
        three_quarter: { label: "3/4 in foam", words: ["3/4 insulation", "3/4 in insulation"] },
        one: { label: "1 in foam", words: ["one inch foam", "1 in insulation"] },
      },
    },
    wanted: { ...commonFacts.wanted, help: "Water that has cooled below this is run off." },
    air: {
      label: "Air around the pipe",
      question: "How warm is the air around the pipe?",
      help: "Crawl space, wall or basement, in the season that counts.",
      words: ["air", "air around", "around the pipe", "ambient"],
    },
    loop: {
      label: "Circulation loop",
      question: "Does a circulation loop keep this pipe hot?",
      help: "A pump and a return line, or a crossover at the far fixture.",
      words: ["loop", "circulation loop", "recirculation", "recirc", "circulation pump"],
    },
    loop_length: {
      label: "Loop, there and back",
      question: "How long is the loop, there and back?",
      help: "Skip it, and I take twice the length of the pipe.",
      words: ["loop length", "loop there and back"],
    },
    loop_fall: {
      label: "Fall around the loop",
      question: "How much colder may the water come back?",
      help: "10 °F is usual. The pump flow follows from it.",
      words: ["fall", "loop fall", "loop drop", "temperature drop"],
    },
    loop_hours: {
      label: "Pump runs a day",
      question: "How many hours a day does the pump run?",
      words: ["pump runs", "loop hours", "pump hours"],
    },
    cop: {
      label: "Heat for power",
      question: "How much heat does the heater make of one unit of power?",
      help: "Its COP: about 3 for a heat pump, 1 on elements.",
      words: ["cop", "heater cop"],
    },
    tank: {
      ...commonFacts.tank,
      help: "Skip it, and I do not say how the pump stirs the tank.",
      words: ["tank", "tank size", "tank volume", "heater", "water heater", "storage tank"],
    },
    price: {
      label: "Price of electricity",
      question: "What does a kWh cost?",
      help: "Skip it, and I take the mean price of the company's first plan.",
      words: ["price", "kwh price", "electricity price"],
    },
  },
  results: {
    pipe_volume: "Water in the pipe",
    wait_time: "Shortest wait",
    wait_time_likely: "Likely wait",
    volume_wasted: "Run off each time",
    velocity: "Velocity",
    pressure_drop: "Friction in straight pipe",
    cooldown_time: "Too cool to use after",
    loop_heat_loss: "Loop loses",
    loop_heat_per_day: "Loop heat a day",
    loop_electricity_per_day: "Power for it a day",
    loop_cost_per_year: "Loop cost a year",
    pump_flow: "Pump flow",
    loop_turnovers: "Pump moves the tank, times a day",
  },
  findings: {
    waits: ({ time, volume, likely }) =>
      `Hot water takes at least ${time}, more likely ${likely}: ${volume} stands in the pipe.`,
    cold_run: ({ velocity, drop }) => `Water runs at ${velocity} and loses ${drop} in the straight pipe.`,
    plug_flow_is_least: () =>
      "The shortest wait supposes no mixing. At low flow or in a cold floor it may double (from memory).",
    straight_pipe_only: () =>
      "Friction is for straight pipe. Fittings, valves and height come on top; PEX fittings are narrow.",
    size_not_made: ({ size }) => `That kind of pipe is not in my table in ${size}. Choose another size or kind.`,
    branch_incomplete: () => "A branch needs both its size and its length: branch_size=1/2 branch_length=10ft.",
    step_smaller: ({ size, time }) => `${size} in: ${time}`,
    step_insulate: () => "With 3/4 in insulation",
    cools_in: ({ time, wanted, air }) => `Standing in air at ${air}, the water cools below ${wanted} in ${time}.`,
    stays_useful: ({ wanted }) => `The air is as warm as ${wanted}, so the water in the pipe stays of use.`,
    never_useful: ({ hot, wanted }) => `The tank is at ${hot}, so the water never reaches ${wanted}.`,
    bare_pipe: ({ asked }) =>
      `This pipe is bare. The model energy code asks R-${asked} from 3/4 in up (IECC 2021, R403.5.2).`,
    insulation_thin: ({ r, asked }) =>
      `On this pipe the insulation is R-${r}. The model energy code asks R-${asked} from 3/4 in up (IECC 2021, R403.5.2).`,
    loop_costs: ({ heat, electricity, money }) =>
      `The loop loses ${heat} while the pump runs: ${electricity} of power a day, ${money} a year, without the pump's own.`,
    loop_stirs: ({ times }) =>
      `The pump moves the whole tank ${times} times a day. That mixes its layers: less hot water in one go, and a worse COP.`,
    loop_feeds_branch: () => "The wait is for the branch alone: the loop keeps the rest hot while the pump runs.",
    loop_without_branch: () =>
      "The wait is counted with the pump off. For the wait behind the loop give the branch: branch_size=1/2 branch_length=10ft.",
    loop_on_demand: () => "Run the pump by button or sensor with a temperature stop; it then runs minutes, not hours.",
    still_air: () => "Cooling is for dry, still air. In a slab, wet soil or a draft it goes several times as fast.",
    loop_too_cold: ({ hot, fall }) =>
      `From ${hot} a fall of ${fall} ends below the air around. Ask for a smaller fall.`,
  },
};

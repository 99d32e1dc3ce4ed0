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
} as const;

export const texts: TopicTexts<typeof wait> = {
  title: "Wait for hot water",
  summary: "How long hot water takes to arrive, what is wasted, and how fast the water runs.",
  examples: [
    "wait 3/4 in copper L 50 ft 2 gpm",
    "wait pipe=pex size=1/2 length=50ft flow=2gpm",
    "wait 3/4 copper M 40 ft 1.2 gpm branch_size=1/2 branch_length=10ft",
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
  },
  results: {
    pipe_volume: "Water in the pipe",
    wait_time: "Shortest wait",
    wait_time_likely: "Likely wait",
    volume_wasted: "Run off each time",
    velocity: "Velocity",
    pressure_drop: "Friction in straight pipe",
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
  },
};

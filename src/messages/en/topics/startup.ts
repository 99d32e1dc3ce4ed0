import { buildStartupTexts } from "../../startup-texts.ts";
import { commonFacts } from "../common-facts.ts";
import { startupSteps } from "../startup-steps.ts";
import { texts as caution } from "./caution.ts";

const { model, setpoint, line_pressure, closed, supply, mode, air, cold, place } = commonFacts;

export const texts = buildStartupTexts({
  title: "Start-up",
  names: ["start up", "commissioning"],
  summary: "Starting a heater up, step by step: each reading is judged when it is typed, and kept with the job.",
  examples: ["startup list", "startup model hollin-50, set to 130F, list"],
  steps: startupSteps,
  siteFacts: {
    ...{ model, setpoint, line_pressure, closed, supply, mode, air, cold, place },
    control: caution.facts.control,
    list: {
      label: "Only list the steps",
      question: "Show all steps without asking?",
      words: ["list", "all steps", "overview"],
    },
  },
  passedOver: "Passed over",
  done: { label: "Done", words: ["done", "yes", "ok"] },
  notDone: { label: "Not done", words: ["not done", "no", "not yet"] },
  why: (label) => `${label}: why is it left like this?`,
  whyHelp: "A few words. If you measured again, type the new reading instead.",
  results: { steps_done: "Steps taken", steps_open: "Steps open" },
  ok: (label, measured) => `${label}: ${measured} is accepted.`,
  out: (label, measured, low, high) => `${label}: ${measured} is not accepted. Accepted: ${low} to ${high}.`,
  noted: (label, measured) => `${label}: ${measured}. Too little is known to judge it.`,
  expect: (low, high) => `Accepted: ${low} to ${high}.`,
  range: (low, high) => `${low} to ${high}`,
  plain: {
    all_accepted: ({ steps }) => `All ${steps} steps are taken, or left with a reason.`,
    some_open: ({ open, steps }) => `${open} of ${steps} steps are open.`,
    accepted: () => "Accepted",
    outside: () => "Not accepted",
    outside_reasoned: () => "Not accepted, with a reason",
    not_judged: () => "Not judged",
    done: () => "Done",
    not_done: () => "Not done",
    reasoned: ({ because }) => `Left: ${because}`,
    open: () => "Open",
    left_out: () => "Not needed here",
    fix_or_say: () => "Put it right and type the new reading, or say why it stands.",
    critical_left: () => "Somebody can be hurt by this one. Go back and do it, or say why it is left.",
    offer_fault: () => "If it does not come right, type “fault” to look for the cause.",
    element_gives: ({ supply, rated, power }) =>
      `At ${supply} an element for ${rated} gives ${power}. Check that the plate allows this element here.`,
    rise_counted_with: ({ cold }) => `The first hour is judged with water that came in at ${cold}.`,
    unknown_model: ({ typed }) => `There is no model “${typed}” in the catalogue.`,
    not_kept: () => "No job is open, so nothing of this is kept. Type “job” and its number first.",
    step_close: () => "Close the job",
    step_fault: () => "Look for the fault",
    step_walk: () => "Take the steps",
  },
  table: {
    title: "Steps",
    columns: { step: "Step", measured: "Measured", accepted: "Accepted", stands: "How it stands" },
  },
});

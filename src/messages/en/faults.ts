import type { FaultWords } from "../fault-words.ts";

/** What stands around the knowledge of faults. */
export const faults: FaultWords = {
  title: "Find a fault",
  names: ["trouble", "troubleshoot", "diagnose", "problem", "callback", "call back"],
  summary: "From what people say to the cause, by the checks that tell most a minute, danger first.",
  examples: [
    "fault no hot water since this morning",
    "fault runs out after one shower, model=hollin-50 age=mid",
    "trouble breaker trips as soon as it kicks on",
  ],
  complaint: {
    label: "What is wrong",
    question: "What is wrong? Say it as the customer did.",
    help: "Several complaints at once are fine, and what is not the case helps too.",
    words: ["complaint", "what is wrong"],
  },
  unit: {
    label: "Kind of heater",
    question: "What kind of heater is it?",
    words: ["unit", "kind of heater"],
    options: {
      integrated: { label: "Heat pump on the tank", words: ["integrated", "on top of the tank"] },
      split: { label: "Heat pump outdoors", words: ["split", "outdoor unit"] },
      resistance: { label: "Elements only", words: ["resistance", "plain electric"] },
    },
  },
  age: {
    label: "Age",
    question: "How long has it been in?",
    words: ["age"],
    options: {
      new: { label: "Under 60 days", words: ["new"] },
      mid: { label: "Up to 6 years", words: ["middling"] },
      old: { label: "Older than 6 years", words: ["old"] },
    },
  },
  lately: {
    label: "Lately",
    question: "Did anything happen or change just before it began?",
    words: ["lately", "just before"],
    options: {
      nothing: { label: "Nothing", words: ["nothing changed"] },
      new_heater: { label: "Heater put in", words: ["new heater"] },
      new_plumbing: { label: "Other plumbing work", words: ["plumbing work"] },
      power_outage: { label: "Power cut", words: ["outage"] },
      utility_program: { label: "Joined a utility program", words: ["utility program"] },
    },
  },
  symptom: { label: "Complaint", question: "Which of these comes nearest?" },
  noneOfThese: "None of these",
  done: "Done",
  ready: (check) => `All of that seen to? Then: ${check}`,
  reading: (check) => `${check}, as measured`,
  heard: (symptom) => `Heard: ${symptom}.`,
  denied: (symptom) => `Heard that it is not this: ${symptom}.`,
  notCured: (cause) => `Done and not cured: ${cause}`,
  record: {
    asker_may: "What the record lets the asker do",
    asker_tools: "Tools at hand",
    found_before: "Found by this company before",
    display_code: "Code on the display",
    passed_over: "Could not be told",
  },
  confidence: "How likely it is",
  found: (cause, share) => `${cause}: ${share} sure.`,
  probable: (cause, share) =>
    `Most likely: ${cause.toLowerCase()}, ${share}. No check is left that would make it sure.`,
  callFor: (who, check) => `From here on it takes ${who}, for: ${check}.`,
  repairBy: (who) => `The repair is for ${who}.`,
  doers: {
    household: "anybody in the house",
    crew: "anybody of the crew",
    plumber: "a plumber",
    qualified: "somebody qualified for electrical work",
    electrician: "a licensed electrician",
    refrigerant: "somebody with the refrigerant certificate",
    combustion: "somebody trained in combustion safety",
    controls: "the maker's controls service",
    ducts: "a duct installer",
    water_treatment: "a water treatment firm",
  },
  first: (hazard, steps) => `First, ${hazard.toLowerCase()}: ${steps}`,
  remedy: (text) => `Remedy: ${text}`,
  parts: (list) => `Parts: ${list}.`,
  verify: (text) => `Prove afterwards: ${text}`,
  tell: (text) => `Tell the customer: ${text}`,
  stopBefore: (text) => `Stop: ${text}`,
  expected: (value) => `On this unit here it should be ${value}.`,
  somethingElse: "Something not in the list",
  plain: {
    next_check: ({ check, minutes }) => `Next: ${check}, about ${minutes}. It tells most for its time.`,
    contradicts: ({ now, earlier }) =>
      now === earlier
        ? `${now} came out differently before. Go back if one of the two was a slip.`
        : `${now} hardly goes with ${earlier}. Go back if one of the two was a slip.`,
    not_judged: ({ check }) => `${check} cannot be judged without the model. Name it, or pick an answer.`,
    needs_tools: ({ check, tools }) => `To go on it takes ${tools}, for: ${check}.`,
    open: () => "No check is left that would tell much, and no cause stands out. The likeliest are below.",
    open_else: () => "It may be something I do not know of. The likeliest that I know are below.",
    how_sure: () => "How likely each answer is with each cause is judgement, not measured.",
    step_not_cured: () => "Done, and it is not cured",
  },
  tables: {
    candidates: { title: "What it may be", columns: { cause: "Cause", share: "Likely", bar: "" } },
    meanings: {
      title: "What each answer would mean",
      columns: { outcome: "If it shows", means: "Then likeliest", share: "Likely" },
    },
    trail: { title: "What was looked at", columns: { check: "Check", seen: "Seen", expected: "Expected" } },
  },
};

import type { HistoryTexts } from "../history-texts.ts";

const because = (why: string | undefined) => (why === undefined ? "" : `, because ${why}`);

export const jobHistory: HistoryTexts = {
  doors: { slack: "Slack", teams: "Teams", web: "web chat", terminal: "terminal" },
  heading: "History, newest last",
  earlier: (entries) => `Earlier entries: ${entries}`,
  entry: (moment, by, door, said) => `${moment}, ${by}, ${door}: ${said}`,
  putRightBy: (entry) => `no longer counts: put right by entry ${entry}`,
  takenBackBy: (entry) => `no longer counts: taken back by entry ${entry}`,
  putsRight: (entry) => `puts entry ${entry} right`,
  was: (entry, was) => `Entry ${entry}, before: ${was}`,
  is: (entry, is) => `Entry ${entry}, now: ${is}`,
  wasTakenBack: (entry, was) => `Entry ${entry} no longer counts: ${was}`,
  said: {
    opened: (customer, place, day) => `begun for ${customer}, ${place}${day === undefined ? "" : `, ${day}`}`,
    planned: (day, people) => `planned for ${day}${people === "" ? "" : `: ${people}`}`,
    unit: (unit) => `unit: ${unit}`,
    permit: (permit) => `permit: ${permit}`,
    status: (status, why) => `${status}${because(why)}`,
    facts: (facts) => facts,
    reading: (label, value, stands) => `${label}: ${value} (${stands.toLowerCase()})`,
    item_opened: (what, owner, due) => `open item: ${what}, ${owner}, by ${due}`,
    item_closed: (what) => `item done: ${what}`,
    file: (name) => `file: ${name}`,
    parts: (parts) => `parts used: ${parts}`,
    note: (text) => `note: “${text}”`,
    trail: (text) => `fault: ${text}`,
    withdrawn: (why) => `taken back${because(why)}`,
  },
};

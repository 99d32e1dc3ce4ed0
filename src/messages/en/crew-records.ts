import type { CrewTexts } from "../crew-texts.ts";

export const crewRecords: CrewTexts = {
  refusals: {
    crew_role: (roles) => `This is for: ${roles}. Ask one of them.`,
    crew_unknown_event: (event) =>
      `There is no entry ${event} of the crew to take back. Type “crew history” for the numbers.`,
    only_owner: "Only an owner makes somebody an owner or takes that away. Ask one of them.",
    last_owner: "Nobody else is an owner. Make somebody an owner first.",
  },
  offTruck: (truck, job, kinds) => `Off ${truck} for job ${job}: ${kinds} kinds of parts.`,
  backOnTruck: (truck, job) => `Back on ${truck}: what was used on job ${job}.`,
  takenBack: "Taken back in the crew's record too.",
  announced: "The team's channel gets it.",
  notAnnounced: "The team's channel was not told: company.yaml names no team_channel.",
  planTitle: "The plan",
};

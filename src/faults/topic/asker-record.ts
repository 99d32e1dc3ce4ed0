import type { Books } from "../../books/books.ts";
import type { CredentialKind } from "../../crew/credential-kinds-table.ts";
import type { CrewMember } from "../../crew/crew.ts";
import { isCalibrated, mayWork } from "../../crew/validity.ts";
import type { KnownFacts } from "../../declaration/facts.ts";
import type { Doer, FaultKnowledge } from "../knowledge.ts";

/** Credentials of which any one lets somebody do it; the company's book says who holds them, the issuer decides. */
const CREDENTIALS: Partial<Record<Doer, readonly CredentialKind[]>> = {
  plumber: ["master_plumber", "journeyman_plumber"],
  qualified: ["electrician", "limited_electrical", "energised_work"],
  electrician: ["electrician"],
  refrigerant: ["refrigerant_card"],
  combustion: ["combustion_safety"],
};

/**
 * What the company's book says of somebody who asks about a fault: what they may do on that day, and the tools they carry.
 * A tool that the company keeps no list of counts as at hand.
 * @param day YYYY-MM-DD, the company's
 * @returns facts of the fault topic; nothing is known of whoever is not in the crew's book
 */
export function askerRecord(person: string, day: string, { crew }: Books, { checks }: FaultKnowledge): KnownFacts {
  const month = { value: String(Number(day.slice(5, 7))), from: "job" } as const;
  const member = crew.members.find((one) => one.person === person);
  if (member === undefined) return { month };
  const may = Object.entries(CREDENTIALS).flatMap(([doer, kinds]) => (mayWork(member, kinds, day) ? [doer] : []));
  const tools = [...new Set(checks.flatMap((check) => check.tools))].filter((tool) =>
    isAtHand(tool, member, day, crew),
  );
  return {
    month,
    asker_may: { value: may.join(","), from: "job" },
    asker_tools: { value: tools.join(","), from: "job" },
    ...onTruck(member, crew),
  };
}

function onTruck({ truck }: CrewMember, { trucks, parts }: Books["crew"]): KnownFacts {
  const stock = trucks.trucks.find(({ id }) => id === truck)?.stock;
  if (stock === undefined) return {};
  const names = parts.flatMap(({ id, name }) => ((stock[id] ?? 0) > 0 ? [name.en] : []));
  return { on_truck: { value: names.join("|"), from: "job" } };
}

function isAtHand(tool: string, { tools }: CrewMember, day: string, { parts }: Books["crew"]): boolean {
  const id = tool.replaceAll("_", "-");
  const isListed = parts.some((part) => part.group === "tool" && part.id === id);
  return !isListed || tools.some((one) => one.tool === id && isCalibrated(one, day));
}

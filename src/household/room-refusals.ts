import type { Books } from "../books/books.ts";
import { type FindingOf, type FindingSpecs, type OutOfRange, q } from "../declaration/answer.ts";
import { asSizeFacts, type RoomCase, type RoomFacts } from "./room-case.ts";
import { airThroughDucts } from "./room-ducts.ts";
import { LEAST_AIR } from "./room-remedies.ts";
import { SHELLS } from "./room-shell-table.ts";
import { findUnit } from "./size-case.ts";
import { refuseForUnit, refuseNames, SIZE_REFUSALS } from "./size-refusals.ts";

/** Why a room's facts cannot be worked with. */
export const ROOM_REFUSALS = {
  ...SIZE_REFUSALS,
  no_heat_pump: {},
  no_openings_to_garage: {},
  ducts_choke_fan: { left: "share", size: "dimension" },
} as const satisfies FindingSpecs;
type Reason = FindingOf<typeof ROOM_REFUSALS>;
type Refusal = OutOfRange<Reason>;

/** Names, modes and setpoints that the books or the unit do not have; what comes first, because the rest builds on it. */
export function refuseRoomUnit(facts: RoomFacts, books: Books): Refusal | undefined {
  const household = asSizeFacts(facts);
  return refuseNames(household, books) ?? refuseForUnit(household, findUnit(household, books)) ?? refuseGarage(facts);
}

/** No opening and no duct may join a garage to the house. */
function refuseGarage(facts: RoomFacts): Refusal | undefined {
  if (SHELLS[facts.where].mayOpen) return undefined;
  const reason = { code: "no_openings_to_garage", data: {} } as const;
  if (facts.door === "louvred" || facts.door === "open") return refuse("door", facts.door, reason);
  const { low_grille_m2 = 0, high_grille_m2 = 0 } = facts;
  if (low_grille_m2 > 0) return refuse("low_grille", q("opening_area", low_grille_m2), reason);
  if (high_grille_m2 > 0) return refuse("high_grille", q("opening_area", high_grille_m2), reason);
  return facts.duct !== "none" && facts.duct_to === "adjoining" ? refuse("duct_to", facts.duct_to, reason) : undefined;
}

/** A unit that takes no heat from the air. */
export function refuseNoHeatPump({ model }: RoomFacts): Refusal {
  const value = model ?? q("heat_rate", 0);
  return refuse(model === undefined ? "heat_pump" : "model", value, { code: "no_heat_pump", data: {} });
}

/** Ducts that leave the fan too little air to run at all. */
export function refuseDucts({ heatPump, set }: RoomCase): Refusal | undefined {
  const { share } = airThroughDucts(heatPump, set.ducts);
  if (share >= LEAST_AIR) return undefined;
  const size = q("dimension", set.ducts.diameter_m);
  return refuse("duct_size", size, { code: "ducts_choke_fan", data: { left: q("share", share), size } });
}

function refuse(fact: string, value: OutOfRange["value"], reason: Reason): Refusal {
  return { kind: "out-of-range", fact, value, reason };
}

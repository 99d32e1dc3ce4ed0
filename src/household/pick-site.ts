import type { SiteFacts } from "../cautions/site-facts.ts";
import type { Candidate, PickCase } from "./pick-case.ts";
import { fullMass_kg, heightNeeded_m, soundAt_dBA } from "./pick-limits.ts";
import type { Finalist } from "./pick-trials.ts";

/** The best pick with its sheet. */
export interface Best {
  readonly finalist: Finalist;
  readonly candidate: Candidate;
}

/** The best pick, where anything serves. */
export function bestPick({ candidates }: PickCase, [finalist]: readonly Finalist[]): Best | undefined {
  const candidate = candidates.find(({ model }) => model.id === finalist?.model);
  return finalist && candidate && { finalist, candidate };
}

/** The limits of the site, and what the best pick asks of it. */
export function describePickSite({ facts }: PickCase, best: Best | undefined): SiteFacts {
  const told: SiteFacts = {
    tap_C: facts.wanted_C,
    ...(facts.mixing_valve !== undefined && { hasMixingValve: facts.mixing_valve }),
    ...(facts.supply_V !== undefined && { supply_V: facts.supply_V }),
  };
  if (best === undefined) return told;
  const { finalist, candidate } = best;
  const { model, supply_V } = candidate;
  const [element] = model.heater.elements;
  const heard_dBA = facts.bedroom_m === undefined ? undefined : soundAt_dBA(model, facts);
  return {
    ...told,
    storage_C: finalist.setpoint_C,
    tank_L: model.heater.tank.volume_L,
    supply_V,
    ...(element && { ratedVoltage_V: element.rated_V, elementPower_W: element.rated_W }),
    ...(facts.floor_kg !== undefined && { filledMass_kg: fullMass_kg(model), floorAllows_kg: facts.floor_kg }),
    ...(facts.door_m !== undefined && { unitWidth_m: model.body.width_m, narrowestPassage_m: facts.door_m }),
    ...(facts.height_m !== undefined && {
      headroom_m: facts.height_m - model.body.height_m,
      headroomNeeded_m: heightNeeded_m(model) - model.body.height_m,
    }),
    ...(facts.room_m3 !== undefined &&
      model.smallestRoom_m3 !== undefined && {
        roomVolume_m3: facts.room_m3,
        roomVolumeNeeded_m3: model.smallestRoom_m3,
      }),
    ...(heard_dBA !== undefined && { soundAtBedroom_dBA: heard_dBA }),
  };
}

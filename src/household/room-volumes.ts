import type { AnswerTable, FindingOf, FindingSpecs } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import type { Source } from "../declaration/source.ts";
import { fromBase, toBase } from "../units/convert.ts";
import type { RoomCase } from "./room-case.ts";
import { type RoomDay, runRoomDay } from "./room-day.ts";
import type { SampledDay } from "./sample-day.ts";

/** A volume that somebody asks of a closed room. */
export interface AskedVolume {
  readonly volume_m3: number;
  readonly source: Source;
}

const ft3 = (value: number) => toBase(value, "ft3");
const RULE_OF_THUMB: Source = {
  basis: "common_practice",
  document: "Rule of thumb for a closed room",
  section: "700 cu ft, such as 7 x 10 x 10 ft",
};
const ADVICE: Source = {
  basis: "published",
  document: "ENERGY STAR, questions on heat pump water heaters",
  section: "nothing more needed from the maker's 450 to 700 cu ft on",
};
const OLDER_ADVICE: Source = {
  basis: "published",
  document: "ENERGY STAR, considerations for heat pump water heaters",
  section: "more than 1,000 cu ft",
};
const CALIFORNIA: Source = {
  basis: "published",
  document: "California Energy Code",
  edition: "2025",
  section: "110.3(c)7B: 100 cu ft for each 1000 Btu/h of compressor capacity",
};
const FT3_EACH_kBtu_h = 100;

/** What sources ask of a closed room for this unit, the smallest first; they disagree. */
export function askedVolumes({ model, heatPump }: RoomCase): readonly AskedVolume[] {
  const sheet = model?.smallestRoom_m3;
  const kBtu_h = fromBase(heatPump.ratedHeat_W, "kBtu_h");
  const all: readonly AskedVolume[] = [
    ...(sheet === undefined || model === undefined ? [] : [{ volume_m3: sheet, source: sheetOf(model) }]),
    { volume_m3: ft3(450), source: ADVICE },
    { volume_m3: ft3(700), source: RULE_OF_THUMB },
    { volume_m3: ft3(1000), source: OLDER_ADVICE },
    { volume_m3: ft3(FT3_EACH_kBtu_h * kBtu_h), source: CALIFORNIA },
  ];
  return all.toSorted((a, b) => a.volume_m3 - b.volume_m3);
}

function sheetOf({ name, heater }: NonNullable<RoomCase["model"]>): Source {
  return { ...heater.source, document: `${name}, data sheet` };
}

export const ROOM_VOLUME_FINDINGS = { volume_met: {}, volume_short: {} } as const satisfies FindingSpecs;
type Said = FindingOf<typeof ROOM_VOLUME_FINDINGS>;

/** Who asks how much, and whether this room has it. */
export function tabulateVolumes(asked: readonly AskedVolume[], volume_m3: number): AnswerTable<Said> {
  const row = ({ volume_m3: wanted_m3, source }: AskedVolume) => [
    source.document,
    q("room_volume", wanted_m3),
    { code: volume_m3 >= wanted_m3 * NEARLY ? ("volume_met" as const) : ("volume_short" as const), data: {} },
  ];
  return { id: "volumes", rows: asked.map(row) };
}

/** 7 x 10 x 10 ft is 700 cu ft but for rounding. */
const NEARLY = 1 - 1e-6;

/** The same closed room at other volumes: far under the rule of thumb, at both ends of the advice, far over. */
export interface ClosedRoom {
  readonly volume_m3: number;
  readonly day: RoomDay;
}
const CLOSED_ft3 = [100, 450, 700, 1500] as const;

export function runClosedRooms(known: RoomCase, day: SampledDay): readonly ClosedRoom[] {
  const { set } = known;
  const door = { ...set.door, door: "plain", lowGrille_m2: 0, highGrille_m2: 0 } as const;
  const ducts = { ...set.ducts, choice: "none" } as const;
  return CLOSED_ft3.map((volume_ft3) => {
    const volume_m3 = ft3(volume_ft3);
    const closed = { ...known, set: { ...set, door, ducts, volume_m3 } };
    return { volume_m3, day: runRoomDay(closed, "winter", day) };
  });
}

export function tabulateClosedRooms(rooms: readonly ClosedRoom[], openCop: number): AnswerTable<never> {
  return {
    id: "closed_rooms",
    rows: rooms.map(({ volume_m3, day }) => [
      q("room_volume", volume_m3),
      q("temperature", day.lowest_C),
      q("ratio", day.summary.systemCop),
      q("share", openCop > 0 ? Math.max(0, 1 - day.summary.systemCop / openCop) : 0),
    ]),
  };
}

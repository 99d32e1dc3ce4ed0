import type { Books } from "../../books/books.ts";
import { type CodeEvidence, findEvidence } from "../../books/code-evidence.ts";
import { findDisplayCodes } from "../../books/display-codes.ts";
import type { FactValue, KnownFacts } from "../../declaration/facts.ts";
import { PASSED_OVER } from "../../declaration/topic.ts";
import type { CatalogueModel } from "../../equipment/catalogue.ts";
import { findModel } from "../../equipment/find-model.ts";
import type { Asker, FaultCase, Observation, Step } from "../case.ts";
import type { ExpectedFacts } from "../expected/known.ts";
import { expectReading } from "../expected.ts";
import {
  AGE_BANDS,
  type Cause,
  type Check,
  DOERS,
  type FaultKnowledge,
  UNIT_KINDS,
  type UnitKind,
} from "../knowledge.ts";
import { type ComplaintBook, matchComplaint } from "../match-complaint.ts";
import type { FaultModel } from "../model.ts";
import { curedBy, LATELY, notCuredBy, OTHER_SYMPTOM, readingOf, readyFor, stopOf } from "./fault-facts.ts";

/** The knowledge in every shape that the topic works with; made once. */
export interface FaultShelf {
  readonly knowledge: FaultKnowledge;
  readonly model: FaultModel;
  readonly complaints: ComplaintBook;
}
/** What was told, by the id of each fact, in the order in which it was told. */
export type Told = Readonly<Record<string, FactValue>>;

export function toldOf(known: KnownFacts): Told {
  return Object.fromEntries(Object.entries(known).map(([fact, { value }]) => [fact, value]));
}

/** Somebody of the crew whose record shows nothing more. */
const PLAIN_ASKER: Asker = { doers: ["household", "crew"] };
const WINTER_MONTHS = ["12", "1", "2"];
const SUMMER_MONTHS = ["6", "7", "8"];
/** Closed rooms under this starve a heat pump; see the site evidence. */
const SMALL_ROOM_m3 = 20;
/** Air that many units stop their compressor in [C]; see the site evidence. */
const AIR_ENDS_C = [5, 45] as const;

/** What was told as the reasoning takes it: steps in order, and what the site and the records say. */
export function faultCase(shelf: FaultShelf, told: Told, books: Books): FaultCase {
  const unit = modelOf(told, books);
  const unitKind = UNIT_KINDS.find((kind) => kind === told["unit"]) ?? (unit && kindOf(unit));
  const code = codeEvidence(shelf, told, books);
  const age = AGE_BANDS.find((band) => band === told["age"]);
  return {
    ...(unitKind && { unitKind }),
    ...(age && { age }),
    site: siteEvidence(told),
    record: recordedBefore(shelf, told, books),
    asker: askerOf(told),
    hints: Object.fromEntries(code.flatMap((one) => (one.kind === "cause" ? [[one.cause, one.level]] : []))),
    counts: countsOf(told["found_before"]),
    steps: [
      ...codeSteps(code),
      ...Object.entries(told).flatMap(([fact, value]) => stepsOf(shelf, told, books, fact, value)),
    ],
  };
}

/** The cause whose remedy cured the fault, once somebody has said so. */
export function curedCause({ knowledge }: FaultShelf, told: Told): Cause | undefined {
  return knowledge.causes.find(({ id }) => told[curedBy(id)] === true);
}

/** Readings of the start-up, each with what was to be expected. */
function recordedBefore({ knowledge }: FaultShelf, told: Told, books: Books): readonly Observation[] {
  return listed(told["measured_before"]).flatMap((pair) => {
    const [id = "", value = ""] = pair.split(":");
    const check = knowledge.checks.find((one) => one.id === id);
    return check === undefined ? [] : readingStep(check, told, books, Number(value));
  });
}

/** The unit of the catalogue that is meant, if one was named. */
export function modelOf({ model }: Told, { catalogue }: Books): CatalogueModel | undefined {
  const found = typeof model === "string" ? findModel(catalogue, model) : undefined;
  return found?.ok ? found.entry : undefined;
}

/** What is known of this unit on this site, for the readings that physics expects. */
export function expectedFacts(told: Told, books: Books): ExpectedFacts {
  const model = modelOf(told, books);
  const measured_V = number(told[readingOf("voltage_at_rest")]);
  const air_C = number(told["air"]);
  const cold_C = number(told["cold"]);
  const setpoint_C = number(told["setpoint"]);
  const line_kPa = number(told["line_pressure"]);
  const plate_V = number(told["supply"]) ?? model?.circuit.supplies_V[0];
  return {
    ...(model && { unit: model.heater }),
    ...(plate_V !== undefined && { plate_V }),
    ...(measured_V !== undefined && { supply_V: measured_V }),
    ...(air_C !== undefined && { air_C }),
    ...(cold_C !== undefined && { cold_C }),
    ...(setpoint_C !== undefined && { setpoint_C }),
    ...(line_kPa !== undefined && { line_kPa }),
  };
}

function number(value: FactValue | undefined): number | undefined {
  return typeof value === "number" ? value : undefined;
}

function kindOf({ kind }: CatalogueModel): UnitKind {
  return kind === "plug_in" ? "integrated" : kind;
}

function siteEvidence(told: Told): readonly string[] {
  const month = String(told["month"] ?? "");
  const air_C = number(told["air"]);
  const lately = LATELY.find((one) => one === told["lately"]);
  return [
    ...(WINTER_MONTHS.includes(month) ? ["winter"] : []),
    ...(SUMMER_MONTHS.includes(month) ? ["summer"] : []),
    ...(air_C !== undefined && (air_C < AIR_ENDS_C[0] || air_C > AIR_ENDS_C[1]) ? ["air_out_of_range"] : []),
    ...(lately === undefined || lately === "nothing" ? [] : [lately]),
    ...siteOf(told),
  ];
}

/** What the survey of the site says, by the ids of the site evidence. */
function siteOf({ closed, mixing_valve, loop, hardness, condensate, fuel_appliance, room_volume, exhaust }: Told) {
  const isDucted = exhaust === "duct_bare" || exhaust === "duct_insulated";
  const volume_m3 = number(room_volume);
  const found: Readonly<Record<string, boolean>> = {
    closed_system: closed === true,
    mixing_valve: mixing_valve === true,
    no_mixing_valve: mixing_valve === false,
    recirculation: loop !== undefined && loop !== "none",
    no_recirculation: loop === "none",
    hard_water: hardness === "hard" || hardness === "very_hard",
    condensate_pump: condensate === "pump",
    no_condensate_pump: condensate !== undefined && condensate !== "pump",
    fuel_appliance_near: fuel_appliance === "natural_draft",
    ducted: isDucted,
    small_room: volume_m3 !== undefined && volume_m3 < SMALL_ROOM_m3 && !isDucted,
  };
  return Object.keys(found).filter((id) => found[id]);
}

function askerOf({ asker_may, asker_tools }: Told): Asker {
  const may = listed(asker_may);
  const doers = [...PLAIN_ASKER.doers, ...DOERS.filter((doer) => may.includes(doer))];
  return { doers, ...(typeof asker_tools === "string" && { tools: listed(asker_tools) }) };
}

function countsOf(found: FactValue | undefined): Readonly<Record<string, number>> {
  const pairs = listed(found).map((pair) => pair.split(":"));
  return Object.fromEntries(pairs.map(([cause = "", count = "0"]) => [cause, Number(count)]));
}

function listed(text: FactValue | undefined): readonly string[] {
  return typeof text === "string" && text !== "" ? text.split(",") : [];
}

/** What the company's book says of a code on the display. */
function codeEvidence({ knowledge }: FaultShelf, told: Told, books: Books): readonly CodeEvidence[] {
  const code = told["display_code"];
  if (typeof code !== "string") return [];
  const [entry] = findDisplayCodes(books, code, modelOf(told, books)?.id);
  return findEvidence(entry?.pointsTo ?? [], knowledge);
}

/** Complaints and outcomes that a code makes needless to ask. */
function codeSteps(evidences: readonly CodeEvidence[]): readonly Step[] {
  return evidences.flatMap((evidence): Step[] => {
    if (evidence.kind === "symptom") return [{ kind: "complaint", symptom: evidence.symptom, isThere: true }];
    if (evidence.kind === "outcome") return [{ kind: "outcome", check: evidence.check, outcome: evidence.outcome }];
    return [];
  });
}

function stepsOf(shelf: FaultShelf, told: Told, books: Books, fact: string, value: FactValue): readonly Step[] {
  if (fact === "complaint")
    return matchComplaint(shelf.complaints, String(value)).sure.map(({ symptom, isThere }) => ({
      kind: "complaint",
      symptom,
      isThere,
    }));
  if (fact === "symptom")
    return value === OTHER_SYMPTOM ? [] : [{ kind: "complaint", symptom: String(value), isThere: true }];
  if (fact === PASSED_OVER) return listed(value).map((id) => ({ kind: "not_sure", check: checkOf(shelf, id) }));
  const { symptoms, causes, checks } = shelf.knowledge;
  const symptom = symptoms.find(({ id }) => stopOf(id) === fact);
  if (symptom) return [{ kind: "acknowledged", symptom: symptom.id }];
  const cause = causes.find(({ id }) => notCuredBy(id) === fact);
  if (cause) return value === true ? [{ kind: "tried", cause: cause.id }] : [];
  return checks.flatMap((check) => checkSteps(check, told, books, fact, value));
}

/** Whoever cannot see to the precaution of a check cannot do the check. */
function checkOf({ knowledge }: FaultShelf, fact: string): string {
  return knowledge.checks.find(({ id }) => readyFor(id) === fact || readingOf(id) === fact)?.id ?? fact;
}

function checkSteps(check: Check, told: Told, books: Books, fact: string, value: FactValue): readonly Step[] {
  const { id } = check;
  if (fact === readyFor(id)) return [{ kind: "prepared", check: id }];
  if (fact === id) return [{ kind: "outcome", check: id, outcome: String(value) }];
  if (fact !== readingOf(id) || typeof value !== "number") return [];
  return readingStep(check, told, books, value);
}

/** A reading with what it should be; one that cannot be judged without it says nothing. */
function readingStep(check: Check, told: Told, books: Books, value: number): readonly Observation[] {
  const expected = expectReading(check, expectedFacts(told, books));
  if (expected === undefined && check.outcomes.some(({ share }) => share !== undefined)) return [];
  return [{ kind: "reading", check: check.id, value, expected: expected?.quantity.value ?? 0 }];
}

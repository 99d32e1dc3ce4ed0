import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { findModel } from "../../src/equipment/find-model.ts";
import type { StartupSite, StartupStep } from "../../src/jobs/startup-step.ts";
import { STEP_NAMES } from "../../src/jobs/startup-step-names.ts";
import { STARTUP_STEPS } from "../../src/jobs/startup-steps-table.ts";
import { startupSteps as en } from "../../src/messages/en/startup-steps.ts";
import { startupSteps as es } from "../../src/messages/es/startup-steps.ts";
import { toBase } from "../../src/units/convert.ts";
import { fixtureBooks } from "../support/fixture-books.ts";

const PLAIN: StartupSite = { mostLine_kPa: toBase(80, "psi"), mostAtTap_C: toBase(120, "F") };
const IDS = STARTUP_STEPS.map(({ id }) => id);

function stepOf(id: string): StartupStep {
  const step = STARTUP_STEPS.find((one) => one.id === id);
  if (step === undefined) throw new Error(`no step ${id}`);
  return step;
}

test("every step on disk is taken once, and has its words in both languages", () => {
  const files = readdirSync(new URL("../../src/jobs/startup-steps", import.meta.url)).map((file) =>
    file.replace(/\.ts$/, "").replaceAll("-", "_"),
  );
  expect([...IDS].sort()).toEqual(files.sort());
  expect(Object.keys(en).sort()).toEqual([...IDS].sort());
  expect(Object.keys(es).sort()).toEqual([...IDS].sort());
  expect(Object.keys(STEP_NAMES).sort()).toEqual(IDS.map((id) => `step_${id}`).sort());
});

test("water goes in before power is measured, and the tap is measured after the tank has heated", () => {
  const inOrder = ["filled", "line_pressure", "precharge", "supply", "first_rise", "outlet_temperature", "handed_over"];
  expect(IDS.filter((id) => inOrder.includes(id))).toEqual(inOrder);
});

test("what can scald, shock or burst is critical, and its danger is said before", () => {
  const critical = STARTUP_STEPS.filter(({ isCritical }) => isCritical).map(({ id }) => id);
  expect(critical).toEqual(
    expect.arrayContaining(["filled", "line_pressure", "relief_free", "supply", "bond", "outlet_temperature"]),
  );
  expect(stepOf("supply").hazards).toContain("live");
  expect(stepOf("bond").hazards).toContain("lockout");
  expect(stepOf("outlet_temperature").hazards).toContain("scald");
});

describe.each(STARTUP_STEPS)("$id", ({ reading, appliesTo, cases }) => {
  test.each(cases)("$name", (one) => {
    const site = { ...PLAIN, ...one.site };
    expect(appliesTo?.(site) === false).toBe(one.isLeftOut === true);
    if (one.reading === undefined) return;
    const accepted = reading?.accepts(site, one.reading);
    const isAccepted = accepted && one.reading >= accepted.low - 1e-9 && one.reading <= accepted.high + 1e-9;
    expect(isAccepted).toBe(one.isAccepted);
  });
});

test("elements warm the tank in an hour by what the plate says and the heat of water", () => {
  const found = findModel(fixtureBooks.catalogue, "brackwell-50");
  if (!found.ok) throw new Error("the model is not there");
  const unit = found.entry;
  const accepted = stepOf("first_rise").reading?.accepts(
    { ...PLAIN, unit, mode: "elements_only", supply_V: 240, setpoint_C: 60, cold_C: 10 },
    0,
  );
  const kW = Math.max(...unit.heater.elements.map(({ rated_W }) => rated_W)) / 1000;
  const gallons = unit.heater.tank.volume_L / 3.785411784;
  // Trade rule: 3412 Btu a kWh, 8.33 lb a gallon at 60 °F, one Btu a pound and degree.
  const rise_F = (kW * 3412) / (gallons * 8.33);
  expect((accepted?.expected ?? 0) * 1.8).toBeCloseTo(rise_F, 0);
  expect(Math.abs((accepted?.expected ?? 0) * 1.8 - rise_F) / rise_F).toBeLessThan(0.02);
});

test("a heat pump is judged only where the air at its intake is known", () => {
  const found = findModel(fixtureBooks.catalogue, "hollin-50");
  if (!found.ok) throw new Error("the model is not there");
  const accepts = stepOf("first_rise").reading?.accepts;
  expect(accepts?.({ ...PLAIN, unit: found.entry }, 5)).toBeUndefined();
  const warm = accepts?.({ ...PLAIN, unit: found.entry, air_C: 25 }, 5)?.expected ?? 0;
  const cool = accepts?.({ ...PLAIN, unit: found.entry, air_C: 8 }, 5)?.expected ?? 0;
  expect(cool).toBeGreaterThan(0);
  expect(warm).toBeGreaterThan(cool);
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadFaults } from "../../adapters/library/load-faults.ts";
import { buildComplaintBook, type Heard, matchComplaint } from "../../src/faults/match-complaint.ts";

const book = buildComplaintBook(await loadFaults("src"));
const hear = (text: string) => matchComplaint(book, text);
const told = ({ sure }: Heard) => sure.map(({ symptom, isThere }) => (isThere ? symptom : `not ${symptom}`));

/** Complaints in people's own words, written before the matcher was run on them, and what each is about. */
const HELD_OUT: readonly (readonly [text: string, symptom: string])[] = [
  ["we have no hot water in the whole house", "no_hot_water"],
  ["theres no hot watr anywhere", "no_hot_water"],
  ["nothing but cold water from every faucet", "no_hot_water"],
  ["no tengo agua caliente", "no_hot_water"],
  ["we run out of hot water after 10 min", "runs_out"],
  ["hot water doesnt last long enough for two showers", "runs_out"],
  ["se termina el agua caliente bien rapido", "runs_out"],
  ["water is only lukewarm", "lukewarm"],
  ["el agua nomas sale tibia", "lukewarm"],
  ["scalding hot at the sink", "too_hot"],
  ["el agua sale demasiado caliente y me queme", "too_hot"],
  ["breaker trips every time the heater comes on", "breaker_trips"],
  ["the braker keeps triping", "breaker_trips"],
  ["se bota el breker a cada rato", "breaker_trips"],
  ["had to push the red reset button again", "high_limit_trips"],
  ["it's super loud, vibrates the whole wall", "noisy"],
  ["hace un ruidero", "noisy"],
  ["blowing cold air into the laundry room", "cold_draft"],
  ["the basement gets freezing since you put it in", "room_gets_cold"],
  ["theres a puddle under the heater", "puddle"],
  ["tank is leaking from the bottom", "puddle"],
  ["hay agua en el piso junto al calentador", "puddle"],
  ["condensate drain is clogged and overflowing", "condensate_overflow"],
  ["T&P valve dripping", "relief_discharge"],
  ["relief valve keeps discharging", "relief_discharge"],
  ["la valvula de alivio no deja de gotear", "relief_discharge"],
  ["pipes bang when the washing machine stops", "pipes_bang"],
  ["golpetean los tubos", "pipes_bang"],
  ["popping noise in the tank like popcorn", "tank_rumbles"],
  ["hot water is rusty brown", "rusty_water"],
  ["sale agua cafe de la caliente", "rusty_water"],
  ["hot water stinks of rotten eggs", "smelly_water"],
  ["apesta a huevo podrido", "smelly_water"],
  ["takes all day to recover after a bath", "slow_recovery"],
  ["tarda muchisimo en calentar otra vez", "slow_recovery"],
  ["my electric bill went way up", "high_bill"],
  ["me llego carisimo el recibo de la luz", "high_bill"],
  ["coil is frozen over with ice", "coil_frost"],
  ["compressor keeps turning on and off every couple minutes", "compressor_short_cycles"],
  ["compressor won't kick on", "compressor_no_start"],
  ["el compresor no prende", "compressor_no_start"],
  ["fan won't turn", "fan_stopped"],
  ["no gira el abanico", "fan_stopped"],
  ["display is blank", "display_blank"],
  ["la pantalla no prende", "display_blank"],
  ["leak alarm is going off", "leak_alarm"],
  ["clean filter light wont go away", "filter_alert"],
  ["says temperature sensor error", "sensor_fault"],
  ["lost wifi connection", "connection_lost"],
  ["warm water coming out of the cold tap", "warm_cold_tap"],
  ["takes 3 minutes for hot water to get upstairs", "long_wait"],
  ["tempering valve wont hold temp", "mixing_valve_drifts"],
  ["shower goes from hot to cold and back", "temperature_swings"],
  ["hot side has no pressure, cold is fine", "weak_hot_flow"],
  ["just the one bathroom has no hot water", "one_fixture_only"],
  ["smells like burnt plastic", "burning_smell"],
  ["huele a plastico quemado", "burning_smell"],
  ["i got shocked touching the tank", "electric_tingle"],
  ["carbon monoxide detector is beeping", "co_alarm"],
  ["faucets drip at night", "taps_drip"],
  ["hot tap sputters and spits air", "taps_spit_air"],
  ["mold growing in the closet behind it", "damp_room"],
  ["it keeps switching modes by itself", "ignores_commands"],
];

describe("complaints in people's own words, both languages, with slips", () => {
  const heard = HELD_OUT.map(([text, symptom]) => ({ text, symptom, heard: hear(text) }));
  const isSure = ({ symptom, heard: one }: (typeof heard)[number]) => told(one).includes(symptom);
  const isOffered = (one: (typeof heard)[number]) =>
    isSure(one) || one.heard.offers.some(({ symptom }) => symptom === one.symptom);

  test("four of five are understood outright", () => {
    const missed = heard.filter((one) => !isSure(one)).map(({ text }) => text);
    expect(missed.length, missed.join("; ")).toBeLessThanOrEqual(HELD_OUT.length / 5);
  });

  test("nine of ten are understood or among the three buttons", () => {
    const missed = heard.filter((one) => !isOffered(one)).map(({ text }) => text);
    expect(missed.length, missed.join("; ")).toBeLessThanOrEqual(HELD_OUT.length / 10);
  });

  test("what is taken as sure is seldom something else", () => {
    const wrong = heard.filter(({ symptom, heard: one }) => one.sure.length > 0 && !told(one).includes(symptom));
    expect(wrong.length, wrong.map(({ text }) => text).join("; ")).toBeLessThanOrEqual(HELD_OUT.length / 20);
  });
});

describe("several at once", () => {
  test("a leak and a noise", () => {
    expect(told(hear("it's leaking at the bottom and it is really loud"))).toEqual(
      expect.arrayContaining(["puddle", "noisy"]),
    );
  });
  test("English and Spanish in one breath", () => {
    expect(told(hear("no hay hot water, y se bota el breaker"))).toEqual(
      expect.arrayContaining(["no_hot_water", "breaker_trips"]),
    );
  });
  test("what is dangerous is heard beside what is not", () => {
    expect(told(hear("slow to heat back up all day, also smells like burning plastic"))).toContain("burning_smell");
  });
});

describe("denied", () => {
  test.each([
    ["it is not leaking but it is loud", "not puddle"],
    ["the puddle is gone? no puddle, no leaks", "not puddle"],
    ["no hay charco", "not puddle"],
    ["sin fuga, pero el agua sale tibia", "not puddle"],
    ["it isn't noisy", "not noisy"],
    ["no burning smell", "not burning_smell"],
  ])("%s", (text, symptom) => {
    expect(told(hear(text))).toContain(symptom);
    expect(told(hear(text))).not.toContain(symptom.slice(4));
  });

  test("not hot is a complaint, not a denial of one", () => {
    expect(told(hear("the water is not hot"))).toContain("no_hot_water");
  });
  test("what follows but is not denied", () => {
    expect(told(hear("not leaking but the display is blank"))).toContain("display_blank");
  });
});

describe("everything else", () => {
  test.each(["", "hello", "thanks!", "gracias", "1234", "expansion 80 gal 50F to 140F"])(
    "%s is no complaint",
    (text) => {
      expect(hear(text).sure).toEqual([]);
    },
  );

  test("one vague word offers what it may mean", () => {
    const { sure, offers } = hear("leaking");
    expect(sure.length + offers.length).toBeGreaterThan(0);
    expect(offers.length).toBeLessThanOrEqual(3);
  });

  test("no text throws or is offered more than three", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 200 }), (text) => {
        expect(hear(text).offers.length).toBeLessThanOrEqual(3);
      }),
      { numRuns: 200 },
    );
  });
});

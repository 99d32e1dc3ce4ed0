import { QUANTITY_KINDS, type QuantityKind, type UnitSystem } from "./quantity-kinds.ts";

/*
 * Every unit that people type or read, with its factor to a base unit and all the ways crews spell it.
 *
 * Sources of the factors. "Exact" factors follow from definitions alone:
 *   inch = 25.4 mm, foot = 12 in, yard = 3 ft, pound = 0.453 592 37 kg: international yard and pound agreement, 1959;
 *   US gallon = 231 cubic inches; standard gravity = 9.806 65 m/s2: NIST SP 811 (2008), appendix B;
 *   Btu (International Table) = 1055.055 852 62 J: NIST SP 811 (2008), appendix B, note on the Btu;
 *   inch of water, conventional (1000 kg/m3 under standard gravity): NIST SP 811 (2008), appendix B;
 *   degree Fahrenheit: t_F = 1.8 t_C + 32, NIST SP 811 (2008), appendix B.
 */
const INCH_m = 0.0254;
const FOOT_m = 12 * INCH_m;
const FOOT2_m2 = FOOT_m * FOOT_m;
const FOOT3_m3 = FOOT2_m2 * FOOT_m;
const GALLON_L = 231 * 0.254 ** 3;
const POUND_kg = 0.45359237;
const GRAVITY_m_s2 = 9.80665;
const PSI_kPa = (POUND_kg * GRAVITY_m_s2) / (INCH_m * INCH_m) / 1000;
const LB_FT2_kPa = (POUND_kg * GRAVITY_m_s2) / FOOT2_m2 / 1000;
const INCH_WATER_Pa = 1000 * GRAVITY_m_s2 * INCH_m;
const BTU_J = 1055.05585262;
const KWH_J = 3_600_000;
const MINUTE_s = 60;
const HOUR_s = 3600;
const DAY_s = 86_400;
const FAHRENHEIT_K = 5 / 9;
/** Ton of refrigeration: 12 000 Btu per hour, NIST SP 811 (2008), appendix B. */
const TON_W = (12_000 * BTU_J) / HOUR_s;
/** Therm (EC): 100 000 Btu (International Table), NIST SP 811 (2008), appendix B; the US legal therm is 0.02 % smaller. */
const THERM_kWh = (100_000 * BTU_J) / KWH_J;

type BaseUnit = (typeof QUANTITY_KINDS)[QuantityKind]["base"];

interface UnitEntry {
  /** The base unit that `scale` leads to: base value = (value - offset) x scale. */
  readonly base: BaseUnit;
  readonly scale: number;
  readonly offset?: number;
  /** How many make one base unit, where that is the rounder number: 70 / 100 is 0.7, but 70 x 0.01 is a little more. */
  readonly perBase?: number;
  /** How it is printed. */
  readonly symbol: string;
  /** The kinds that this unit makes one think of, so that "60 ft" is a length before it is a pipe size. */
  readonly kinds: readonly QuantityKind[];
  /** How people write it: folded (lower case, no accents, no dots); a space may be left out or be a hyphen. */
  readonly spellings: readonly string[];
  /** Spellings that mean another unit first, and this one where the other cannot be meant. */
  readonly alsoSpelt?: readonly string[];
}

const FAHRENHEIT = [
  "f",
  "°f",
  "° f",
  "deg f",
  "degs f",
  "degree f",
  "degrees f",
  "fahrenheit",
  "farenheit",
  "degrees fahrenheit",
  "grado f",
  "grados f",
  "grados fahrenheit",
];
const CELSIUS = [
  "c",
  "°c",
  "° c",
  "deg c",
  "degs c",
  "degree c",
  "degrees c",
  "celsius",
  "centigrade",
  "degrees celsius",
  "degrees centigrade",
  "grado c",
  "grados c",
  "grados celsius",
  "grados centigrados",
  "centigrados",
];

/** Degrees without a letter: the reader's own scale is taken, and said. */
export const DEGREE_SPELLINGS: readonly string[] = ["°", "deg", "degs", "degree", "degrees", "grado", "grados"];

export const UNITS = {
  // Volume
  L: {
    base: "L",
    scale: 1,
    symbol: "L",
    kinds: ["volume"],
    spellings: ["l", "lt", "lts", "ltr", "ltrs", "liter", "liters", "litre", "litres", "litro", "litros"],
  },
  gal: {
    base: "L",
    scale: GALLON_L,
    symbol: "gal",
    kinds: ["volume"],
    spellings: ["gal", "gals", "gl", "gallon", "gallons", "us gal", "us gallons", "galon", "galones"],
  },
  qt: { base: "L", scale: GALLON_L / 4, symbol: "qt", kinds: ["volume"], spellings: ["qt", "qts", "quart", "quarts"] },
  mL: {
    base: "L",
    scale: 0.001,
    perBase: 1000,
    symbol: "mL",
    kinds: ["volume"],
    spellings: ["ml", "milliliter", "milliliters", "millilitre", "millilitres", "mililitro", "mililitros"],
  },
  m3: {
    base: "m3",
    scale: 1,
    symbol: "m³",
    kinds: ["room_volume"],
    spellings: [
      "m3",
      "cu m",
      "cubic m",
      "cubic meter",
      "cubic meters",
      "cubic metre",
      "cubic metres",
      "metro cubico",
      "metros cubicos",
      "mts3",
    ],
  },
  ft3: {
    base: "m3",
    scale: FOOT3_m3,
    symbol: "ft³",
    kinds: ["room_volume"],
    spellings: [
      "ft3",
      "cu ft",
      "cu feet",
      "cf",
      "cubic ft",
      "cubic foot",
      "cubic feet",
      "pie cubico",
      "pies cubicos",
      "pies3",
      "pie3",
    ],
  },
  // Temperature
  C: { base: "C", scale: 1, symbol: "°C", kinds: ["temperature"], spellings: CELSIUS },
  F: { base: "C", scale: FAHRENHEIT_K, offset: 32, symbol: "°F", kinds: ["temperature"], spellings: FAHRENHEIT },
  K: {
    base: "K",
    scale: 1,
    symbol: "°C",
    kinds: ["temperature_difference"],
    spellings: ["k", "kelvin", "kelvins"],
    alsoSpelt: CELSIUS,
  },
  F_diff: {
    base: "K",
    scale: FAHRENHEIT_K,
    symbol: "°F",
    kinds: ["temperature_difference"],
    spellings: [],
    alsoSpelt: FAHRENHEIT,
  },
  // Length
  m: {
    base: "m",
    scale: 1,
    symbol: "m",
    kinds: ["length"],
    spellings: ["m", "meter", "meters", "metre", "metres", "metro", "metros", "mt", "mts"],
  },
  cm: {
    base: "m",
    scale: 0.01,
    perBase: 100,
    symbol: "cm",
    kinds: ["dimension", "length"],
    spellings: ["cm", "cms", "centimeter", "centimeters", "centimetre", "centimetres", "centimetro", "centimetros"],
  },
  mm: {
    base: "m",
    scale: 0.001,
    perBase: 1000,
    symbol: "mm",
    kinds: ["dimension"],
    spellings: ["mm", "millimeter", "millimeters", "millimetre", "millimetres", "milimetro", "milimetros"],
  },
  ft: {
    base: "m",
    scale: FOOT_m,
    symbol: "ft",
    kinds: ["length"],
    spellings: [
      "'",
      "ft",
      "fts",
      "foot",
      "feet",
      "pie",
      "pies",
      "lf",
      "lin ft",
      "linear ft",
      "linear foot",
      "linear feet",
      "pies lineales",
    ],
  },
  in: {
    base: "m",
    scale: INCH_m,
    symbol: "in",
    kinds: ["dimension"],
    spellings: ['"', "in", "ins", "inch", "inches", "pulgada", "pulgadas", "pulg", "plg"],
  },
  yd: {
    base: "m",
    scale: 3 * FOOT_m,
    symbol: "yd",
    kinds: ["length"],
    spellings: ["yd", "yds", "yard", "yards", "yarda", "yardas"],
  },
  // Area
  m2: {
    base: "m2",
    scale: 1,
    symbol: "m²",
    kinds: ["area"],
    spellings: [
      "m2",
      "sq m",
      "square meter",
      "square meters",
      "square metre",
      "square metres",
      "metro cuadrado",
      "metros cuadrados",
      "mts2",
    ],
  },
  ft2: {
    base: "m2",
    scale: FOOT2_m2,
    symbol: "ft²",
    kinds: ["area"],
    spellings: [
      "ft2",
      "sq ft",
      "sq feet",
      "sf",
      "square ft",
      "square foot",
      "square feet",
      "pie cuadrado",
      "pies cuadrados",
      "pies2",
      "pie2",
    ],
  },
  cm2: {
    base: "m2",
    scale: 0.0001,
    perBase: 10_000,
    symbol: "cm²",
    kinds: ["opening_area"],
    spellings: [
      "cm2",
      "sq cm",
      "square centimeter",
      "square centimeters",
      "square centimetres",
      "centimetro cuadrado",
      "centimetros cuadrados",
    ],
  },
  in2: {
    base: "m2",
    scale: INCH_m * INCH_m,
    symbol: "in²",
    kinds: ["opening_area"],
    spellings: [
      "in2",
      "sq in",
      "sq inch",
      "sq inches",
      "square in",
      "square inch",
      "square inches",
      "pulgada cuadrada",
      "pulgadas cuadradas",
      "pulg2",
    ],
  },
  // Pressure
  kPa: {
    base: "kPa",
    scale: 1,
    symbol: "kPa",
    kinds: ["pressure"],
    spellings: ["kpa", "kilopascal", "kilopascals", "kilopascales"],
  },
  psi: {
    base: "kPa",
    scale: PSI_kPa,
    symbol: "psi",
    kinds: ["pressure"],
    spellings: [
      "psi",
      "psig",
      "lb/in2",
      "lbs/in2",
      "lb/pulg2",
      "lbs/pulg2",
      "pounds per square inch",
      "libras por pulgada cuadrada",
    ],
    // Crews say "60 pounds" of pressure.
    alsoSpelt: ["lb", "lbs", "pound", "pounds", "libra", "libras", "#"],
  },
  bar: { base: "kPa", scale: 100, symbol: "bar", kinds: ["pressure"], spellings: ["bar", "bars", "bares"] },
  lb_ft2: {
    base: "kPa",
    scale: LB_FT2_kPa,
    symbol: "lb/ft²",
    kinds: ["floor_load"],
    spellings: [
      "lb/ft2",
      "lbs/ft2",
      "lb/sq ft",
      "lbs/sq ft",
      "psf",
      "pounds per square foot",
      "lb/pie2",
      "libras por pie cuadrado",
    ],
  },
  ft_wc: {
    base: "kPa",
    scale: (12 * INCH_WATER_Pa) / 1000,
    symbol: "ft w.c.",
    kinds: ["pressure"],
    spellings: ["ft wc", "ft wg", "ft h2o", "ft of water", "ft head", "ft of head", "feet of head", "pies de agua"],
  },
  Pa: {
    base: "Pa",
    scale: 1,
    symbol: "Pa",
    kinds: ["air_pressure", "house_pressure"],
    spellings: ["pa", "pascal", "pascals", "pascales"],
  },
  in_wc: {
    base: "Pa",
    scale: INCH_WATER_Pa,
    symbol: "in w.c.",
    kinds: ["air_pressure", "house_pressure"],
    spellings: [
      "in wc",
      "in wg",
      "in w c",
      "in w g",
      "iwc",
      '" wc',
      '" wg',
      '" w c',
      '" w g',
      "in h2o",
      '" h2o',
      "in of water",
      "in water",
      "inch wc",
      "inches wc",
      "inches of water",
      "inches water column",
      "inches of water column",
      "pulg de agua",
      "pulgadas de agua",
      "pulgadas de columna de agua",
    ],
  },
  mbar: {
    base: "Pa",
    scale: 100,
    symbol: "mbar",
    kinds: ["air_pressure", "house_pressure"],
    spellings: ["mbar", "millibar", "milibar"],
  },
  // Power and heat
  W: { base: "W", scale: 1, symbol: "W", kinds: ["power"], spellings: ["w", "watt", "watts", "vatio", "vatios"] },
  kW: {
    base: "W",
    scale: 1000,
    symbol: "kW",
    kinds: ["power"],
    spellings: ["kw", "k w", "kilowatt", "kilowatts", "kilovatio", "kilovatios"],
  },
  Btu_h: {
    base: "W",
    scale: BTU_J / HOUR_s,
    symbol: "Btu/h",
    kinds: ["heat_rate"],
    spellings: ["btu/h", "btu/hr", "btus/h", "btus/hr", "btuh", "btu per hour", "btu por hora", "btu/hora"],
    // "A 40,000 Btu heater" means per hour.
    alsoSpelt: ["btu", "btus"],
  },
  kBtu_h: {
    base: "W",
    scale: (1000 * BTU_J) / HOUR_s,
    symbol: "kBtu/h",
    kinds: ["heat_rate"],
    spellings: ["kbtu/h", "kbtu/hr", "kbtuh", "k btu/h", "k btu/hr", "k btuh", "mbh"],
    alsoSpelt: ["kbtu", "k btu"],
  },
  ton: {
    base: "W",
    scale: TON_W,
    symbol: "ton",
    kinds: ["heat_rate"],
    spellings: ["ton", "tons", "tonelada", "toneladas"],
  },
  // Energy
  kWh: {
    base: "kWh",
    scale: 1,
    symbol: "kWh",
    kinds: ["energy"],
    spellings: [
      "kwh",
      "kwhr",
      "kwhrs",
      "kw h",
      "kw hr",
      "kilowatt hour",
      "kilowatt hours",
      "kilovatio hora",
      "kilovatios hora",
    ],
  },
  Wh: {
    base: "kWh",
    scale: 0.001,
    perBase: 1000,
    symbol: "Wh",
    kinds: ["energy"],
    spellings: ["wh", "watt hour", "watt hours"],
  },
  Btu: { base: "kWh", scale: BTU_J / KWH_J, symbol: "Btu", kinds: ["energy"], spellings: ["btu", "btus"] },
  kBtu: { base: "kWh", scale: (1000 * BTU_J) / KWH_J, symbol: "kBtu", kinds: ["energy"], spellings: ["kbtu", "k btu"] },
  MJ: { base: "kWh", scale: 1 / 3.6, symbol: "MJ", kinds: ["energy"], spellings: ["mj", "megajoule", "megajoules"] },
  kJ: { base: "kWh", scale: 1 / 3600, symbol: "kJ", kinds: ["energy"], spellings: ["kj", "kilojoule", "kilojoules"] },
  therm: {
    base: "kWh",
    scale: THERM_kWh,
    symbol: "therm",
    kinds: ["energy"],
    spellings: ["therm", "therms", "termia", "termias"],
  },
  // Electricity
  V: {
    base: "V",
    scale: 1,
    symbol: "V",
    kinds: ["voltage"],
    spellings: ["v", "vac", "volt", "volts", "voltio", "voltios"],
  },
  A: {
    base: "A",
    scale: 1,
    symbol: "A",
    kinds: ["current"],
    spellings: ["a", "amp", "amps", "ampere", "amperes", "amperio", "amperios"],
  },
  ohm: {
    base: "ohm",
    scale: 1,
    symbol: "Ω",
    kinds: ["resistance"],
    spellings: ["ω", "ohm", "ohms", "ohmio", "ohmios"],
  },
  kohm: {
    base: "ohm",
    scale: 1000,
    symbol: "kΩ",
    kinds: ["resistance"],
    spellings: ["kω", "k ω", "kohm", "kohms", "k ohm", "k ohms", "kilohm", "kilohms", "kiloohmios"],
  },
  // Water flow
  L_s: {
    base: "L_s",
    scale: 1,
    symbol: "L/s",
    kinds: ["water_flow", "airflow"],
    spellings: ["l/s", "l/sec", "lps", "liters per second", "litres per second", "litros por segundo", "litros/s"],
  },
  L_min: {
    base: "L_s",
    scale: 1 / MINUTE_s,
    symbol: "L/min",
    kinds: ["water_flow"],
    spellings: [
      "l/min",
      "lpm",
      "l/m",
      "lt/min",
      "lts/min",
      "liters/min",
      "litros/min",
      "liters per minute",
      "litres per minute",
      "litros por minuto",
    ],
  },
  gpm: {
    base: "L_s",
    scale: GALLON_L / MINUTE_s,
    symbol: "gpm",
    kinds: ["water_flow"],
    spellings: [
      "gpm",
      "gal/min",
      "gals/min",
      "gal per min",
      "gallons/min",
      "gallons per min",
      "gallons per minute",
      "gallons a minute",
      "galones/min",
      "galones por minuto",
    ],
  },
  L_h: {
    base: "L_s",
    scale: 1 / HOUR_s,
    symbol: "L/h",
    kinds: ["recovery"],
    spellings: [
      "l/h",
      "l/hr",
      "lph",
      "liters per hour",
      "litres per hour",
      "litros por hora",
      "litros/h",
      "litros/hora",
    ],
  },
  gph: {
    base: "L_s",
    scale: GALLON_L / HOUR_s,
    symbol: "gal/h",
    kinds: ["recovery"],
    spellings: [
      "gph",
      "gal/h",
      "gal/hr",
      "gal/hour",
      "gal per hour",
      "gallons/h",
      "gallons/hr",
      "gallons/hour",
      "gallons per hour",
      "gallons an hour",
      "galones/h",
      "galones/hora",
      "galones por hora",
    ],
  },
  L_day: {
    base: "L_s",
    scale: 1 / DAY_s,
    symbol: "L/day",
    kinds: ["recovery"],
    spellings: ["l/d", "l/day", "liters per day", "litres per day", "litros por dia", "litros al dia", "l/dia"],
  },
  gpd: {
    base: "L_s",
    scale: GALLON_L / DAY_s,
    symbol: "gal/day",
    kinds: ["recovery"],
    spellings: [
      "gpd",
      "gal/d",
      "gal/day",
      "gallons per day",
      "gallons a day",
      "galones por dia",
      "galones al dia",
      "gal/dia",
    ],
  },
  // Airflow
  m3_s: { base: "m3_s", scale: 1, symbol: "m³/s", kinds: ["airflow"], spellings: ["m3/s", "m3/sec"] },
  m3_h: {
    base: "m3_s",
    scale: 1 / HOUR_s,
    symbol: "m³/h",
    kinds: ["airflow"],
    spellings: ["m3/h", "m3/hr", "m3/hora", "cmh", "cubic meters per hour", "metros cubicos por hora"],
  },
  cfm: {
    base: "m3_s",
    scale: FOOT3_m3 / MINUTE_s,
    symbol: "cfm",
    kinds: ["airflow"],
    spellings: [
      "cfm",
      "cfm50",
      "scfm",
      "ft3/min",
      "cu ft/min",
      "cu ft per min",
      "cubic feet per minute",
      "pcm",
      "pies cubicos por minuto",
    ],
  },
  // Air changes: room volumes of air in an hour; those of a blower door are at 50 Pa, and the question says so
  per_h: {
    base: "per_h",
    scale: 1,
    symbol: "ACH",
    kinds: ["air_change"],
    spellings: [
      "ach",
      "ach50",
      "ach 50",
      "per h",
      "air changes",
      "air changes per hour",
      "air changes an hour",
      "renovaciones por hora",
      "cambios por hora",
      "cambios de aire por hora",
    ],
  },
  // Time; "time" stands for the mixed form in which times are printed, such as 1 min 12 s
  time: { base: "s", scale: 1, symbol: "", kinds: ["time"], spellings: [] },
  s: {
    base: "s",
    scale: 1,
    symbol: "s",
    kinds: ["time"],
    spellings: ["s", "sec", "secs", "second", "seconds", "seg", "segs", "segundo", "segundos"],
  },
  min: {
    base: "s",
    scale: MINUTE_s,
    symbol: "min",
    kinds: ["time"],
    spellings: ["min", "mins", "minute", "minutes", "minuto", "minutos"],
    alsoSpelt: ["m"],
  },
  h: {
    base: "s",
    scale: HOUR_s,
    symbol: "h",
    kinds: ["time"],
    spellings: ["h", "hr", "hrs", "hour", "hours", "hora", "horas"],
  },
  day: { base: "s", scale: DAY_s, symbol: "d", kinds: ["time"], spellings: ["d", "day", "days", "dia", "dias"] },
  week: {
    base: "s",
    scale: 7 * DAY_s,
    symbol: "wk",
    kinds: ["time"],
    spellings: ["wk", "wks", "week", "weeks", "semana", "semanas"],
  },
  // Velocity
  m_s: {
    base: "m_s",
    scale: 1,
    symbol: "m/s",
    kinds: ["velocity"],
    spellings: ["m/s", "m/sec", "meters per second", "metres per second", "metros por segundo"],
  },
  ft_s: {
    base: "m_s",
    scale: FOOT_m,
    symbol: "ft/s",
    kinds: ["velocity"],
    spellings: [
      "ft/s",
      "ft/sec",
      "fps",
      "ft per sec",
      "ft per second",
      "feet per second",
      "pies/s",
      "pies por segundo",
    ],
  },
  ft_min: {
    base: "m_s",
    scale: FOOT_m / MINUTE_s,
    symbol: "ft/min",
    kinds: ["velocity"],
    spellings: ["ft/min", "fpm", "feet per minute", "pies por minuto", "pies/min"],
  },
  // Mass and density
  kg: {
    base: "kg",
    scale: 1,
    symbol: "kg",
    kinds: ["mass"],
    spellings: ["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramo", "kilogramos"],
  },
  g: {
    base: "kg",
    scale: 0.001,
    perBase: 1000,
    symbol: "g",
    kinds: ["mass"],
    spellings: ["g", "gram", "grams", "gramo", "gramos"],
  },
  lb: {
    base: "kg",
    scale: POUND_kg,
    symbol: "lb",
    kinds: ["mass"],
    spellings: ["lb", "lbs", "pound", "pounds", "libra", "libras", "#"],
  },
  oz: {
    base: "kg",
    scale: POUND_kg / 16,
    symbol: "oz",
    kinds: ["mass"],
    spellings: ["oz", "ounce", "ounces", "onza", "onzas"],
  },
  kg_m3: { base: "kg_m3", scale: 1, symbol: "kg/m³", kinds: ["density"], spellings: ["kg/m3", "kg per m3"] },
  lb_ft3: {
    base: "kg_m3",
    scale: POUND_kg / FOOT3_m3,
    symbol: "lb/ft³",
    kinds: ["density"],
    spellings: ["lb/ft3", "lbs/ft3", "lb/cu ft", "lbs/cu ft", "pcf"],
  },
  // Heat loss
  W_K: {
    base: "W_K",
    scale: 1,
    symbol: "W/K",
    kinds: ["heat_loss_coefficient"],
    spellings: ["w/k", "w/c", "w/°c", "w per k"],
  },
  Btu_h_F: {
    base: "W_K",
    scale: BTU_J / HOUR_s / FAHRENHEIT_K,
    symbol: "Btu/h·°F",
    kinds: ["heat_loss_coefficient"],
    spellings: [
      "btu/h f",
      "btu/h °f",
      "btu/hr f",
      "btu/hr °f",
      "btu/(h °f)",
      "btu/(h f)",
      "btu/(hr °f)",
      "btuh/f",
      "btuh/°f",
    ],
  },
  // Sound
  dBA: {
    base: "dBA",
    scale: 1,
    symbol: "dBA",
    kinds: ["sound"],
    spellings: ["dba", "db", "db a", "db(a)", "decibel", "decibels", "decibelio", "decibelios", "decibeles"],
  },
  // Money
  usd: {
    base: "usd",
    scale: 1,
    symbol: "$",
    kinds: ["money"],
    spellings: ["$", "usd", "us$", "dollar", "dollars", "dolar", "dolares"],
  },
  cent: {
    base: "usd",
    scale: 0.01,
    perBase: 100,
    symbol: "¢",
    kinds: ["money"],
    spellings: ["¢", "cent", "cents", "centavo", "centavos", "ctvs"],
  },
  usd_kWh: {
    base: "usd_kWh",
    scale: 1,
    symbol: "$/kWh",
    kinds: ["energy_price"],
    spellings: [
      "$/kwh",
      "$ /kwh",
      "$ per kwh",
      "$ a kwh",
      "$ por kwh",
      "$ el kwh",
      "usd/kwh",
      "dollars/kwh",
      "dollars per kwh",
      "dolares/kwh",
      "dolares por kwh",
    ],
  },
  cent_kWh: {
    base: "usd_kWh",
    scale: 0.01,
    perBase: 100,
    symbol: "¢/kWh",
    kinds: ["energy_price"],
    spellings: [
      "¢/kwh",
      "¢ /kwh",
      "¢ per kwh",
      "c/kwh",
      "cents/kwh",
      "cents per kwh",
      "cents a kwh",
      "centavos/kwh",
      "centavos por kwh",
    ],
  },
  // Pure numbers
  percent: {
    base: "",
    scale: 0.01,
    perBase: 100,
    symbol: "%",
    kinds: ["share"],
    spellings: ["%", "percent", "per cent", "pct", "por ciento", "porciento"],
  },
  one: { base: "", scale: 1, symbol: "", kinds: ["ratio", "count"], spellings: [] },
} as const satisfies Readonly<Record<string, UnitEntry>>;

export type UnitId = keyof typeof UNITS;

/** What a unit is, with its own types erased. */
export function describeUnit(unit: UnitId): UnitEntry {
  return UNITS[unit];
}

/** Every unit, in the order of the table. */
export const UNIT_IDS: readonly UnitId[] = Object.keys(UNITS).filter(isUnitId);

/** The unit in which a reader of this unit system reads and types a kind of quantity. */
export function readersUnit(kind: QuantityKind, units: UnitSystem): UnitId {
  return QUANTITY_KINDS[kind][units];
}

function isUnitId(name: string): name is UnitId {
  return Object.hasOwn(UNITS, name);
}

import type { room } from "../../../topics/room.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

export const texts: TopicTexts<typeof room> = {
  title: "Room for a heat pump",
  names: ["air for the heat pump"],
  summary: "How cold the room gets with the heat pump in it, and the cheapest thing that helps.",
  examples: [
    "room 7x10x10 ft closet",
    "room volume=450cuft where=closet model=hollin-50 door=louvred",
    "room 700 cu ft basement, 4 people, duct=exhaust, duct run 12 ft",
  ],
  facts: {
    volume: {
      label: "Room",
      question: "How large is the room?",
      help: "Length, width and height, such as 7x10x10 ft, or its volume, such as 700 cu ft.",
      words: ["volume", "room size", "room volume", "dimensions"],
    },
    where: {
      label: "Kind of room",
      question: "What kind of room is it?",
      help: "It decides which walls face warm rooms, outdoors or the ground. A closet is taken to lie inside the heated house.",
      words: ["where", "kind of room"],
      options: {
        closet: { label: "Closet in the house", words: ["cupboard"] },
        utility_room: { label: "Utility room", words: ["laundry room", "mechanical room"] },
        basement: { label: "Basement", words: ["cellar"] },
        garage: { label: "Garage", words: [] },
      },
    },
    model: {
      ...commonFacts.model,
      help: "Its short name in the company's catalogue. Skip it, and I take a usual unit.",
    },
    people: commonFacts.people,
    door: {
      label: "Door",
      question: "What door does the room have?",
      help: "Plain means a common inside door with a gap under it. Sealed means gaskets and a sweep.",
      words: ["door"],
      options: {
        sealed: { label: "Sealed", words: ["weatherstripped", "gasketed", "tight door"] },
        plain: { label: "Plain", words: ["plain door", "slab door", "closed door"] },
        louvred: { label: "Louvered", words: ["louvered", "louvered door", "louver door", "louvred door"] },
        open: { label: "No door", words: ["no door", "open doorway", "door removed"] },
      },
    },
    combustion: {
      label: "Fuel appliance there",
      question: "Is there a fuel-burning appliance in that room or beside it that vents by draft?",
      help: "A furnace, boiler or gas heater with a draft hood. Air blown out of the house can pull its gas back in.",
      words: ["fuel appliance", "combustion", "furnace", "boiler", "draft hood"],
    },
    setpoint: { ...commonFacts.setpoint, before: ["at"] },
    tank: { ...commonFacts.tank, help: "On the rating plate, in gallons. A named model tells its own." },
    heat_pump: {
      label: "Heat pump output",
      question: "How much heat does the heat pump give?",
      help: "Heat into the water at the rating point.",
      words: ["heat pump output", "heat pump heat", "heat pump capacity"],
    },
    mode: commonFacts.mode,
    place: commonFacts.place,
    outdoor: {
      label: "Outdoors, cold day",
      question: "How cold is it outdoors on a cold winter day?",
      help: "The mean of such a day. Not said, I take the place's coldest month less 14 °F.",
      words: ["outdoor", "outdoors", "outside", "outdoor temperature"],
    },
    adjoining: {
      label: "Space behind the door",
      question: "How warm is the space behind the door in winter?",
      help: "Heated rooms are taken at 68 °F, the rest of a basement by the place's books.",
      words: ["adjoining", "next room", "adjoining room", "beside"],
    },
    ceiling: {
      label: "Ceiling height",
      question: "How high is the ceiling?",
      help: "It shares the volume out between floor and walls. The floor is taken as square.",
      words: ["ceiling", "ceiling height"],
    },
    undercut: {
      label: "Gap under the door",
      question: "How wide is the gap under the door?",
      help: "Measure from the floor, not from the carpet's backing.",
      words: ["undercut", "gap", "door gap", "gap under the door"],
    },
    low_grille: {
      label: "Low grille, free area",
      question: "How much free area does the low grille have?",
      help: "Stamped on it, else three quarters of a metal face and a quarter of a wooden one.",
      words: ["low grille", "low grill", "lower grille"],
    },
    high_grille: {
      label: "High grille, free area",
      question: "How much free area does the high grille have?",
      help: "Stamped on it, else three quarters of a metal face and a quarter of a wooden one.",
      words: ["high grille", "high grill", "upper grille"],
    },
    duct: {
      label: "Ducts",
      question: "Which air connections of the unit have a duct?",
      words: ["duct", "ducts", "ducting"],
      options: {
        none: { label: "None", words: ["no ducts", "unducted"] },
        exhaust: { label: "Exhaust only", words: ["exhaust only", "exhaust duct"] },
        intake: { label: "Intake only", words: ["intake only", "intake duct"] },
        both: { label: "Intake and exhaust", words: ["fully ducted", "both ducts"] },
      },
    },
    duct_to: {
      label: "Ducts lead to",
      question: "Where do the ducts lead?",
      words: ["duct to", "ducts to", "ducted to"],
      options: {
        outdoors: { label: "Outdoors", words: ["to outdoors", "to the outside"] },
        adjoining: { label: "The space behind the door", words: ["to the next room", "to the house"] },
      },
    },
    duct_run: {
      label: "Length of each duct",
      question: "How long is each duct?",
      help: "Two elbows and a wall hood on each are counted besides.",
      words: ["duct run", "duct length"],
    },
    duct_size: {
      label: "Duct size",
      question: "What size are the ducts?",
      help: "Inside diameter. Units of this kind usually ask for 8 in.",
      words: ["duct size", "duct diameter"],
    },
    duct_kind: {
      label: "Duct kind",
      question: "Rigid or flexible duct?",
      help: "Flexible duct is counted as it lies on most jobs, 30 % short of stretched.",
      words: ["duct kind"],
      options: {
        galvanized: { label: "Rigid metal", words: ["rigid", "rigid duct", "metal duct"] },
        flex: { label: "Flexible", words: ["flexible", "flex duct", "flexible duct"] },
      },
    },
    heater: {
      label: "Room heater",
      question: "How strong is the heater in that room?",
      help: "A baseboard, a unit heater, an open register. Zero if nothing heats it.",
      words: ["heater", "room heater", "baseboard", "space heater"],
    },
    heater_setting: {
      label: "Room heater set to",
      question: "What is the room heater set to?",
      words: ["heater set to", "heater setting", "room thermostat"],
    },
    gains: {
      label: "Other heat",
      question: "How much heat do other things give off in that room?",
      help: "A freezer gives about 100 W around the clock, a dryer about 100 W as a day's mean.",
      words: ["gains", "other heat", "freezer"],
    },
    bedroom: {
      label: "Distance to a bedroom",
      question: "How far is the nearest bedroom from the heater's door?",
      words: ["bedroom", "distance to bedroom"],
    },
  },
  results: {
    room_volume: "Room",
    required_volume: "Asked of a closed room",
    room_temperature_low: "Room at its lowest, winter",
    room_temperature_mean: "Room on average, winter",
    room_temperature_without: "Room without the unit, winter",
    humidity: "Highest humidity in the room",
    cop_in_room: "Heat for each part of power, here",
    cop_open_air: "The same in unlimited air",
    running_time: "Heat pump runs a day",
    energy_per_day: "Electricity a day, winter",
    cooling_rate: "Cooling of the room while it runs",
    heating_penalty: "Made up by heating, a winter day",
    airflow_needed: "Airflow by the sheet",
    airflow_left: "Airflow left with ducts",
    capacity_left: "Heat left with that air",
    net_free_area: "Free area of door and grilles",
    grille_area: "Face of each metal grille advised",
    duct_pressure_drop: "Ducts take",
    duct_pressure_available: "Fan has for ducts",
    house_pressure: "House pressure moves by",
    condensate_per_hour: "Condensate while it runs",
    condensate_per_day: "Condensate a day",
    drain_size: "Drain at least",
    sound_at_distance: "Sound outside, that far off",
  },
  findings: {
    room_serves: ({ low, cop, open }) =>
      `The room serves: low in the room is ${low}, and the heat pump gives ${cop} parts against ${open} in unlimited air.`,
    room_struggles: ({ low, cop, open }) =>
      `The room is too small as it is: low in it is ${low}, COP ${cop} against ${open}. Nothing tried is enough alone.`,
    room_too_cold: ({ low, without }) =>
      `Too cold for a heat pump: the room falls to ${low}, and to ${without} even without the unit.`,
    fix_undercut: ({ before, after, gap }) =>
      `Cut the door to a ${gap} gap: low in the room goes from ${before} to ${after}.`,
    fix_grilles: ({ before, after, each }) =>
      `Put in a low and a high grille of ${each} free area each: low in the room goes from ${before} to ${after}.`,
    fix_louvred: ({ before, after }) => `Make the door louvered: low in the room goes from ${before} to ${after}.`,
    fix_open: ({ before, after }) =>
      `Open the room to the space beside it: low in the room goes from ${before} to ${after}.`,
    fix_exhaust: ({ before, after }) => `Duct the exhaust away: low in the room goes from ${before} to ${after}.`,
    fix_intake: ({ before, after }) => `Duct the intake: low in the room goes from ${before} to ${after}.`,
    fix_both: ({ before, after }) => `Duct intake and exhaust: low in the room goes from ${before} to ${after}.`,
    fix_less_compressor: ({ before, after }) =>
      `Run both sources together: low in the room goes from ${before} to ${after}, at the price of more electricity.`,
    ducts_cost_heat: ({ low, make_up, taken }) =>
      `The room keeps ${low}, but these ducts make the house heat ${make_up} of outdoor air a day; the unit takes only ${taken}.`,
    helps_most: () => "Of everything tried, this helps most; combine it with another or pick another room:",
    cop_lost: ({ cop, open, loss }) =>
      `This room costs ${loss} of the efficiency: COP ${cop}, against ${open} in air that the unit cannot cool.`,
    barred_by_cold: ({ time }) =>
      `The room gets too cold for the compressor: it is locked out ${time} a day, and elements do the work.`,
    frost_may_grow: ({ low }) =>
      `At ${low} the coil may frost. Defrosting is not counted here, so take the COP as the best case.`,
    damp_winter: ({ humidity }) =>
      `Humidity reaches ${humidity} in winter. Cold corners will be wet; mould grows where that lasts.`,
    damp_summer: ({ humidity }) =>
      `Humidity reaches ${humidity} in summer. Let warm outdoor air in as little as you can; cold pipes and tank tops sweat.`,
    volumes_disagree: () => "Sources disagree on how large a closed room must be. The unit's own sheet decides.",
    lab_differs: ({ lab, light, insulated }) =>
      `A lab lost ${lab} of the COP from 700 to 450 ft³; this model, on that test, ${light} to ${insulated}, by the walls. The lab's walls are not told, so take losses here as rough.`,
    penalty_share: ({ taken, made_up, share }) =>
      `On a winter day the unit takes ${taken} from the air; heating makes up ${made_up} of it (${share}).`,
    heating_not_touched: () => "Heat from a garage costs the house's heating next to nothing.",
    heater_runs: ({ energy }) => `The room heater gives ${energy} a day; the unit only moves that heat into the tank.`,
    ducts_to_house: ({ airflow, pressure, make_up }) =>
      `While it runs, ${airflow} leave or enter unbalanced: house pressure moves ${pressure}, and ${make_up} a day heats outdoor air.`,
    combustion_with_exhaust: ({ pressure }) =>
      `Stop: blowing house air out pulls the house ${pressure} down beside a draft appliance. Its gas may spill. Test, or bring air in.`,
    combustion_same_room: () =>
      "A draft appliance shares this air. Check its combustion air and test for spilling with the fan running.",
    insulate_exhaust: () => "Insulate the exhaust duct and seal it: it carries cold air and sweats.",
    drain_advice: ({ fall, run }) =>
      `Run the condensate with fall, ${fall} on ${run}, to a place that cannot freeze. Where it cannot fall, pump it. Fit a trap where the sheet asks for one.`,
    counted_for: ({ outdoor, adjoining, hot_water }) =>
      `Counted for ${outdoor} outdoors, ${adjoining} behind the door and ${hot_water} of hot water a day.`,
    counted_for_garage: ({ outdoor, hot_water }) =>
      `Counted for ${outdoor} outdoors and ${hot_water} of hot water a day, with garage doors closed.`,
    well_mixed: () => "The room is taken as well mixed. At the floor and before the exhaust it is colder than shown.",
    square_floor: () => "Walls, leaks and stored things are the usual ones for such a room; a square floor is assumed.",
    generic_sheet: ({ volume }) =>
      `No model named, so I took a usual unit that holds ${volume}. Name the model to use its own sheet.`,
    sound_assumed: () => "No sound on the sheet; I took 50 dBA, the middle of such units.",
    not_settled: () => "The room was still drifting after the longest run. Take the numbers as rough.",
    volume_met: () => "Yes",
    volume_short: () => "Too small",
    change_none: () => "As asked",
    change_undercut: ({ gap }) => `Gap under the door ${gap}`,
    change_grilles: ({ each }) => `Low and high grille, ${each} each`,
    change_louvred: () => "Louvered door",
    change_open: () => "Open to the space beside",
    change_exhaust: () => "Exhaust duct",
    change_intake: () => "Intake duct",
    change_both: () => "Both ducts",
    change_less_compressor: () => "Mode: both together",
    remark_as_asked: () => "–",
    remark_works: () => "Enough",
    remark_helps: () => "Helps, not enough",
    remark_no_help: () => "No help",
    remark_costs_heat: () => "Costs more heat than it moves",
    no_heat_pump: () => "This unit has no heat pump, so it takes no heat from the room. Name one with a heat pump.",
    no_openings_to_garage: () =>
      "No opening or duct may join a garage to the house. Leave the door plain, and lead ducts outdoors.",
    ducts_choke_fan: ({ left, size }) =>
      `With ${size} ducts the fan keeps only ${left} of its air. Type a larger duct size or a shorter run.`,
    unknown_model: ({ typed, nearest }) =>
      `“${typed}” is not in the catalogue. Nearest: ${nearest}. Type one of these.`,
    no_catalogue: ({ typed }) =>
      `“${typed}” is not known: the company's catalogue is empty. Leave the model out, and type the tank's gallons.`,
    unknown_place: ({ typed, nearest }) => `“${typed}” is not a place in the books. Nearest: ${nearest}.`,
    no_source: () => "Nothing heats that water. Give the heat pump its output.",
    setpoint_outside_unit: ({ setpoint, lowest, highest }) =>
      `This unit cannot be set to ${setpoint}. Type a tank temperature from ${lowest} to ${highest}.`,
    mode_only_heat_pump: () => "This unit has no elements, so it only runs on its heat pump. Type: heat pump only.",
    mode_only_elements: () => "This unit has no heat pump, so it only runs on its elements. It needs no air.",
    mode_not_offered: () => "This unit does not offer that mode. Leave the mode out, and I take its usual one.",
    supply_unfit: ({ supply, made_for }) =>
      `This unit is made for ${made_for}, not for ${supply}. Type its own supply.`,
    wanted_above_storage: ({ wanted, setpoint }) =>
      `You want ${wanted} from a tank at ${setpoint}, and mixing only cools. Store hotter.`,
    cold_above_wanted: ({ cold, wanted }) => `Cold water at ${cold} cannot cool a mix to ${wanted}.`,
  },
  tables: {
    remedies: {
      title: "What to change, the cheapest first",
      columns: {
        change: "Change",
        low: "Low in the room",
        humidity: "Humidity",
        cop: "COP",
        energy: "Electricity a day",
        remark: "Enough?",
      },
    },
    volumes: {
      title: "Who asks how much of a closed room",
      columns: { source: "Source", volume: "Volume", here: "Here" },
    },
    closed_rooms: {
      title: "The same unit in closed rooms, plain door",
      columns: { volume: "Volume", low: "Low in the room", cop: "COP", loss: "COP lost" },
    },
  },
  charts: {
    day: {
      title: "A cold winter day in the room",
      columns: {
        room: "Room",
        outdoors: "Outdoors",
        humidity: "Humidity in the room",
        heat_pump: "Heat pump",
        chilly: "Frost may grow below",
      },
    },
  },
};

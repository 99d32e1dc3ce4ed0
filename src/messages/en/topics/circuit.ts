import type { circuit } from "../../../topics/circuit.ts";
import type { TopicTexts } from "../../topic-texts.ts";

export const texts: TopicTexts<typeof circuit> = {
  title: "Circuit",
  summary: "Load, breaker, conductor and voltage drop for a water heater, by the NEC 2023 tables.",
  examples: [
    "circuit 4500W at 208V 60 ft",
    "circuit element=4500W supply=240V run=100ft compressor=3A together=interlocked",
    "circuit 5500W 240V, aluminum, 80 ft, breaker 30 A",
    "circuit 4500W 240V 150 ft, feeder=100A feeder_load=70A drop_limit=2%",
    "circuit element=0W supply=120V compressor=8A breaker=15A room=garage",
  ],
  facts: {
    element: {
      label: "Element",
      question: "What is the power of one element, from its plate?",
      help: "Elements that lock each other out count once. Enter 0 for a unit with a compressor only.",
      words: ["element", "heating element", "watts", "load"],
    },
    supply: {
      label: "Supply voltage",
      question: "What voltage is at the panel?",
      help: "Single-phase: 240 V in most houses, 208 V off a three-phase service.",
      words: ["supply", "supply voltage", "volts", "voltage"],
    },
    run: {
      label: "Wire run",
      question: "How long is the wire from panel to heater, one way?",
      help: "Skip it, and I leave out the voltage drop.",
      words: ["run", "wire run", "run length", "one way", "distance"],
    },
    rated_volts: {
      label: "Element rated for",
      question: "What voltage is the element rated for?",
      help: "Stamped on the element's flange or the rating plate.",
      words: ["rated", "rated volts", "rated voltage", "element volts", "rating"],
    },
    compressor: {
      label: "Compressor current",
      question: "What is the compressor's rated current?",
      help: "Rated load amps from the plate, with the fan.",
      words: ["compressor", "compressor current", "rla", "heat pump"],
    },
    together: {
      label: "Element and compressor",
      question: "Can the element and the compressor run at once?",
      help: "The wiring diagram says. I take both at once until you know.",
      words: ["element and compressor"],
      options: {
        simultaneous: { label: "Both at once", words: ["simultaneous", "both at once", "together"] },
        interlocked: { label: "One locks out the other", words: ["interlocked", "interlock", "one at a time"] },
      },
    },
    wire_metal: {
      label: "Wire metal",
      question: "Copper or aluminum wire?",
      words: ["wire metal", "conductor metal"],
      options: {
        copper: { label: "Copper", words: ["copper", "cu"] },
        aluminium: { label: "Aluminum", words: ["aluminum", "aluminium", "alu"] },
      },
    },
    column: {
      label: "Temperature column",
      question: "Which temperature column of the ampacity table applies?",
      help: "60 °C unless every terminal is marked higher; NM cable stays at 60 °C.",
      words: ["column", "terminals", "temperature column", "insulation"],
      options: {
        "60": { label: "60 °C", words: ["60c", "nm", "nm-b", "60 column"] },
        "75": { label: "75 °C", words: ["75c", "thwn", "75 column"] },
        "90": { label: "90 °C", words: ["90c", "thhn", "90 column"] },
      },
    },
    wire: {
      label: "Wire that is there",
      question: "What size is the wire that is there?",
      help: "Printed on the cable jacket.",
      words: ["wire", "awg", "gauge", "conductor", "cable", "wire size"],
      options: {
        "14": { label: "14 AWG", words: ["14 awg", "#14", "14 gauge", "14/2"] },
        "12": { label: "12 AWG", words: ["12 awg", "#12", "12 gauge", "12/2"] },
        "10": { label: "10 AWG", words: ["10 awg", "#10", "10 gauge", "10/2"] },
        "8": { label: "8 AWG", words: ["8 awg", "#8", "8 gauge", "8/2"] },
        "6": { label: "6 AWG", words: ["6 awg", "#6", "6 gauge", "6/2"] },
        "4": { label: "4 AWG", words: ["4 awg", "#4", "4 gauge"] },
      },
    },
    breaker: {
      label: "Breaker that is there",
      question: "What size is the breaker that is there?",
      words: ["breaker", "existing breaker", "ocpd", "fuse"],
    },
    drop_limit: {
      label: "Drop allowed on the branch",
      question: "How much of the voltage may the branch lose?",
      help: "The code's notes advise 3 %. It is advice, not a rule.",
      words: ["drop limit", "allowed drop", "voltage drop limit"],
    },
    feeder: {
      label: "Feeder or panel",
      question: "What is the feeder or panel rated for?",
      help: "The main or feeder breaker that this circuit hangs on.",
      words: ["feeder", "panel", "main breaker", "subpanel", "service"],
    },
    feeder_load: {
      label: "Load already on it",
      question: "How much load is already on that feeder or panel?",
      help: "From a load calculation or a month of readings, by an electrician.",
      words: ["feeder load", "panel load", "other loads", "load on the panel"],
    },
    feeder_drop: {
      label: "Drop on the feeder",
      question: "How much of the voltage does the feeder lose?",
      help: "Feeder and branch together: 5 % is advised at most.",
      words: ["feeder drop"],
    },
    shared: {
      label: "Other things on this circuit",
      question: "Is anything else on this same circuit?",
      help: "A light, a pump, a receptacle.",
      words: ["shared", "shared circuit", "something else on it"],
    },
    disconnect: {
      label: "Disconnect",
      question: "Is there a switch in sight of the heater, or a breaker that can be locked open?",
      help: "In sight means visible and within 50 ft.",
      words: ["disconnect", "switch"],
      options: {
        in_sight: { label: "In sight", words: ["in sight", "within sight", "disconnect in sight"] },
        lockable: { label: "Breaker locks open", words: ["lockable", "lockable breaker", "breaker lock"] },
        neither: { label: "Neither", words: ["no disconnect", "no disconnect in sight"] },
      },
    },
    breaker_listed: {
      label: "Breaker listed for the panel",
      question: "Is the breaker one that the panel's label lists?",
      help: "The label inside the door names them. One that merely fits is not enough.",
      words: ["breaker listed", "listed breaker", "listed"],
    },
    room: {
      label: "Where it stands",
      question: "Where does the heater stand?",
      words: ["room", "location"],
      options: {
        basement: { label: "Basement", words: [] },
        garage: { label: "Garage", words: [] },
        attic: { label: "Attic", words: [] },
        crawl_space: { label: "Crawl space", words: ["crawlspace"] },
        closet: { label: "Closet", words: [] },
        utility_room: { label: "Utility room", words: ["laundry room"] },
        living_space: { label: "Living space", words: [] },
        outdoors: { label: "Outdoors", words: ["outside"] },
      },
    },
    ground_fault: {
      label: "Ground-fault protection",
      question: "Does a ground-fault breaker or receptacle protect it?",
      words: ["ground fault", "ground-fault", "gfci"],
    },
    rise: {
      label: "Water warmed by",
      question: "By how much is the water warmed, for comparing recoveries?",
      help: "Tank temperature less cold water.",
      words: ["rise", "temperature rise"],
    },
  },
  results: {
    element_power_at_volts: "Element on this supply",
    element_resistance: "Element resistance",
    load_current: "Load",
    design_current: "Counted as continuous, 125 %",
    breaker_range: "Breaker for the load",
    conductor: "Thinnest conductor",
    conductor_breaker_limit: "Largest breaker for the conductor",
    voltage_drop: "Voltage drop",
    voltage_drop_share: "Voltage drop, share",
    element_power_behind_wire: "Element behind that wire",
    conductor_for_drop: "Conductor that keeps the drop",
    total_drop_share: "Drop, feeder and branch",
    feeder_spare: "Left on the feeder",
    recovery_rate: "Element recovers",
  },
  findings: {
    overpowered: ({ power, rated, supply }) =>
      `Do not connect: on ${supply} the ${rated} element makes ${power}. Fit an element rated for the supply.`,
    plan: ({ conductor, smallest, largest }) =>
      smallest === largest
        ? `By table: ${conductor} behind a ${smallest} breaker.`
        : `By table: ${conductor} behind a breaker of ${smallest}, at most ${largest}.`,
    beyond_table: ({ design }) => `${design} is beyond the table up to 4 AWG. An electrician must size this circuit.`,
    wire_too_thin: ({ wire, design, conductor }) =>
      `${wire} is too thin for ${design}. By table it takes ${conductor}; do not use the old wire.`,
    breaker_outside: ({ breaker, smallest, largest }) =>
      smallest === largest
        ? `A ${breaker} breaker does not fit: load and conductor ask for ${smallest}.`
        : `A ${breaker} breaker does not fit: load and conductor ask for ${smallest}, at most ${largest}.`,
    element_slower: ({ power, rated, share }) =>
      `The ${rated} element makes ${power} here, ${share} of its rating. It heats that much slower.`,
    conductor_caps_breaker: ({ conductor, limit }) =>
      `${conductor} allows a breaker of ${limit} at most, whatever the load allows.`,
    drop_high: ({ share, advised, conductor, better }) =>
      `${share} is lost on the wire, over the advised ${advised}. With ${conductor} it is ${better}.`,
    drop_beyond_table: ({ share, advised }) =>
      `${share} is lost on the wire, over the advised ${advised}. Even 4 AWG is not enough: shorten the run.`,
    total_drop_high: ({ total, advised }) => `Feeder and branch together lose ${total}, over the advised ${advised}.`,
    other_metal: ({ other }) => `In the other metal the same load takes ${other}.`,
    aluminium_joints: () =>
      "Aluminum goes only into terminals marked for it. Most heaters have copper leads: join with connectors listed for both, torqued.",
    feeder_full: ({ spare, load }) =>
      `The feeder is too small: with ${load} for the heater it is ${spare} over. An electrician may find room by a load calculation.`,
    feeder_holds: ({ spare }) => `The feeder holds it, with ${spare} left, loads simply added.`,
    feeder_unknown: () => "Feeder or panel is not checked. Give both: feeder=100A feeder_load=70A.",
    circuit_shared: () =>
      "Something else is on this circuit. A water heater takes a circuit of its own; an electrician decides.",
    plug_in: ({ load, most, breaker }) =>
      `Plug-in: ${load} of the ${most} that one thing may use on a ${breaker} circuit (80 %, from memory).`,
    plug_in_over: ({ load, most, breaker }) =>
      `Too much for a plug: ${load}, where one thing may use ${most} on a ${breaker} circuit (80 %, from memory).`,
    plug_in_later: () =>
      "Laying wire anyway? California asks for a 20 A receptacle on 30 A wiring ready for 240 V (Title 24-2025, 150.0(n)).",
    receptacle_unguarded: () =>
      "A receptacle here is asked to trip on ground faults (NEC 210.8(A), from memory). Press its test button.",
    no_disconnect: () =>
      "Nothing to switch it off with is in sight, and the breaker cannot be locked open. One of them is asked for.",
    breaker_not_listed: () => "The breaker is not on the panel's list. Have it changed for one that is.",
    within: () => "Within the limit",
    over_limit: () => "Over the limit",
    feeder_incomplete: () => "Feeder and the load on it go together. Type both: feeder=100A feeder_load=70A.",
    motor_in_load: ({ compressor }) =>
      `With a compressor (${compressor}) the unit's plate decides: minimum circuit ampacity and maximum breaker.`,
    compressor_left_out: () =>
      "No compressor is counted. For a heat pump unit give its rated load amps from the plate.",
    ninety_needs_terminals: () =>
      "The 90 °C column counts only where all terminals are rated for it; most are marked 60 or 75 °C.",
    plate_wins: () => "A breaker or circuit size on the unit's plate wins over this table.",
    electrician_decides: () => "A licensed electrician decides and connects. Lock out and prove dead before touching.",
    wire_not_made: ({ wire }) =>
      `The table has no ${wire} AWG aluminum: it starts at 12. Choose another size or copper.`,
    step_seventy_five: () => "With 75 °C terminals",
  },
  tables: {
    conductors: {
      title: "Conductor by conductor, on this run",
      columns: { conductor: "Conductor", drop: "Drop", share: "Share", remark: "Remark" },
    },
    supplies: {
      title: "The element on each supply",
      columns: {
        supply: "Supply",
        rated: "Element for",
        power: "Power",
        current: "Load",
        breaker: "Smallest breaker",
        recovery: "Recovery",
      },
    },
  },
};

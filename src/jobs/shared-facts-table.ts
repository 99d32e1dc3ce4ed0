/**
 * Facts that mean the same in every topic have the same id and need no line here. These are the others: what a topic calls
 * by a name of its own, and under which id the job keeps it. An id that starts with the topic's own is known there alone.
 */
export const KEPT_AS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  room: { where: "room", volume: "room_volume" },
  pick: {
    room: "room_volume",
    door: "passage",
    floor: "floor_allows",
    height: "pick_height",
    breaker: "pick_breaker",
  },
  circuit: { run: "circuit_length", disconnect: "circuit_disconnect" },
  cost: { price: "cost_price" },
  wait: {
    loop: "wait_loop",
    price: "wait_price",
    air: "wait_air",
    pipe: "wait_pipe",
    length: "wait_length",
    size: "wait_size",
  },
  supply: {
    rise: "supply_rise",
    hot_length: "supply_hot_length",
    pipe: "supply_pipe",
    length: "supply_length",
    size: "supply_size",
    code: "supply_code",
  },
};

/** Facts about the question rather than the house: asked anew every time. */
export const NOT_KEPT: readonly string[] = [
  "month",
  "days",
  "day",
  "limit",
  "absence",
  "work",
  "instead",
  "flow",
  "water",
  "appliances",
  "worksheet",
  "job",
  "person",
  "span",
  "from",
  "to",
  "show",
  "csv",
];

/** Options that are named otherwise in one topic: the topic's own name, and that of the job. */
export const SAME_OPTIONS: Readonly<Record<string, Readonly<Record<string, Readonly<Record<string, string>>>>>> = {
  cost: { replaces: { electric_tank: "electric", gas_tank: "gas" } },
};

import type { Books } from "../books/books.ts";
import { partAmount, partWord } from "../crew/crew-words.ts";
import { q } from "../declaration/answer.ts";
import type { CatalogueModel } from "../equipment/catalogue.ts";
import { planCircuit } from "../physics/circuit-plan.ts";
import { nameConductor } from "../physics/circuit-results.ts";
import type { Kit } from "./kit.ts";

/** What a circuit is sized by where nobody said otherwise: those that `circuit` assumes too. */
const METAL = "copper";
const COLUMN = "60";

/** The conductor that the unit's circuit asks for and what it loses along its run; nothing where too little was told. */
export function wireFor(unit: CatalogueModel | undefined, supply_V: number | undefined, run_m: number | undefined) {
  const [element] = unit?.heater.elements ?? [];
  if (element === undefined || supply_V === undefined) return undefined;
  const { conductor, drop } = planCircuit({
    element_W: element.rated_W,
    rated_volts_V: element.rated_V,
    supply_V,
    compressor_A: undefined,
    together: "interlocked",
    run_m,
    wire_metal: METAL,
    column: COLUMN,
    wire: undefined,
    breaker_A: undefined,
  });
  if (conductor === undefined || drop === undefined || run_m === undefined) return undefined;
  const name = nameConductor(conductor, METAL);
  return { conductor: name, run: q("length", run_m), drop: q("share", drop.share) };
}

/** What is brought, a row a part. */
export function tabulateKit({ lines }: Kit, books: Books) {
  return {
    id: "kit",
    rows: lines.map(({ part, amount }) => [partWord(part, books), partAmount(part, amount, books)]),
  };
}

import { z } from "zod";

/** What the cells of one column hold; several values in a cell stand apart by semicolons. */
export type CellKind = "text" | "number" | "flag" | "texts" | "numbers";
/** One column of a book that is kept as a table. A name with dots reaches into a group: `tank.volume`. */
export interface Column {
  readonly name: string;
  readonly holds: CellKind;
  /** True where each line must have it; a group that may be left out needs its columns only once it is begun. */
  readonly isNeeded: boolean;
}

/** Columns of names that the company chooses itself, such as display codes: `codes.A1`. */
export const ANY_NAME = "*";

/** As much of JSON Schema as a book's entries come to. */
interface Shape {
  readonly type?: string | readonly string[];
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: unknown;
  readonly items?: Shape | false;
  readonly prefixItems?: readonly Shape[];
}

/** The columns of one entry of a book, in the order of its fields, made from the schema that reads it. */
export function listColumns(entry: z.ZodType): readonly Column[] {
  return columnsOf("", z.toJSONSchema(entry, { io: "input", unrepresentable: "any" }) as Shape, true);
}

function columnsOf(name: string, shape: Shape, isNeeded: boolean): readonly Column[] {
  const { properties, required = [], additionalProperties } = shape;
  const inside = (field: string) => (name === "" ? field : `${name}.${field}`);
  if (properties !== undefined)
    return Object.entries(properties).flatMap(([field, one]) =>
      columnsOf(inside(field), one, required.includes(field)),
    );
  if (shape.type === "object" && additionalProperties !== undefined)
    return [{ name: inside(ANY_NAME), holds: "text", isNeeded: false }];
  return [{ name, holds: kindOf(shape), isNeeded }];
}

function kindOf(shape: Shape): CellKind {
  if (shape.type === "array") {
    const [first] = shape.prefixItems ?? [shape.items === false ? undefined : shape.items];
    return isNumber(first) ? "numbers" : "texts";
  }
  if (shape.type === "boolean") return "flag";
  return isNumber(shape) ? "number" : "text";
}

function isNumber(shape: Shape | undefined): boolean {
  return shape?.type === "number" || shape?.type === "integer";
}

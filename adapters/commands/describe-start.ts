import type { Company } from "../../src/books/books.ts";

/** What stands on the screen when the house is open. */
export interface StartScreen {
  readonly company: Pick<Company, "name" | "isInvented">;
  /** One line a door, and more where there is more to put right. */
  readonly doors: readonly string[];
  readonly questions: readonly string[];
  readonly warnings: readonly string[];
}

/** Writes the start screen. */
export function describeStart({ company, doors, questions, warnings }: StartScreen): string {
  const indent = (lines: readonly string[]) => lines.map((line) => `  ${line}`);
  return [
    `Oldhand for ${company.name}${company.isInvented ? ", an invented company" : ""}`,
    "",
    ...indent(doors),
    ...(warnings.length > 0 ? ["", ...indent(warnings.map((warning) => `Note: ${warning}`))] : []),
    "",
    "Three questions to try:",
    ...indent(questions),
    "",
    "Ctrl+C stops it.",
    "",
  ].join("\n");
}

/** The lines of a door that is closed: one reason beside its name, several below it. */
export function describeClosed(name: string, because: readonly string[]): readonly string[] {
  const [only, ...more] = because;
  return more.length === 0
    ? [`${name}: closed; ${only ?? ""}`]
    : [`${name}: closed`, ...because.map((one) => `  ${one}`)];
}

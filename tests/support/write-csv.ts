/** Writes entries as a table: groups become dots in the column's name, lists become semicolons in the cell. */
export function writeCsv(entries: unknown): string {
  const rows = (Array.isArray(entries) ? entries : []).map((entry) => flatten("", entry));
  const names = [...new Set(rows.flatMap((row) => [...row.keys()]))];
  const lines = rows.map((row) => names.map((name) => quote(row.get(name) ?? "")).join(","));
  return [names.join(","), ...lines, ""].join("\n");
}

function flatten(name: string, value: unknown): ReadonlyMap<string, string> {
  if (Array.isArray(value)) return new Map([[name, value.map(String).join("; ")]]);
  if (typeof value !== "object" || value === null) return new Map([[name, String(value)]]);
  return new Map(
    Object.entries(value).flatMap(([field, inner]) => [...flatten(name === "" ? field : `${name}.${field}`, inner)]),
  );
}

function quote(cell: string): string {
  return /[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** True for anything whose fields may be looked at. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}

/** The text in this field, or nothing. */
export function readString(value: unknown, field: string): string | undefined {
  const found = isRecord(value) ? value[field] : undefined;
  return typeof found === "string" ? found : undefined;
}

import type { z } from "zod";

export type Stored<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string };

/** Reads stored JSON as what it is said to be, or says where it is not. */
export function parseStored<T>(schema: z.ZodType<T>, json: string): Stored<T> {
  const tree = readJson(json);
  if (!tree.ok) return tree;
  const parsed = schema.safeParse(tree.value);
  if (parsed.success) return { ok: true, value: parsed.data };
  const [issue] = parsed.error.issues;
  return { ok: false, reason: `${issue?.path.map(String).join(".") ?? ""}: ${issue?.message ?? "is not valid"}` };
}

function readJson(json: string): Stored<unknown> {
  try {
    return { ok: true, value: JSON.parse(json) };
  } catch {
    return { ok: false, reason: "is no JSON" };
  }
}

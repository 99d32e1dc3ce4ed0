import type { IncomingHttpHeaders } from "node:http";
import type { SignatureMemory } from "./signature-memory.ts";

/** What the guard makes of a request before Bolt sees it. */
export type Guarded =
  | { readonly kind: "refused"; readonly because: string }
  | { readonly kind: "unsigned" }
  | { readonly kind: "signed"; readonly signature: string };

/** Exactly as Slack writes it. Bolt ignores what follows a second `=`, which would make one signature many. */
const SIGNATURE = /^v0=[0-9a-f]{64}$/;
/** A clock may be this far ahead of ours [s]. */
const MOST_AHEAD_s = 60;

/**
 * Refuses what Bolt lets through: a time in the future, and the same signed request once more. Whether the signature
 * is right stays Bolt's business.
 * @param now_ms time of day [ms]
 */
export function guardRequest(headers: IncomingHttpHeaders, memory: SignatureMemory, now_ms: number): Guarded {
  const signature = headers["x-slack-signature"];
  const time_s = Number(headers["x-slack-request-timestamp"]);
  if (signature === undefined) return { kind: "unsigned" };
  if (typeof signature !== "string" || !SIGNATURE.test(signature)) return refused("malformed signature");
  if (!(time_s <= now_ms / 1000 + MOST_AHEAD_s)) return refused("time in the future");
  return memory.begin(signature) ? { kind: "signed", signature } : refused("replay");
}

function refused(because: string): Guarded {
  return { kind: "refused", because };
}

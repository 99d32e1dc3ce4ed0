import { DatabaseFault } from "./database-fault.ts";
import type { Scope } from "./scope.ts";

/**
 * Keeps a code for this person. A code that somebody else may still use is refused, or it would join the wrong person;
 * one that was used up is free again.
 */
export async function offerLink(scope: Scope, person: string, code: string, expires_ms: number): Promise<void> {
  const held = await scope.linkCodes().select(["person", "used_ms"]).where("code", "=", code).executeTakeFirst();
  if (held === undefined) {
    await scope.addLinkCode({ code, person, expires_ms, used_ms: null }).execute();
    return;
  }
  if (held.person !== person && held.used_ms === null)
    throw new DatabaseFault("link_code_taken", "this code was offered to somebody else");
  await scope.changeLinkCodes({ person, expires_ms, used_ms: null }).where("code", "=", code).execute();
}

/** Uses a code up and says whose it was. */
export async function acceptLink(scope: Scope, code: string, now_ms: number): Promise<string | undefined> {
  const offered = await scope
    .linkCodes()
    .select("person")
    .where("code", "=", code)
    .where("used_ms", "is", null)
    .where("expires_ms", ">", now_ms)
    .executeTakeFirst();
  if (offered !== undefined) await scope.changeLinkCodes({ used_ms: now_ms }).where("code", "=", code).execute();
  return offered?.person;
}

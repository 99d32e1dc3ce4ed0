import type { Context, MiddlewareHandler } from "hono";
import type { KeptFile } from "../../src/ports/files.ts";
import type { Caller } from "../../src/ports/store.ts";
import { callerOf, type WebPerson } from "./web-people.ts";

/** A kept file and what it is by its own bytes. */
export interface HandedFile {
  readonly bytes: Uint8Array;
  readonly type: string;
}
/** Finds a kept file of the workspace that a caller belongs to. */
export type FindFile = (caller: Caller, hash: string) => Promise<HandedFile | undefined>;

/** What a browser may show itself; anything else is only handed over. */
const SHOWN: readonly string[] = ["image/jpeg", "image/png", "image/webp"];
/** A page of its own that may load nothing, run nothing and ask nothing. */
const FILE_POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src 'self'; sandbox";
const KEEP_FOR_s = 86_400;

/** Whether a file is shown as a picture, as far as its card knows. */
export function isPicture({ type }: Pick<KeptFile, "type">): boolean {
  return SHOWN.includes(type);
}

/** Where a person finds a file. */
export function placeOfFile({ user }: WebPerson, { hash, name }: Pick<KeptFile, "hash" | "name">): string {
  return `/files/${hash}?${new URLSearchParams({ user, name })}`;
}

/** Goes around the headers of the page: what somebody sent in gets fewer rights than our own page. */
export const sandboxFiles: MiddlewareHandler = async (c, next) => {
  await next();
  c.header("Content-Security-Policy", FILE_POLICY);
  c.header("Cache-Control", c.res.ok ? `private, max-age=${KEEP_FOR_s}` : "no-store");
};

/** Hands over a file by its hash; the type in the card counts for nothing. */
export async function sendFile(
  c: Context,
  { people, findFile }: { readonly people: readonly WebPerson[]; readonly findFile?: FindFile },
): Promise<Response> {
  const person = people.find(({ user }) => user === c.req.query("user"));
  const file = person && (await findFile?.(callerOf(person), c.req.param("hash") ?? ""));
  if (!file) return c.text("There is no such file for you. Ask for the job again to see what it has.\n", 404);
  const isShown = SHOWN.includes(file.type);
  return c.body(Uint8Array.from(file.bytes).buffer, 200, {
    "Content-Type": isShown || file.type === "application/pdf" ? file.type : "application/octet-stream",
    "Content-Disposition": disposition(isShown ? "inline" : "attachment", c.req.query("name") ?? "file"),
  });
}

const NOT_IN_NAMES = /[\p{Cc}\p{Cf}\p{Surrogate}"\\/:*?<>|]/gu;

/** @source RFC 6266, 4.3 and appendix D (`filename` beside `filename*`); RFC 8187, 3.2 for the second */
function disposition(kind: "inline" | "attachment", told: string): string {
  const name = told.replace(NOT_IN_NAMES, "_").replace(/^\.+/, "_").slice(-120) || "file";
  const plain = name.replace(/[^\x20-\x7e]/g, "_").replace(/%/g, "_");
  const coded = encodeURIComponent(name).replace(
    /['()*]/g,
    (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`,
  );
  return `${kind}; filename="${plain}"; filename*=UTF-8''${coded}`;
}

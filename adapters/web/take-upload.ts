import type { Context } from "hono";
import { readWebUpload } from "../../src/boundary/web-message.ts";
import { DOOR_TEXTS } from "./door-texts.ts";
import type { Upload, UploadShelf } from "./upload-shelf.ts";
import { callerOf, type FindLanguage, type WebPerson } from "./web-people.ts";

export interface UploadParts {
  readonly people: readonly WebPerson[];
  readonly languageOf: FindLanguage;
  /** Where files are put that come for a message; left out where none are taken. */
  readonly uploads?: UploadShelf;
}

/** Takes one photo or paper ahead of its message, so that in bad signal each is sent again by itself. */
export async function takeUpload(c: Context, { people, languageOf, uploads }: UploadParts): Promise<Response> {
  const told = readWebUpload({ id: c.req.param("id"), user: c.req.query("user") });
  const person = people.find(({ user }) => user === told?.user);
  const language = person ? await languageOf(callerOf(person)) : "en";
  const words = DOOR_TEXTS[language].refused;
  const body = c.req.raw.body;
  if (!told || !uploads || !body) return c.text(words.malformed, 400);
  if (!person) return c.text(words.unknownPerson, 400);
  const tooLarge = words.fileTooLarge(inMegabytes(uploads.most_bytes));
  if (Number(c.req.header("content-length") ?? 0) > uploads.most_bytes) return c.text(tooLarge, 413);
  const outcome = await takeWhole(c, uploads, uploadKey(person, told.id), body);
  if (outcome === "too-large") return c.text(tooLarge, 413);
  return outcome === "taken" ? c.body(null, 204) : c.text("It did not come through whole. Send it again.\n", 503);
}

/** A connection that breaks off is nobody's fault and the usual thing in bad signal. */
async function takeWhole(c: Context, uploads: UploadShelf, key: string, body: ReadableStream<Uint8Array>) {
  try {
    return await uploads.take(key, body);
  } catch (error) {
    if (c.req.raw.signal.aborted) return "broken-off";
    throw error;
  }
}

/** The files of a message that are here, and the ids of those that must be sent again. */
export function findUploads(
  uploads: UploadShelf | undefined,
  person: WebPerson,
  files: readonly { readonly id: string; readonly name: string }[],
): { readonly here: readonly (Upload & { readonly name: string })[]; readonly missing: readonly string[] } {
  const found = files.map(({ id, name }) => ({ id, name, upload: uploads?.find(uploadKey(person, id)) }));
  return {
    here: found.flatMap(({ name, upload }) => (upload ? [{ name, size_B: upload.size_B, read: upload.read }] : [])),
    missing: found.flatMap(({ id, upload }) => (upload ? [] : [id])),
  };
}

/** Nobody is handed what somebody else has sent. */
function uploadKey({ user }: WebPerson, id: string): string {
  return JSON.stringify([user, id]);
}

function inMegabytes(bytes: number): number {
  return Math.floor(bytes / 1_000_000);
}

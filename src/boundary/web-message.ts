import { z } from "zod";

/** Longest text of one message [characters]. */
export const MOST_TEXT_CHARACTERS = 4000;
/** Most photos and papers of one message. */
export const MOST_FILES = 10;
const MOST_FIELD_CHARACTERS = 1000;
const MOST_NAME_CHARACTERS = 200;

/** Made by the browser: letters, digits, `-` and `_`, so that it may stand anywhere in a page. */
const BrowserId = z.string().regex(/^[A-Za-z0-9_-]{8,64}$/);
const Name = z.string().max(MOST_NAME_CHARACTERS);

const WebMessageSchema = z.object({
  delivery: BrowserId,
  conversation: BrowserId,
  user: Name,
  text: z.string(),
  aim: z.object({ walk: Name, fact: Name }).optional(),
  form: z.object({ topic: Name, fields: z.record(Name, z.string().max(MOST_FIELD_CHARACTERS)) }).optional(),
  /** What was uploaded for this message before, under ids of the browser's. */
  files: z.array(z.object({ id: BrowserId, name: Name })).optional(),
});

/** One message of the web page as the browser sends it. */
export type WebMessage = z.infer<typeof WebMessageSchema>;
export type ReadWebMessage =
  | { readonly ok: true; readonly message: WebMessage }
  | {
      readonly ok: false;
      readonly problem: "malformed" | "empty" | "too-long" | "too-many-files";
      readonly user?: string;
    };

/** Reads what a browser sent. A message without a form and without files must say something. */
export function readWebMessage(body: unknown): ReadWebMessage {
  const read = WebMessageSchema.safeParse(body);
  if (!read.success) return { ok: false, problem: "malformed" };
  const { text, form, user, files = [] } = read.data;
  if (text.length > MOST_TEXT_CHARACTERS) return { ok: false, problem: "too-long", user };
  if (files.length > MOST_FILES) return { ok: false, problem: "too-many-files", user };
  if (text.trim() === "" && form === undefined && files.length === 0) return { ok: false, problem: "empty", user };
  return { ok: true, message: read.data };
}

const WebUploadSchema = z.object({ id: BrowserId, user: Name });

/** Which file a browser is sending, and who sends it; nothing where that cannot be read. */
export function readWebUpload(told: unknown): z.infer<typeof WebUploadSchema> | undefined {
  return WebUploadSchema.safeParse(told).data;
}

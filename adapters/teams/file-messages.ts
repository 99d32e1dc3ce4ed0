import type { Card, FileBlock } from "../../src/messages/card.ts";
import type { Language } from "../../src/messages/language.ts";
import { FILE_TEXTS } from "./file-texts.ts";
import { ENVELOPE_BYTES, MOST_ACTIVITY_BYTES, MOST_PICTURE_TEXT_CHARACTERS, MOST_TITLE_CHARACTERS } from "./limits.ts";
import { recordAt, textAt } from "./payload.ts";
import { cutText, plainLine } from "./plain-text.ts";
import type { CardMessage, FileMessage } from "./port.ts";
import { frameCard } from "./render-adaptive.ts";

/** @source Microsoft Teams, "Send and receive files through a bot" */
const CONSENT_TYPE = "application/vnd.microsoft.teams.card.file.consent";
const INFO_TYPE = "application/vnd.microsoft.teams.card.file.info";
/** The kinds of picture that a card shows. @source Adaptive Cards, Image: PNG, JPEG and GIF */
const SHOWN_TYPES: ReadonlySet<string> = new Set(["image/png", "image/jpeg"]);
const OWN_KEY = "oldhand";
const ENDINGS: Readonly<Record<string, string>> = {
  "image/jpeg": "jpg",
  "image/png": "png",
  "image/webp": "webp",
  "application/pdf": "pdf",
  "application/json": "json",
  "text/csv": "csv",
};

/** The papers and pictures of a card, each once. */
export function filesOf(card: Card): readonly FileBlock[] {
  const blocks = card.blocks.filter((block) => block.kind === "file");
  return blocks.filter(({ file }, at) => blocks.findIndex((other) => other.file.hash === file.hash) === at);
}

/** In a channel or a group no bot may put files; there the card says how to get them. */
export function noteFiles(card: Card, language: Language): Card {
  if (filesOf(card).length === 0) return card;
  const note = { kind: "text", tone: "quiet", text: FILE_TEXTS[language].askInChat } as const;
  return { ...card, blocks: [...card.blocks, note] };
}

/** A picture inside of a message; nothing when it is none, or larger than a message. */
export function photoMessage(
  { file, text }: FileBlock,
  bytes: Uint8Array,
  language: Language,
): CardMessage | undefined {
  if (!SHOWN_TYPES.has(file.type)) return undefined;
  const url = `data:${file.type};base64,${Buffer.from(bytes).toString("base64")}`;
  const altText = cutText(plainLine(text), MOST_PICTURE_TEXT_CHARACTERS);
  const message = frameCard(
    text,
    [{ type: "Image", url, altText, size: "stretch", msteams: { allowExpand: true } }],
    language,
  );
  const size_B = Buffer.byteLength(JSON.stringify(message)) + ENVELOPE_BYTES;
  return size_B > MOST_ACTIVITY_BYTES ? undefined : message;
}

/** Asks the person whether a file may be put into their own storage: the one way that Teams has for a bot. */
export function consentMessage({ file, text }: FileBlock, language: Language): FileMessage {
  const context = { [OWN_KEY]: { file: file.hash, name: nameOf(file), language } };
  return {
    summary: cutText(plainLine(text), MOST_TITLE_CHARACTERS),
    attachment: {
      contentType: CONSENT_TYPE,
      name: nameOf(file),
      content: {
        description: FILE_TEXTS[language].offer,
        sizeInBytes: file.size_B,
        acceptContext: context,
        declineContext: context,
      },
    },
  };
}

/** Shows the file that now stands in the person's storage. */
export function fileMessage(name: string, upload: Upload, language: Language): FileMessage {
  return {
    summary: FILE_TEXTS[language].given(name),
    attachment: {
      contentType: INFO_TYPE,
      name: upload.name,
      contentUrl: upload.contentUrl,
      content: { uniqueId: upload.uniqueId, fileType: upload.fileType },
    },
  };
}

/** What the person answered: whether the file may come, and where to put it. */
export interface Consent {
  readonly file: string;
  readonly name: string;
  readonly language: Language;
  /** Left out where the person declined. */
  readonly upload?: Upload;
}
export interface Upload {
  readonly uploadUrl: string;
  readonly contentUrl: string;
  readonly name: string;
  readonly uniqueId: string;
  readonly fileType: string;
}

/** Reads the answer to `consentMessage`; nothing when it is not of Oldhand's making. */
export function readConsent(activity: unknown): Consent | undefined {
  if (textAt(activity, "name") !== "fileConsent/invoke") return undefined;
  const value = recordAt(activity, "value");
  const own = recordAt(value, "context", OWN_KEY);
  const [file, name] = [textAt(own, "file"), textAt(own, "name")];
  if (file === undefined || name === undefined) return undefined;
  const consent = { file, name, language: textAt(own, "language") === "es" ? ("es" as const) : ("en" as const) };
  if (textAt(value, "action") !== "accept") return consent;
  const at = (key: string) => textAt(value, "uploadInfo", key);
  const uploadUrl = at("uploadUrl");
  if (uploadUrl === undefined) return undefined;
  return {
    ...consent,
    upload: {
      uploadUrl,
      contentUrl: at("contentUrl") ?? "",
      name: at("name") ?? name,
      uniqueId: at("uniqueId") ?? "",
      fileType: at("fileType") ?? "",
    },
  };
}

/** A name with the ending of what it is: the person's own storage opens it by that. */
function nameOf({ name, type }: FileBlock["file"]): string {
  const ending = ENDINGS[type];
  const line = cutText(plainLine(name), MOST_TITLE_CHARACTERS) || "file";
  return ending === undefined || line.toLowerCase().endsWith(`.${ending}`) || /\.jpeg$/i.test(line)
    ? line
    : `${line}.${ending}`;
}

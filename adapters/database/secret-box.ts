import { createCipheriv, createDecipheriv, createHash, randomBytes } from "node:crypto";

/** Seals short texts so that whoever reads the file alone learns nothing, and a sealed text fits one place only. */
export interface SecretBox {
  /** @param place what the text belongs to; it opens nowhere else */
  seal(text: string, place: readonly string[]): string;
  /** @returns nothing when no key opens it, or when it was sealed for another place */
  open(sealed: string, place: readonly string[]): Opened | undefined;
}
interface Opened {
  readonly text: string;
  /** True: sealed with a key that is only kept to read. */
  readonly isOldKey: boolean;
}

const CIPHER = "aes-256-gcm";
/** 96 bits, as NIST SP 800-38D, section 8.2.1, has it; random, since few texts are ever sealed with one key. */
const NONCE_bytes = 12;
const VERSION = "1";

/** @param keys 32 bytes each; the first one seals, the others only open. None: nothing can be sealed or opened. */
export function createSecretBox(keys: readonly Uint8Array[]): SecretBox {
  const named = keys.map((key) => ({ key, name: nameOf(key) }));
  return {
    seal(text, place) {
      const [first] = named;
      if (first === undefined) throw new Error("there is no key to seal with");
      const nonce = randomBytes(NONCE_bytes);
      const cipher = createCipheriv(CIPHER, first.key, nonce).setAAD(bytesOf(place));
      const sealed = Buffer.concat([cipher.update(text, "utf8"), cipher.final()]);
      return [VERSION, first.name, ...[nonce, cipher.getAuthTag(), sealed].map(toText)].join(".");
    },
    open(sealed, place) {
      const [version, name, nonce = "", tag = "", data = ""] = sealed.split(".");
      const at = named.findIndex((key) => key.name === name);
      const key = named[at];
      if (version !== VERSION || key === undefined) return undefined;
      try {
        const decipher = createDecipheriv(CIPHER, key.key, Buffer.from(nonce, "base64url"), { authTagLength: 16 });
        decipher.setAAD(bytesOf(place)).setAuthTag(Buffer.from(tag, "base64url"));
        const text = Buffer.concat([decipher.update(Buffer.from(data, "base64url")), decipher.final()]).toString(
          "utf8",
        );
        return { text, isOldKey: at > 0 };
      } catch {
        return undefined;
      }
    },
  };
}

/** Tells keys apart and gives nothing of them away. */
function nameOf(key: Uint8Array): string {
  return createHash("sha256").update("oldhand key name").update(key).digest("hex").slice(0, 8);
}

function bytesOf(place: readonly string[]): Buffer {
  return Buffer.from(JSON.stringify(place), "utf8");
}

function toText(bytes: Buffer): string {
  return bytes.toString("base64url");
}

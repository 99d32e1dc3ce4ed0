import type { JobFile } from "../jobs/job.ts";

/** Why a file is not kept; the sentences stand in `src/messages/{en,es}/jobs.ts`. */
export type FileRefusal = "empty" | "too_large" | "heic" | "unknown_type" | "damaged";
/** A file that is kept: the hash of what it holds, and how it is shown. */
export type KeptFile = Omit<JobFile, "by" | "at_ms">;
export type Kept =
  | { readonly ok: true; readonly file: KeptFile }
  | { readonly ok: false; readonly because: FileRefusal };

/** Types of the papers that Oldhand makes. */
export type PaperType = "application/pdf" | "application/json" | "text/csv";

/** Files of jobs. Each stands once in its workspace, under the hash of what it holds. */
export interface FileStore {
  /** When this resolves the file is on the disk. */
  keep(workspace: string, name: string, bytes: Uint8Array): Promise<Kept>;
  /** Keeps a paper that Oldhand made itself, of the type that is told; it is on the disk when this resolves. */
  put(workspace: string, name: string, type: PaperType, bytes: Uint8Array): Promise<KeptFile>;
  /** The bytes of a kept file; nothing where there is none or where it no longer is what was kept. */
  read(workspace: string, hash: string): Promise<Uint8Array | undefined>;
}

/** Largest file that is kept: own limit, enough for a picture of a phone [bytes]. */
export const MOST_FILE_B = 10_000_000;

/** A photo or paper that came with a message. It is fetched only when the desk wants it, after the door has answered. */
export interface SentFile {
  readonly name: string;
  /** As the platform says; what really comes is measured again [bytes]. */
  readonly size_B?: number;
  /**
   * Fetches it; an error means that the platform did not give it, or, with the code `too_large`, that it is larger than
   * `MOST_FILE_B` and was not fetched to its end.
   */
  read(): Promise<Uint8Array>;
}

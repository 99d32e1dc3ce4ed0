import type { Inbound } from "../desk.ts";
import type { FileRefusal, KeptFile } from "../ports/files.ts";
import type { DeskRoom } from "./serve.ts";
import { shortId } from "./short-id.ts";

/** What became of the photos and papers of a message. */
export interface FilesTaken {
  readonly kept: readonly KeptFile[];
  /** "not_given": the platform did not hand it over. "no_room": nothing is kept here. */
  readonly refused: readonly { readonly name: string; readonly because: FileRefusal | "not_given" | "no_room" }[];
}

export const NO_FILES: FilesTaken = { kept: [], refused: [] };

/** Fetches and keeps what came with a message; what is kept is on the disk before anything says so. */
export async function keepFiles(
  room: DeskRoom,
  workspace: string,
  { files = [], caller }: Inbound,
): Promise<FilesTaken> {
  let taken = NO_FILES;
  for (const { name, read } of files) {
    if (room.files === undefined) {
      taken = refuse(taken, name, "no_room");
      continue;
    }
    try {
      const kept = await room.files.keep(workspace, name, await read());
      taken = kept.ok ? { ...taken, kept: [...taken.kept, kept.file] } : refuse(taken, name, kept.because);
    } catch (error) {
      const isTooLarge = error instanceof Error && "code" in error && error.code === "too_large";
      if (!isTooLarge) room.faults.report({ id: shortId(room), doing: "file", door: caller.door, workspace, error });
      taken = refuse(taken, name, isTooLarge ? "too_large" : "not_given");
    }
  }
  return taken;
}

function refuse(taken: FilesTaken, name: string, because: FilesTaken["refused"][number]["because"]): FilesTaken {
  return { ...taken, refused: [...taken.refused, { name, because }] };
}

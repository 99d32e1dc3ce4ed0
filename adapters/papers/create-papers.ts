import type { KeptFile } from "../../src/ports/files.ts";
import type { PaperPort, RecordPaper } from "../../src/ports/papers.ts";

/** What making a paper takes; either may happen in another thread. */
export interface PaperWork {
  /** A photo as JPEG or PNG, small enough for a paper; nothing where it cannot be printed. */
  readonly printPhoto: (bytes: Uint8Array, type: string) => Promise<Uint8Array | undefined>;
  /** Lays the record out. Of `photos` those that are nothing could not be printed, and those left out are gone. */
  readonly draw: (paper: RecordPaper, photos: ReadonlyMap<string, Uint8Array | undefined>) => Promise<Uint8Array>;
}

/** Makes papers. Photos are made ready one after the other, so that never more than one is held at its full size. */
export function createPapers({ printPhoto, draw }: PaperWork): PaperPort {
  return {
    async drawRecord(paper, readPhoto) {
      const photos = new Map<string, Uint8Array | undefined>();
      for (const { hash, type } of filesOf(paper)) {
        const bytes = await readPhoto(hash);
        if (bytes !== undefined) photos.set(hash, await printPhoto(bytes, type));
      }
      return await draw(paper, photos);
    },
  };
}

function filesOf({ blocks }: RecordPaper): readonly KeptFile[] {
  const files = blocks.flatMap((block) => (block.kind === "photos" ? block.photos.map(({ file }) => file) : []));
  return [...new Map(files.map((file) => [file.hash, file])).values()];
}

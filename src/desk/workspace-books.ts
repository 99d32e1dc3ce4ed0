import type { Books } from "../books/books.ts";
import type { CrewEvent } from "../crew/crew-event.ts";
import { projectCrew } from "../crew/project-crew.ts";
import type { WorkspaceStore } from "../ports/store.ts";

/** The books as a workspace has them: the company's own, with what was said since of people, trucks and stock. */
export interface WorkspaceBooks {
  readonly books: Books;
  /** What was said, oldest first. */
  readonly crewEvents: readonly CrewEvent[];
}

/** Remembers what every workspace said, so that each message reads only what was added. */
export interface BookShelf {
  booksOf(workspace: WorkspaceStore): Promise<WorkspaceBooks>;
}

export function shelveBooks(books: Books): BookShelf {
  const kept = new Map<string, WorkspaceBooks>();
  return {
    booksOf: async (workspace) => {
      const known = kept.get(workspace.workspace) ?? { books, crewEvents: [] };
      const added = await workspace.crewHistory(known.crewEvents.at(-1)?.number ?? 0);
      if (added.length === 0) return known;
      const crewEvents = [...known.crewEvents, ...added];
      const now = { books: projectCrew(books, crewEvents), crewEvents };
      // Another message may have read further meanwhile.
      if ((kept.get(workspace.workspace)?.crewEvents.length ?? 0) < crewEvents.length)
        kept.set(workspace.workspace, now);
      return now;
    },
  };
}

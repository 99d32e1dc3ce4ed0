import { describe, expect, test } from "vitest";
import { loadBooks } from "../../adapters/books/load-books.ts";
import type { Asker, Books } from "../../src/books/books.ts";
import type { Answer } from "../../src/declaration/answer.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import { today } from "../../src/topics/today.ts";
import { library } from "../support/ask-library.ts";

const demo = await loadBooks(new URL("../../seeds", import.meta.url).pathname, library.cautions, library.faults);
const NOBODY: Asker = { id: "p-77", name: "Zed", role: "technician" };

function ask(asker: Asker | undefined, day = "2026-11-25", books: Books = demo): Answer {
  const { result } = runTopic(today, {}, { ...books, today: day, ...(asker && { asker }) }, [], () => undefined);
  if (result.kind !== "answer") throw new Error(result.kind);
  return result;
}
function who(id: string): Asker {
  const person = demo.people.find((one) => one.id === id);
  if (person === undefined) throw new Error(`nobody ${id}`);
  return person;
}
const jobsIn = ({ tables = [] }: Answer, id: string, column = 0) =>
  tables.find((table) => table.id === id)?.rows.map((row) => row[column]) ?? [];
const left = ({ tables = [] }: Answer, job: string) => {
  const row = tables.flatMap(({ rows }) => rows).find((cells) => cells.includes(job));
  return JSON.stringify(row);
};

describe("a technician", () => {
  test("sees the own jobs of the day and those that were missed, then the next ones, each with what is left", () => {
    const answer = ask(who("ebbe"));
    expect(answer.headline).toMatchObject({ code: "my_jobs", data: { first: "1009", place: "Ostrowick" } });
    expect(jobsIn(answer, "now")).toEqual(["1009", "1006"]);
    expect(jobsIn(answer, "next", 1)).toEqual(["1003", "1004"]);
    expect(left(answer, "1009")).toContain("left_day_passed");
    expect(left(answer, "1006")).toContain("left_under_way");
    expect(left(answer, "1004")).toContain("left_survey");
    expect(answer.next?.map(({ request }) => request)).toContain("job number=1009");
  });

  test("sees nothing of a colleague's", () => {
    expect(jobsIn(ask(who("wren")), "now")).toEqual([]);
    expect(jobsIn(ask(who("wren")), "next", 1)).toEqual(["1007", "1003"]);
    expect(jobsIn(ask(who("wren"), "2026-11-26"), "now")).toEqual(["1007"]);
  });

  test("is told of the own items, the overdue ones as such", () => {
    const answer = ask(who("marisol"));
    expect(jobsIn(answer, "items")).toEqual(["1002", "1011"]);
    expect(left(answer, "1002")).toContain("overdue_since");
    expect(answer.verdict).toBe("caution");
  });

  test("whom the books do not know is told how to be known, and sees no job", () => {
    const answer = ask(NOBODY);
    expect([answer.headline.code, answer.tables ?? [], answer.results]).toEqual(["not_in_crew", [], []]);
    expect(answer.findings.map(({ code }) => code)).toEqual(["how_to_link", "how_to_join"]);
  });
});

test("a dispatcher sees how ready today and the next working day are, what to plan, and what is overdue", () => {
  const answer = ask(who("lupe"));
  expect(jobsIn(answer, "days")).toEqual(["2026-11-25", "2026-11-26"]);
  expect(jobsIn(answer, "unplanned")).toEqual(["1009", "1005"]);
  expect(jobsIn(answer, "items")).toEqual(["1002"]);
  // On a Friday the next day at work is Monday.
  expect(jobsIn(ask(who("lupe"), "2026-11-27"), "days")).toEqual(["2026-11-27", "2026-11-30"]);
});

test.each(["tobias", "ingrid"])("%s sees the week so far, each figure a button away", (id) => {
  const answer = ask(who(id));
  expect(answer.headline).toMatchObject({ code: "week_so_far", data: { from: "2026-11-23" } });
  const counts = Object.fromEntries(
    answer.results.flatMap((one) => ("quantity" in one ? [[one.id, one.quantity.value]] : [])),
  );
  // Closed since Monday: 1012 and 1013. Called back: 1007.
  expect(counts).toMatchObject({ finished: 2, open_items: 2, overdue: 1, callbacks: 1, jobs_today: 1 });
  expect(answer.next?.map(({ request }) => request)).toContain("digest show=callbacks from=2026-11-23 to=2026-11-25");
});

test("the first screen stays short for everybody", () => {
  for (const id of ["ebbe", "marisol", "wren", "lupe", "tobias", "ingrid"]) {
    const { tables = [], results, next = [] } = ask(who(id));
    const lines = results.length + tables.reduce((sum, { rows }) => sum + rows.length, 0);
    expect(lines, id).toBeLessThanOrEqual(14);
    expect(next.length, id).toBeLessThanOrEqual(10);
  }
});

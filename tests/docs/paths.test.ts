import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

const ROOT = new URL("../..", import.meta.url).pathname;
const FOLDERS = ["src", "adapters", "tests", "seeds"];
/** A path of this project in running text: `src/topics/mix.ts`, `adapters/web/`, `tests/golden/`. */
const PATH = /`((?:src|adapters|tests|seeds|\.ci|\.github)\/[^`\s]*|[\w.-]+\.(?:json|md|ts))`/g;
/** Names that stand for many files, such as `src/topics/<id>.ts` or `{en,es}`. */
const PATTERN = /[<>{}*]/;

describe.each(["README.md", "DEVELOPERS.md"])("%s", (file) => {
  const text = readFileSync(`${ROOT}${file}`, "utf8");
  const named = [...new Set([...text.matchAll(PATH)].map(([, path = ""]) => path))].filter(
    (path) => !PATTERN.test(path),
  );

  test("names at least one path of the project", () => expect(named.length).toBeGreaterThan(0));

  test.each(named)("%s exists", (path) => expect(existsSync(`${ROOT}${path}`)).toBe(true));

  test("links only to files that exist", () => {
    const links = [...text.matchAll(/\]\((?!https?:|#)([^)]+)\)/g)].map(([, path = ""]) => path);
    expect(links.filter((path) => !existsSync(`${ROOT}${path}`))).toEqual([]);
  });
});

test("the map in DEVELOPERS.md names every room of src and adapters", () => {
  const text = readFileSync(`${ROOT}DEVELOPERS.md`, "utf8");
  const rooms = ["src", "adapters"].flatMap((folder) =>
    readdirSync(`${ROOT}${folder}`, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => `${folder}/${entry.name}/`),
  );
  expect(rooms.filter((room) => !text.includes(`\`${room}\``))).toEqual([]);
});

test("the top level holds the two documents, the two settings files, the four folders and configuration", () => {
  const allowed = new Set([
    ...["README.md", "DEVELOPERS.md", "package.json", "package-lock.json", "tsconfig.json"],
    ...["biome.json", "knip.json", "vitest.config.ts"],
    ...FOLDERS,
    ...["node_modules", "data", "coverage"],
  ]);
  const names = readdirSync(ROOT).filter((name) => !name.startsWith("."));
  expect(names.filter((name) => !allowed.has(name))).toEqual([]);
});

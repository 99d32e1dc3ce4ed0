import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join, relative } from "node:path";

const ROOT = new URL("../..", import.meta.url).pathname;
const FIXTURE = join(ROOT, "tests/library/fixture-topic");

/** A copy of the project's sources somewhere else, with the installed packages beside it. */
export async function copySources(folders: readonly string[]): Promise<string> {
  const copy = await mkdtemp(join(tmpdir(), "oldhand-tree-"));
  for (const folder of folders) await cp(join(ROOT, folder), join(copy, folder), { recursive: true });
  await cp(join(ROOT, "package.json"), join(copy, "package.json"));
  await symlink(join(ROOT, "node_modules"), join(copy, "node_modules"));
  return copy;
}

/** Takes every topic and caution with its sentences out of such a copy. */
export async function emptyLibrary(copy: string): Promise<void> {
  const areas = await readdir(join(copy, "src/cautions"), { withFileTypes: true });
  const folders = [
    "topics",
    ...areas.filter((area) => area.isDirectory()).map(({ name }) => `cautions/${name}`),
    ...["en", "es"].flatMap((language) => [`messages/${language}/topics`, `messages/${language}/cautions`]),
  ];
  await Promise.all(folders.map((folder) => rm(join(copy, "src", folder), { recursive: true, force: true })));
}

/** Adds the files of a topic to such a copy, and says which: its declaration and its sentences in two languages. */
export async function addFixtureTopic(copy: string): Promise<readonly string[]> {
  const names = await readdir(FIXTURE, { recursive: true });
  const added = names.filter((name) => name.endsWith(".ts")).map((name) => join("src", name));
  for (const name of added) {
    const text = await readFile(join(FIXTURE, relative("src", name)), "utf8");
    const toSources = relative(dirname(name), "src");
    await mkdir(dirname(join(copy, name)), { recursive: true });
    await writeFile(join(copy, name), text.replaceAll(/"(\.\.\/)+src\//g, `"${toSources}/`));
  }
  return added.toSorted();
}

import { readdirSync } from "node:fs";
import ts from "typescript";
import { expect, test } from "vitest";

const FOLDER = new URL("../../adapters/web/static/", import.meta.url).pathname;

/** The page's scripts run as they are, so their types stand in comments; this is the compiler reading them. */
test("the scripts of the page have no type errors", () => {
  const files = readdirSync(FOLDER).filter((name) => name.endsWith(".js"));
  expect(files).toContain("app.js");
  const program = ts.createProgram(
    files.map((name) => FOLDER + name),
    {
      allowJs: true,
      checkJs: true,
      noEmit: true,
      strict: true,
      noUncheckedIndexedAccess: true,
      noUnusedLocals: true,
      target: ts.ScriptTarget.ES2023,
      module: ts.ModuleKind.ES2022,
      moduleResolution: ts.ModuleResolutionKind.Bundler,
      lib: ["lib.es2023.d.ts", "lib.dom.d.ts", "lib.dom.iterable.d.ts"],
      types: [],
    },
  );
  const errors = ts.getPreEmitDiagnostics(program).map((one) => {
    const text = ts.flattenDiagnosticMessageText(one.messageText, "\n");
    const line = one.file && one.start !== undefined ? one.file.getLineAndCharacterOfPosition(one.start).line + 1 : 0;
    return `${one.file?.fileName.replace(FOLDER, "") ?? ""}:${line} ${text}`;
  });
  expect(errors).toEqual([]);
});

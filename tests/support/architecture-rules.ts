import { dirname, join, normalize } from "node:path";
import ts from "typescript";

/** One broken rule: where, and what the rule says. */
export interface Violation {
  readonly file: string;
  readonly line: number;
  readonly rule: string;
}
export interface SourceText {
  readonly path: string;
  readonly text: string;
}

/** Folders of `src` that hold data and pure functions only. */
const PURE_FOLDERS = [
  "units",
  "physics",
  "household",
  "equipment",
  "declaration",
  "books",
  "topics",
  "cautions",
  "faults",
  "crew",
  "jobs",
  "conversation",
  "messages",
];
/** Folders in which one file is one concept that stands alone; machinery beside them is named here. */
const SIBLINGS_APART: readonly { readonly folder: RegExp; readonly machinery: RegExp }[] = [
  { folder: /^src\/topics\/([a-z-]+)\.ts$/, machinery: /^$/ },
  { folder: /^src\/cautions\/[a-z-]+\/([a-z-]+)\.ts$/, machinery: /^$/ },
  { folder: /^src\/jobs\/kit-rules\/([a-z-]+)\.ts$/, machinery: /^$/ },
  { folder: /^src\/jobs\/startup-steps\/([a-z-]+)\.ts$/, machinery: /^$/ },
  { folder: /^src\/faults\/causes\/([a-z-]+)\.ts$/, machinery: /^$/ },
];
/** Packages that only one room may use. */
const PACKAGE_ROOMS: readonly { readonly packages: RegExp; readonly room: RegExp }[] = [
  { packages: /^zod(\/|$)/, room: /^src\/boundary\// },
  { packages: /^@slack\//, room: /^adapters\/slack\// },
  // The bot library is not developed any more: what knows it stands in one folder, so that a successor can take its place.
  { packages: /^(botbuilder|botframework-)/, room: /^adapters\/teams\/botbuilder\// },
  { packages: /^(express$|@microsoft\/)/, room: /^adapters\/teams\// },
  { packages: /^(hono|@hono)(\/|$)/, room: /^adapters\/web\// },
  { packages: /^(kysely|better-sqlite3)(\/|$)/, room: /^adapters\/database\// },
  { packages: /^piscina$/, room: /^adapters\/workers\// },
  { packages: /^(@observablehq\/plot|linkedom|@resvg\/resvg-js)$/, room: /^adapters\/pictures\// },
  { packages: /^pdfkit(\/|$)/, room: /^adapters\/papers\// },
  { packages: /^csv-parse(\/|$)/, room: /^adapters\/books\// },
  { packages: /^yaml(\/|$)/, room: /^adapters\/(books|library)\// },
  { packages: /^highs$/, room: /^adapters\/solver\// },
  { packages: /^dotenv(\/|$)/, room: /^adapters\/main\.ts$/ },
];
const IMPURE_NAMES = new Set([
  "process",
  "console",
  "globalThis",
  "performance",
  "fetch",
  "setTimeout",
  "setInterval",
  "require",
]);
const CASTS_ALLOWED = /^src\/(boundary\/|declaration\/run-topic\.ts$)/;
/** Tables of data may be long: catalogues of sentences, and files named after a table. */
const DATA_TABLE = /^src\/messages\/(en|es)\/|-table\.ts$/;
const MOST_FILE_LINES = 300;
const MOST_FUNCTION_LINES = 60;

/** Checks the layers, purity, size and typing rules of the house on these files. */
export function findViolations(files: readonly SourceText[]): readonly Violation[] {
  return files.flatMap((file) => {
    const tree = ts.createSourceFile(file.path, file.text, ts.ScriptTarget.ES2023, true);
    return [...checkSize(file, tree), ...checkImports(file, tree), ...checkNodes(file, tree)];
  });
}

function checkSize(file: SourceText, tree: ts.SourceFile): Violation[] {
  const lines = codeLines(file.text);
  const tooLong = lines > MOST_FILE_LINES && !DATA_TABLE.test(file.path);
  const found: Violation[] = tooLong
    ? [{ file: file.path, line: 1, rule: `file over ${MOST_FILE_LINES} lines of code` }]
    : [];
  visit(tree, (node) => {
    if (!ts.isFunctionLike(node) || !("body" in node) || node.body === undefined) return;
    const length = codeLines(node.getText(tree));
    if (length > MOST_FUNCTION_LINES && !DATA_TABLE.test(file.path))
      found.push(violation(file, tree, node, `function over ${MOST_FUNCTION_LINES} lines`));
  });
  return found;
}

function codeLines(text: string): number {
  const withoutComments = text.replace(/\/\*[\s\S]*?\*\//g, (comment) => comment.replace(/[^\n]/g, ""));
  return withoutComments.split("\n").filter((line) => line.trim() !== "" && !line.trim().startsWith("//")).length;
}

function checkImports(file: SourceText, tree: ts.SourceFile): Violation[] {
  const found: Violation[] = [];
  visit(tree, (node) => {
    const target = importTarget(node);
    if (target === undefined) return;
    for (const rule of importRulesBroken(file.path, target)) found.push(violation(file, tree, node, rule));
  });
  return found;
}

function importTarget(node: ts.Node): string | undefined {
  const isStatic = ts.isImportDeclaration(node) || ts.isExportDeclaration(node);
  if (isStatic && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier)) return node.moduleSpecifier.text;
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
    const [argument] = node.arguments;
    return argument && ts.isStringLiteral(argument) ? argument.text : "(computed)";
  }
  return undefined;
}

function importRulesBroken(from: string, target: string): string[] {
  const broken: string[] = [];
  const isRelative = target.startsWith(".");
  const to = isRelative ? normalize(join(dirname(from), target)) : target;
  if (from.startsWith("src/") && isRelative && !to.startsWith("src/")) broken.push("src imports only src");
  if (isPure(from) && !isRelative) broken.push("engine folders import no packages");
  if (!isRelative) {
    const bare = target.replace(/^node:/, "");
    for (const { packages, room } of PACKAGE_ROOMS)
      if (packages.test(bare) && !room.test(from)) broken.push(`${bare} belongs to ${room.source}`);
  }
  const [, fromRoom] = /^adapters\/([a-z-]+)\//.exec(from) ?? [];
  const [, toRoom] = /^adapters\/([a-z-]+)\//.exec(to) ?? [];
  if (fromRoom && isRelative && to.startsWith("adapters/") && toRoom !== fromRoom)
    broken.push("adapters never import each other");
  for (const { folder, machinery } of SIBLINGS_APART)
    if (folder.test(from) && folder.test(to) && !machinery.test(to)) broken.push("siblings stand apart");
  return broken;
}

function isPure(path: string): boolean {
  return PURE_FOLDERS.some((folder) => path.startsWith(`src/${folder}/`));
}

function checkNodes(file: SourceText, tree: ts.SourceFile): Violation[] {
  const found: Violation[] = [];
  const say = (node: ts.Node, rule: string) => found.push(violation(file, tree, node, rule));
  visit(tree, (node) => {
    if (ts.isExportAssignment(node) && !file.path.endsWith(".config.ts")) say(node, "no default exports");
    if (ts.isEnumDeclaration(node)) say(node, "no enums");
    if (ts.isNonNullExpression(node)) say(node, "no non-null assertions");
    if (node.kind === ts.SyntaxKind.AnyKeyword) say(node, "no any");
    if (
      file.path.startsWith("src/") &&
      !CASTS_ALLOWED.test(file.path) &&
      ts.isAsExpression(node) &&
      node.type.getText(tree) !== "const"
    )
      say(node, "no casts outside the boundary");
    if (readsEnvironment(node) && file.path !== "adapters/main.ts") say(node, "only main reads the environment");
    if (isPure(file.path)) for (const rule of impurities(node)) say(node, rule);
  });
  return found;
}

function readsEnvironment(node: ts.Node): boolean {
  return ts.isPropertyAccessExpression(node) && node.name.text === "env" && node.expression.getText() === "process";
}

function impurities(node: ts.Node): string[] {
  const broken: string[] = [];
  if (ts.isAwaitExpression(node) || node.kind === ts.SyntaxKind.AsyncKeyword)
    broken.push("engine folders are synchronous");
  if (ts.isNewExpression(node) && node.expression.getText() === "Date" && (node.arguments?.length ?? 0) === 0)
    broken.push("engine folders have no clock");
  if (ts.isPropertyAccessExpression(node)) {
    const text = node.getText();
    if (text === "Date.now") broken.push("engine folders have no clock");
    if (text === "Math.random" || text === "crypto.randomUUID") broken.push("engine folders have no random");
  }
  if (ts.isIdentifier(node) && IMPURE_NAMES.has(node.text) && isFreeName(node))
    broken.push(`engine folders do not use ${node.text}`);
  return broken;
}

/** True when the identifier is used as a value of the outer world, not as a property, parameter or declared name. */
function isFreeName(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  return ts.isCallExpression(parent) && parent.expression === node;
}

function visit(node: ts.Node, look: (node: ts.Node) => void): void {
  look(node);
  ts.forEachChild(node, (child) => visit(child, look));
}

function violation(file: SourceText, tree: ts.SourceFile, node: ts.Node, rule: string): Violation {
  return { file: file.path, line: tree.getLineAndCharacterOfPosition(node.getStart(tree)).line + 1, rule };
}

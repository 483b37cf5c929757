import { parseSync } from "vite";
import { importsOf, isNode, type SyntaxNode, visitNodes } from "./imports.js";
import type { SourceFile } from "./source-files.js";

/** Names that bring in the page, the machine, the clock or chance. A file's own parameter of that name is fine. */
const NOT_PURE = new Set([
  ...["document", "window", "navigator", "self", "globalThis", "location", "HTMLElement", "customElements"],
  ...["localStorage", "sessionStorage", "indexedDB", "fetch", "XMLHttpRequest", "WebSocket", "Worker"],
  ...["process", "Buffer", "require", "console", "Date", "performance", "crypto"],
  ...["setTimeout", "setInterval", "setImmediate", "queueMicrotask", "requestAnimationFrame", "eval"],
]);

/** Finds impure names and imports from node, in files that must not have any. */
export function checkPure(files: readonly SourceFile[]): string[] {
  return files.flatMap((file) => [
    ...importsOf(file)
      .filter((specifier) => specifier.startsWith("node:"))
      .map((specifier) => `${file.path}: imports ${specifier}`),
    ...impureNames(file).map((name) => `${file.path}: uses ${name}`),
  ]);
}

function impureNames(file: SourceFile): string[] {
  const { program } = parseSync(file.path, file.text, { sourceType: "module" });
  const declared = new Set<string>();
  const used = new Set<string>();
  visitNodes(program, (node, parent, field) => {
    const name = node["name"];
    if (node.type === "MemberExpression" && isMathRandom(node)) used.add("Math.random");
    if (node.type === "VariableDeclarator" && isNamed(node["init"], "Math")) used.add("Math as a whole");
    if (node.type === "ObjectPattern") for (const each of namesOfPattern(node)) declared.add(each);
    if (node.type !== "Identifier" || typeof name !== "string" || !NOT_PURE.has(name)) return;
    if (isDeclaration(parent, field)) declared.add(name);
    else if (!isOnlyALabel(parent, field)) used.add(name);
  });
  return [...used].filter((name) => !declared.has(name)).sort();
}

function isMathRandom(node: SyntaxNode): boolean {
  const property = node["property"];
  return (
    isNamed(node["object"], "Math") &&
    isNode(property) &&
    (property["name"] ?? property["value"]) === "random"
  );
}

function isNamed(value: unknown, name: string): boolean {
  return isNode(value) && value.type === "Identifier" && value["name"] === name;
}

/** Where an identifier brings a name into being: parameter, variable, function, class, import. */
function isDeclaration(parent: SyntaxNode | undefined, field: string): boolean {
  if (field === "params" || field === "id" || field === "local" || field === "param") return true;
  if (parent?.type === "AssignmentPattern") return field === "left";
  return parent?.type === "ArrayPattern" || parent?.type === "RestElement";
}

/** Names that a pattern like `{ document, text: other }` brings into being. */
function namesOfPattern(pattern: SyntaxNode): string[] {
  const properties = pattern["properties"] as readonly SyntaxNode[];
  return properties.flatMap(({ value }) =>
    isNode(value) && typeof value["name"] === "string" ? [value["name"]] : [],
  );
}

/** Where an identifier is a name inside something else: `plan.document`, `{ document: 1 }`, a field of a type. */
function isOnlyALabel(parent: SyntaxNode | undefined, field: string): boolean {
  if (parent === undefined || parent["computed"] === true) return false;
  return (
    field === "key" ||
    field === "property" ||
    field === "imported" ||
    field === "exported" ||
    field === "label"
  );
}

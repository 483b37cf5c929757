import { posix } from "node:path";
import { parseSync } from "vite";
import type { SourceFile } from "./source-files.js";

/** What a file asks for, as written: by import, export from, import(), a type's import(), or new URL(…, import.meta.url). */
export function importsOf(file: SourceFile): string[] {
  const { program, errors } = parseSync(file.path, file.text, { sourceType: "module" });
  if (errors.length > 0) throw new Error(`${file.path}: ${errors[0]?.message}`);
  const found: string[] = [];
  visitNodes(program, (node) => {
    const source = node["source"];
    if (isNode(source) && typeof source["value"] === "string") found.push(source["value"]);
    const besideIt = addressBesideFile(node);
    if (besideIt !== undefined) found.push(besideIt);
  });
  return found;
}

/** Path of the file meant by a relative import, ".js" read as ".ts"; undefined for a package. */
export function resolveImport(from: string, specifier: string): string | undefined {
  if (!specifier.startsWith(".")) return undefined;
  return posix.join(posix.dirname(from), specifier).replace(/\.js$/, ".ts");
}

/** A node of a syntax tree, read loosely: only the fields a check names matter to it. */
export type SyntaxNode = { readonly type: string } & { readonly [field: string]: unknown };

export function isNode(value: unknown): value is SyntaxNode {
  return (
    typeof value === "object" && value !== null && typeof (value as { type?: unknown }).type === "string"
  );
}

/** Calls `see` for every node with its parent and the field it stands in, outer nodes first. */
export function visitNodes(
  node: unknown,
  see: (node: SyntaxNode, parent: SyntaxNode | undefined, field: string) => void,
  parent?: SyntaxNode,
  field = "",
): void {
  if (Array.isArray(node)) {
    for (const each of node) visitNodes(each, see, parent, field);
  } else if (isNode(node)) {
    see(node, parent, field);
    for (const [name, child] of Object.entries(node)) {
      if (typeof child === "object" && child !== null) visitNodes(child, see, node, name);
    }
  }
}

/** The first argument of `new URL("./worker.ts", import.meta.url)`, which the bundler follows like an import. */
function addressBesideFile(node: SyntaxNode): string | undefined {
  if (node.type !== "NewExpression" || !Array.isArray(node["arguments"])) return undefined;
  const callee = node["callee"];
  const [address, base] = node["arguments"] as unknown[];
  if (!isNode(callee) || callee["name"] !== "URL" || !isNode(address) || !isNode(base)) return undefined;
  const isBesideFile =
    base.type === "MemberExpression" && isNode(base["object"]) && base["object"].type === "MetaProperty";
  return isBesideFile && typeof address["value"] === "string" ? address["value"] : undefined;
}

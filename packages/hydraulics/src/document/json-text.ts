import { createScanner, type Node, type ParseError, parseTree, printParseErrorCode } from "jsonc-parser";
import { LIMITS } from "./limits.js";
import { type PathStep, type Problem, writePath } from "./problem.js";

/** A document as text, read: its value, and where in the text each part stands. */
export interface ReadText {
  readonly value: unknown;
  /** Line and column (from 1) of the value at a path, or of its nearest parent. */
  readonly placeOf: (path: readonly PathStep[]) => { readonly line: number; readonly column: number };
}

/**
 * Reads JSON (comments and trailing commas are let pass). Refuses what is too long or too deep before parsing it,
 * and keys given twice. Never throws.
 */
export function readJsonText(
  text: string,
): { ok: true; read: ReadText } | { ok: false; problems: Problem[] } {
  const early = refuseOutright(text);
  if (early !== undefined) return { ok: false, problems: [early] };
  const errors: ParseError[] = [];
  const root = parseTree(text, errors, { allowTrailingComma: true, allowEmptyContent: false });
  const lines = lineStarts(text);
  if (root === undefined || errors.length > 0) {
    // Of a text that is no JSON at all, every word is wrong: the first says so.
    const told = /^\s*["[{/]/.test(text) ? errors.slice(0, 20) : errors.slice(0, 1);
    return { ok: false, problems: told.map((error) => syntaxProblem(error, text, lines)) };
  }
  const problems: Problem[] = [];
  const value = plainValue(root, [], problems, lines);
  if (problems.length > 0) return { ok: false, problems };
  const nodeAt = findingNodes(root);
  return { ok: true, read: { value, placeOf: (path) => placeAt(lines, nodeAt(path).offset) } };
}

function refuseOutright(text: string): Problem | undefined {
  if (text.length > LIMITS.textLength) {
    return {
      code: "tooLarge",
      path: "the plan",
      found: `${text.length} characters`,
      allowed: `A plan has at most ${LIMITS.textLength} characters.`,
      mend: "Write regular lines as one entry with a count.",
    };
  }
  if (deepest(text) <= LIMITS.depth) return undefined;
  return {
    code: "tooDeep",
    path: "the plan",
    found: `brackets nested more than ${LIMITS.depth} deep`,
    allowed: `A plan nests at most ${LIMITS.depth} deep.`,
    mend: "Check that this is a plan file.",
  };
}

/** Nesting depth by tokens alone, so that a hostile text cannot exhaust the stack; stops once past the limit. */
function deepest(text: string): number {
  const scanner = createScanner(text, true);
  let depth = 0;
  let most = 0;
  for (;;) {
    scanner.scan();
    const first = text[scanner.getTokenOffset()];
    if (first === undefined || most > LIMITS.depth) return most;
    if (first === "{" || first === "[") depth += 1;
    else if (first === "}" || first === "]") depth -= 1;
    most = Math.max(most, depth);
  }
}

function syntaxProblem(error: ParseError, text: string, lines: readonly number[]): Problem {
  const near = text
    .slice(error.offset, error.offset + Math.max(error.length, 12))
    .replace(/\s+/g, " ")
    .trim();
  return {
    code: "notJson",
    path: "the plan",
    found: near === "" ? "the end of the text" : JSON.stringify(near.slice(0, 40)),
    allowed: `A plan is JSON text (${spaced(printParseErrorCode(error.error))}).`,
    mend: "Look for a missing comma, quote or bracket just before it.",
    ...placeAt(lines, error.offset),
  };
}

const spaced = (code: string) => code.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();

/** The plain value of a parsed tree; keys given twice, and the one key that could reach a prototype, are problems. */
function plainValue(
  node: Node,
  path: readonly PathStep[],
  problems: Problem[],
  lines: readonly number[],
): unknown {
  if (node.type === "array")
    return (node.children ?? []).map((child, i) => plainValue(child, [...path, i], problems, lines));
  if (node.type !== "object") return node.value;
  const result: Record<string, unknown> = {};
  const seen = new Set<string>();
  for (const property of node.children ?? []) {
    const [keyNode, valueNode] = property.children ?? [];
    if (keyNode === undefined || valueNode === undefined) continue;
    const key = String(keyNode.value);
    const here = [...path, key];
    const fault = seen.has(key) ? "keyTwice" : key === "__proto__" ? "unknownKey" : undefined;
    if (fault !== undefined) problems.push(keyProblem(fault, key, here, placeAt(lines, keyNode.offset)));
    else result[key] = plainValue(valueNode, here, problems, lines);
    seen.add(key);
  }
  return result;
}

function keyProblem(
  code: "keyTwice" | "unknownKey",
  key: string,
  path: readonly PathStep[],
  place: { line: number; column: number },
): Problem {
  const shown = JSON.stringify(key.slice(0, 40));
  return code === "keyTwice"
    ? {
        code,
        path: writePath(path),
        found: `${shown} a second time`,
        allowed: "Each key stands once.",
        mend: "Remove one of the two.",
        ...place,
      }
    : {
        code,
        path: writePath(path),
        found: `the key ${shown}`,
        allowed: "No plan has such a key.",
        mend: "Remove it.",
        ...place,
      };
}

/** What a path leads to in a tree, or its nearest parent. Keys are listed once an object, lest many faults cost their square. */
function findingNodes(root: Node): (path: readonly PathStep[]) => Node {
  const listed = new Map<Node, ReadonlyMap<unknown, Node | undefined>>();
  const keysOf = (node: Node) => {
    const known = listed.get(node);
    if (known !== undefined) return known;
    const keys = new Map(
      node.children?.map((property) => [property.children?.[0]?.value as unknown, property.children?.[1]]),
    );
    listed.set(node, keys);
    return keys;
  };
  return (path) => {
    let node = root;
    for (const step of path) {
      const next = typeof step === "number" ? node.children?.[step] : keysOf(node).get(step);
      if (next === undefined) return node;
      node = next;
    }
    return node;
  };
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (let i = text.indexOf("\n"); i >= 0; i = text.indexOf("\n", i + 1)) starts.push(i + 1);
  return starts;
}

function placeAt(lines: readonly number[], offset: number): { line: number; column: number } {
  let low = 0;
  let high = lines.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (lines[middle] <= offset) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, column: offset - lines[low] + 1 };
}

import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

export const TOP = fileURLToPath(new URL("../..", import.meta.url));

const NOT_OURS = new Set(["node_modules", "dist", "coverage"]);

/** Every .md file of the checkout, as paths from its top. */
export function listDocuments(folder = ""): string[] {
  return readdirSync(`${TOP}${folder}`, { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}${entry.name}`;
    if (entry.isDirectory())
      return NOT_OURS.has(entry.name) || entry.name === ".git" ? [] : listDocuments(`${path}/`);
    return entry.name.endsWith(".md") ? [path] : [];
  });
}

export const readDocument = (path: string): string => readFileSync(`${TOP}${path}`, "utf8");

/** A fenced block: its language, its lines as one text, and the line it begins on, counted from 1. */
export interface Fence {
  readonly language: string;
  readonly text: string;
  readonly line: number;
  /** The comment `<!-- made: name -->` on the line before it, if there is one. */
  readonly made: string | undefined;
  /** Where its text stands in the document. */
  readonly start: number;
  readonly end: number;
  /** Whether nothing but blank lines stands between it and the fence before. */
  readonly followsFence: boolean;
}

/** Every fenced block of a document, in order. */
export function findFences(document: string): Fence[] {
  let after = 0;
  return [...document.matchAll(/^```(\w*)\n((?:(?!```).*\n)*)```$/gm)].map((found) => {
    const before = document.slice(after, found.index);
    const start = found.index + 4 + found[1]!.length;
    const text = found[2]!.replace(/\n$/, "");
    const isFirst = after === 0;
    after = found.index + found[0].length;
    return {
      language: found[1]!,
      text,
      line: document.slice(0, found.index).split("\n").length,
      made: /<!-- made: ([\w-]+) -->\n+$/.exec(before)?.[1],
      start,
      end: start + text.length,
      followsFence: !isFirst && before.trim() === "",
    };
  });
}

/** A document without its fenced blocks and code spans, for what is said in prose. */
export const proseOf = (document: string): string =>
  document.replace(/^```[\s\S]*?^```$/gm, "").replace(/`[^`\n]*`/g, "");

/** Every key of a JSON document, at any depth. */
export function keysIn(value: unknown): string[] {
  if (typeof value !== "object" || value === null) return [];
  if (Array.isArray(value)) return value.flatMap(keysIn);
  return Object.entries(value).flatMap(([key, inside]) => [key, ...keysIn(inside)]);
}

/** What stands in code marks in a document, or in its part under one heading. */
export function namesInCode(document: string, heading?: string): Set<string | undefined> {
  const part =
    heading === undefined
      ? document
      : new RegExp(`^## ${heading}\n([\\s\\S]*?)(?=^## |$(?![\\s\\S]))`, "m").exec(document)?.[1];
  if (part === undefined) throw new Error(`no part on ${heading}`);
  return new Set([...part.matchAll(/`(\w+)`/g)].map((match) => match[1]));
}

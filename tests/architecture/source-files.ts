import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** A file of the project: its path from the top of the checkout, with "/" between names, and what it says. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

const top = fileURLToPath(new URL("../..", import.meta.url));
const NOT_OURS = new Set(["node_modules", "dist", "coverage", ".git", ".cache", "__pycache__"]);

/** Names at the top of the checkout, without what installing and building leave there. */
export function topLevelNames(): string[] {
  return readdirSync(top).filter((name) => !NOT_OURS.has(name) && !name.endsWith(".tsbuildinfo"));
}

/** Every file below a folder whose path passes `wanted`; the empty folder name means the whole checkout. */
export function readTree(folder: string, wanted: (path: string) => boolean = () => true): SourceFile[] {
  return pathsBelow(folder)
    .filter(wanted)
    .map((path) => ({ path, text: readFileSync(join(top, path), "utf8") }));
}

export const isTypeScript = (path: string): boolean => path.endsWith(".ts");

function pathsBelow(folder: string): string[] {
  return readdirSync(join(top, folder), { withFileTypes: true }).flatMap((entry) => {
    if (NOT_OURS.has(entry.name)) return [];
    const path = folder === "" ? entry.name : `${folder}/${entry.name}`;
    return entry.isDirectory() ? pathsBelow(path) : [path];
  });
}

/** A made-up tree, for showing that a check can fail. */
export function madeUpTree(files: Record<string, string>): SourceFile[] {
  return Object.entries(files).map(([path, text]) => ({ path, text }));
}

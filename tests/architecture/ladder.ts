import { importsOf, resolveImport } from "./imports.js";
import type { SourceFile } from "./source-files.js";

/** One package: its folders from first to last, and the files that stand beside them. */
export interface Ladder {
  readonly root: string;
  /** A folder may import itself and those before it. */
  readonly folders: readonly string[];
  /** Files directly in the root, each with the folders it may not import. */
  readonly entries: Readonly<Record<string, readonly string[]>>;
  /** Files directly in the root that a folder may import, by folder. */
  readonly mayUseEntry: Readonly<Record<string, readonly string[]>>;
}

export const HYDRAULICS: Ladder = {
  root: "packages/hydraulics/src",
  folders: [
    "units",
    "numerics",
    "physics",
    "birds",
    "tables",
    "document",
    "model",
    "solve",
    "simulate",
    "judge",
    "search",
    "report",
    "command",
  ],
  entries: { "index.ts": ["command"] },
  mayUseEntry: { command: ["index.ts"] },
};

export const UI: Ladder = {
  root: "packages/ui/src",
  folders: [
    "kernels",
    "styles",
    "store",
    "storage",
    "worker",
    "controllers",
    "fields",
    "verdicts",
    "profile",
    "above",
    "parts",
    "tables",
    "sheet",
    "room",
    "birds",
    "day",
    "time",
    "rain",
    "cure",
    "build",
    "weather",
    "year",
    "yard",
    "mishaps",
    "trouble",
    "measure",
    "line",
    "app",
  ],
  entries: {
    "index.ts": [],
    "define.ts": [],
    "define-rest.ts": ["line", "app"],
    "define-rooms.ts": ["line", "app"],
    "standalone.ts": [],
  },
  mayUseEntry: { line: ["define-rest.ts"], app: ["define.ts"] },
};

/** Finds files outside the ladder and imports that climb it the wrong way or leave the package by a path. */
export function checkLadder(files: readonly SourceFile[], ladder: Ladder): string[] {
  return files.flatMap((file) => [...checkPlace(file.path, ladder), ...checkImports(file, ladder)]);
}

function checkPlace(path: string, ladder: Ladder): string[] {
  const place = placeOf(path, ladder);
  if (place === undefined) return [`${path}: lies outside ${ladder.root}`];
  if (place.folder === undefined) {
    return place.name in ladder.entries ? [] : [`${path}: belongs into one of the folders`];
  }
  return ladder.folders.includes(place.folder) ? [] : [`${path}: ${place.folder}/ is not in the ladder`];
}

function checkImports(file: SourceFile, ladder: Ladder): string[] {
  const from = placeOf(file.path, ladder);
  if (from === undefined) return [];
  return importsOf(file).flatMap((specifier) => {
    const target = resolveImport(file.path, specifier);
    if (target === undefined || isData(target)) return [];
    const to = placeOf(target, ladder);
    if (to === undefined) return [`${file.path}: imports ${specifier}, which leaves the package by a path`];
    return mayImport(from, to, ladder) ? [] : [`${file.path}: imports ${specifier}, against the ladder`];
  });
}

/** Example plans and figures lie where readers look for them; the ladder is about code. */
function isData(path: string): boolean {
  return /\.(json|csv)(\?(plan|raw|url))?$/.test(path);
}

function mayImport(from: Place, to: Place, ladder: Ladder): boolean {
  if (from.folder === undefined) {
    return to.folder === undefined || !ladder.entries[from.name]?.includes(to.folder);
  }
  if (!ladder.folders.includes(from.folder)) return true; // told once, by its place
  if (to.folder === undefined) return ladder.mayUseEntry[from.folder]?.includes(to.name) ?? false;
  if (!ladder.folders.includes(to.folder)) return true; // told at that file
  return ladder.folders.indexOf(to.folder) <= ladder.folders.indexOf(from.folder);
}

interface Place {
  /** First folder below the root; undefined for a file directly in the root. */
  readonly folder: string | undefined;
  readonly name: string;
}

function placeOf(path: string, ladder: Ladder): Place | undefined {
  if (!path.startsWith(`${ladder.root}/`)) return undefined;
  const parts = path.slice(ladder.root.length + 1).split("/");
  return { folder: parts.length > 1 ? parts[0] : undefined, name: parts.at(-1) ?? "" };
}

/** Finds imports between the packages other than from the page's package to the public entry of the other. */
export function checkPackageBoundary(files: readonly SourceFile[]): string[] {
  return files.flatMap((file) =>
    importsOf(file)
      .filter((specifier) => specifier.startsWith("@headfall/") && !isAllowedAcross(file.path, specifier))
      .map(
        (specifier) =>
          `${file.path}: imports ${specifier}; only ui may import, and only @headfall/hydraulics`,
      ),
  );
}

function isAllowedAcross(path: string, specifier: string): boolean {
  return path.startsWith(`${UI.root}/`) && specifier === "@headfall/hydraulics";
}

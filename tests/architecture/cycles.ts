import { importsOf, resolveImport } from "./imports.js";
import type { SourceFile } from "./source-files.js";

/** Finds files that import one another in a circle, types included; each circle is told once, first name first. */
export function checkCycles(files: readonly SourceFile[]): string[] {
  const targets = new Map(
    files.map((file) => [
      file.path,
      importsOf(file).flatMap((specifier) => resolveImport(file.path, specifier) ?? []),
    ]),
  );
  const finished = new Set<string>();
  const circles = new Set<string>();
  const walk = (path: string, trail: readonly string[]): void => {
    const start = trail.indexOf(path);
    if (start >= 0) {
      circles.add(writeCircle(trail.slice(start)));
    } else if (!finished.has(path)) {
      for (const target of targets.get(path) ?? []) walk(target, [...trail, path]);
      finished.add(path);
    }
  };
  for (const path of targets.keys()) walk(path, []);
  return [...circles];
}

function writeCircle(paths: readonly string[]): string {
  const first = paths.indexOf([...paths].sort()[0] ?? "");
  const turned = [...paths.slice(first), ...paths.slice(0, first)];
  return [...turned, turned[0]].join(" -> ");
}

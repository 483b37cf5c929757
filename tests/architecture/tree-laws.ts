import type { SourceFile } from "./source-files.js";

const MOST_LINES = 400;
const TOP_LEVEL = new Set([
  ...["README.md", "DEVELOPERS.md", "LICENSE", "package.json", "package-lock.json", "tsconfig.json"],
  ...["packages", "tests", "reference-tables", "docs"],
]);
const PACKAGES = new Set(["hydraulics", "ui"]);
const VAGUE_NAMES = new Set(["util", "utils", "utility", "utilities", "helper", "helpers", "misc", "common"]);

/** Finds names at the top of the checkout, and packages, that the project's map does not show. */
export function checkTopLevel(names: readonly string[], packages: readonly string[]): string[] {
  return [
    ...names.filter((name) => !name.startsWith(".") && !TOP_LEVEL.has(name)),
    ...packages.filter((name) => !PACKAGES.has(name)).map((name) => `packages/${name}`),
  ].map((name) => `${name}: has no place at the top`);
}

/** Finds files too long to be read in one sitting; generated ones and data are exempt. */
export function checkLengths(files: readonly SourceFile[]): string[] {
  return files
    .filter(({ path }) => /\.(ts|mts|js|mjs|css|html)$/.test(path) && !path.includes(".generated."))
    .map(({ path, text }) => ({ path, lines: text.trimEnd().split("\n").length }))
    .filter(({ lines }) => lines > MOST_LINES)
    .map(({ path, lines }) => `${path}: ${lines} lines, more than ${MOST_LINES}`);
}

/** Finds files and folders whose name says nothing about what they hold. */
export function checkNames(files: readonly SourceFile[]): string[] {
  return files
    .filter(({ path }) =>
      path.split("/").some((part) => part.split(/[.-]/).some((word) => VAGUE_NAMES.has(word))),
    )
    .map(({ path }) => `${path}: the name says nothing about what it holds`);
}

/** Finds paths that exist on one computer only, in any file that is text. */
export function checkMachinePaths(files: readonly SourceFile[]): string[] {
  const folders = ["home", "root", "tmp", "work", "mnt", "Users", "workspace"].join("|");
  const onUnix = new RegExp(`(?:^|[^A-Za-z0-9_.}/-])/(?:${folders})/[A-Za-z]`);
  const onWindows = /\b[A-Z]:\\{1,2}(?:Users|Temp|home)\\/;
  return files.flatMap(({ path, text }) =>
    text.split("\n").flatMap((line, index) => {
      return onUnix.test(line) || onWindows.test(line)
        ? [`${path}:${index + 1}: names a folder of one computer`]
        : [];
    }),
  );
}

/** Finds packages in the lock that carry a download address, or that lack the digest of what is downloaded. */
export function checkLock(lockText: string): string[] {
  const lock = JSON.parse(lockText) as {
    packages: Record<string, { resolved?: string; integrity?: string; link?: boolean }>;
  };
  return Object.entries(lock.packages).flatMap(([path, entry]) => {
    if (!path.includes("node_modules/") || entry.link) return [];
    return [
      ...(entry.resolved === undefined ? [] : [`${path}: holds the address ${entry.resolved}`]),
      ...(entry.integrity === undefined ? [`${path}: has no digest`] : []),
    ];
  });
}

/** Finds dependencies that do not name one version exactly. */
export function checkExactVersions(manifest: SourceFile): string[] {
  const { dependencies, devDependencies, optionalDependencies } = JSON.parse(manifest.text) as Record<
    string,
    Record<string, string> | undefined
  >;
  return Object.entries({ ...dependencies, ...devDependencies, ...optionalDependencies })
    .filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))
    .map(([name, version]) => `${manifest.path}: ${name} is "${version}", not one version`);
}

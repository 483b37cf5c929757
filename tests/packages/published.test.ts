import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, posix } from "node:path";
import { checkPackage, createPackageFromTarballData } from "@arethetypeswrong/core";
import { publint } from "publint";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import {
  compiler,
  type Installed,
  installPackages,
  PACKAGES,
  readTop,
  run,
  snippetOf,
  workersNamedIn,
} from "./packed.js";

let installed: Installed;
beforeAll(async () => {
  installed = await installPackages();
}, 300_000);
afterAll(() => installed?.remove(), 120_000);

const SCHEMAS = readdirSync("packages/hydraulics/schemas").map((file) => `schemas/${file}`);

/** What stands in a package beside what is compiled. */
const BESIDE = {
  hydraulics: ["LICENSE", "README.md", "bin/headfall.mjs", "package.json", ...SCHEMAS],
  ui: ["LICENSE", "README.md", "dist/headfall.js", "dist/headfall.licences.md", "package.json"],
};

describe.each(PACKAGES)("the package %s, as npm packs it,", (name) => {
  const inPackage = (path: string) => join(installed.folder, "node_modules", "@headfall", name, path);

  test("holds each source, what was compiled of it, and nothing else but a few files by name", () => {
    const { paths } = installed.packed[name];
    const sources = paths.filter((path) => /^src\/.*(?<!\.d)\.ts$/.test(path));
    const declared = paths.filter((path) => /^src\/.*\.d\.ts$/.test(path));
    expect(sources.length).toBeGreaterThan(100);
    const compiled = sources.flatMap((path) =>
      ["js", "js.map", "d.ts", "d.ts.map"].map((end) => path.replace(/^src/, "dist").replace(/ts$/, end)),
    );
    const others = paths.filter((path) => !/^dist\/assets\/(check|room)-worker-[\w-]{8}\.js$/.test(path));
    expect(others).toEqual([...BESIDE[name], ...sources, ...declared, ...compiled].sort());
    const workers = name === "ui" ? 2 : 0;
    expect(paths.length - others.length).toBe(workers);
    if (workers > 0) {
      const one = readFileSync(inPackage("dist/headfall.js"), "utf8");
      const named = workersNamedIn(one).map((path) => `dist/${path}`);
      expect(named).toEqual(paths.filter((path) => path.startsWith("dist/assets/")));
    }
  });

  test("has maps that lead to sources it holds", () => {
    const maps = installed.packed[name].paths.filter((path) => path.endsWith(".map"));
    expect(maps.length).toBeGreaterThan(200);
    const lost = maps.flatMap((path) => {
      const { sources, sourceRoot = "" } = JSON.parse(readFileSync(inPackage(path), "utf8"));
      return (sources as string[])
        .map((source) => posix.join(posix.dirname(path), sourceRoot, source))
        .filter((source) => !existsSync(inPackage(source)));
    });
    expect(lost).toEqual([]);
  });

  test("has nothing that publint finds fault with, suggestions too", async () => {
    const bytes = readFileSync(installed.packed[name].tarball);
    const { messages } = await publint({ pack: { tarball: new Uint8Array(bytes).buffer }, strict: true });
    expect(messages).toEqual([]);
  });

  test("has types that are right however they are resolved, old ways of node's and require aside", async () => {
    const bytes = readFileSync(installed.packed[name].tarball);
    const analysis = await checkPackage(createPackageFromTarballData(new Uint8Array(bytes)));
    if (analysis.types === false) throw new Error("There are no types.");
    const problems = analysis.problems.filter(
      (problem) => !("resolutionKind" in problem && /^node10$|^node16-cjs$/.test(problem.resolutionKind)),
    );
    // One file for pages without a bundler has none, and says so.
    expect(
      problems.filter((problem) => !("entrypoint" in problem && problem.entrypoint === "./standalone")),
    ).toEqual([]);
  });

  test("has the licence of the whole, and names no folder or host of its makers", () => {
    expect(readTop(`packages/${name}/LICENSE`)).toBe(readTop("LICENSE"));
    const manifest = JSON.parse(readTop(`packages/${name}/package.json`));
    expect(manifest).toMatchObject({ license: "MIT", type: "module", publishConfig: { access: "public" } });
    expect(manifest.version).toBe(JSON.parse(readTop("package.json")).version);
  });
});

const OPTIONS = ["--strict", "--target", "es2022", "--lib", "es2023,dom,dom.iterable", "--types", ""];
const WAYS = [
  ["nodenext", ["--module", "nodenext", "--moduleResolution", "nodenext"]],
  ["bundler", ["--module", "esnext", "--moduleResolution", "bundler"]],
] as const;

describe.each(WAYS)("installed elsewhere, with moduleResolution %s,", (way, words) => {
  const fileOf = (name: string) => join(installed.folder, `${name}-${way}.mts`);

  // Both at once: what they share is read once.
  beforeAll(() => {
    for (const name of PACKAGES) writeFileSync(fileOf(name), snippetOf(name, "ts"));
    run(process.execPath, [compiler, ...OPTIONS, ...words, ...PACKAGES.map(fileOf)], installed.folder);
  }, 60_000);

  test.each(PACKAGES)("the example in the README of %s compiles, with the types of the package", (name) => {
    expect(existsSync(fileOf(name).replace(/mts$/, "mjs"))).toBe(true);
  });

  test("the example in the README of hydraulics prints what it says", () => {
    const file = join(installed.folder, `hydraulics-${way}.mjs`);
    expect(run(process.execPath, [file], dirname(file))).toBe(snippetOf("hydraulics", "text"));
  });
});

test("the command of the package runs where it is installed", () => {
  const bin = "node_modules/@headfall/hydraulics/bin/headfall.mjs";
  const { version } = JSON.parse(readTop("package.json"));
  expect(run(process.execPath, [bin, "--version"], installed.folder)).toBe(`${version}\n`);
});

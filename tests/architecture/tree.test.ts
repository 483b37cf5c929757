import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { madeUpTree, readTree, topLevelNames } from "./source-files.js";
import {
  checkExactVersions,
  checkLengths,
  checkLock,
  checkMachinePaths,
  checkNames,
  checkTopLevel,
} from "./tree-laws.js";

const everything = readTree("");
const packages = readdirSync(fileURLToPath(new URL("../../packages", import.meta.url)));
const fileAt = (path: string) => {
  const file = everything.find((each) => each.path === path);
  if (file === undefined) throw new Error(`${path} is missing`);
  return file;
};

describe("the checkout", () => {
  test("has at its top only what the project's map shows", () => {
    expect(checkTopLevel(topLevelNames(), packages)).toEqual([]);
  });

  test("has no file over 400 lines, and no name that says nothing", () => {
    expect(checkLengths(everything)).toEqual([]);
    expect(checkNames(everything)).toEqual([]);
  });

  test("names no folder that exists on one computer only", () => {
    expect(checkMachinePaths(everything)).toEqual([]);
  });

  test("locks every package by digest and by no download address", () => {
    expect(checkLock(fileAt("package-lock.json").text)).toEqual([]);
    expect(fileAt(".npmrc").text.split("\n")).toContain("omit-lockfile-registry-resolved=true");
  });

  test("depends on exact versions only", () => {
    const manifests = everything.filter((file) => file.path.endsWith("package.json"));
    expect(manifests).toHaveLength(3);
    expect(manifests.flatMap(checkExactVersions)).toEqual([]);
  });
});

describe("the checks of the checkout can fail:", () => {
  test("checkTopLevel finds a stray script, folder and package, and lets dot-files pass", () => {
    expect(checkTopLevel(["README.md", ".ci", "scripts", "todo.txt"], ["ui", "extras"])).toEqual([
      "scripts: has no place at the top",
      "todo.txt: has no place at the top",
      "packages/extras: has no place at the top",
    ]);
  });

  test("checkLengths finds the 401st line, in code but not in data or generated code", () => {
    const lines = (count: number) => "x;\n".repeat(count);
    const tree = madeUpTree({
      "a.ts": lines(400),
      "b.ts": lines(401),
      "c.generated.ts": lines(900),
      "d.csv": lines(900),
      "e.mjs": lines(401),
    });
    expect(checkLengths(tree)).toEqual(["b.ts: 401 lines, more than 400", "e.mjs: 401 lines, more than 400"]);
  });

  test("checkNames finds vague words as a file, a part of one, and a folder", () => {
    const tree = madeUpTree({
      "a/utils.ts": "",
      "b/array-helpers.test.ts": "",
      "misc/c.ts": "",
      "d/hydraulics.ts": "",
    });
    expect(checkNames(tree).map((finding) => finding.split(":")[0])).toEqual([
      "a/utils.ts",
      "b/array-helpers.test.ts",
      "misc/c.ts",
    ]);
  });

  test("checkMachinePaths finds a home, a temporary and a Windows folder, and lets addresses and usual places pass", () => {
    const path = (...parts: string[]) => parts.join("/");
    const tree = madeUpTree({
      "a.md": `see "${path("", "home", "ann", "x.csv")}"`,
      "b.sh": `first\ncat ${path("", "tmp", "x")}`,
      "c.json": String.raw`{"at": "C:\\${"Users"}\\ann"}`,
      "d.md": "https://example.org/home/ann and /usr/bin/chromium and ../work/plan and ./tmp/x",
    });
    expect(checkMachinePaths(tree).map((finding) => finding.split(": ")[0])).toEqual([
      "a.md:1",
      "b.sh:2",
      "c.json:1",
    ]);
  });

  test("checkLock finds an address and a missing digest, and lets the links to the packages pass", () => {
    const lock = {
      packages: {
        "": {},
        "packages/ui": {},
        "node_modules/@headfall/ui": { resolved: "packages/ui", link: true },
        "node_modules/good": { integrity: "sha512-x" },
        "node_modules/bad": { resolved: "https://example.org/bad.tgz" },
      },
    };
    expect(checkLock(JSON.stringify(lock))).toEqual([
      "node_modules/bad: holds the address https://example.org/bad.tgz",
      "node_modules/bad: has no digest",
    ]);
  });

  test("checkExactVersions finds a range, a tag and a leading caret", () => {
    const [manifest] = madeUpTree({
      "package.json": JSON.stringify({
        dependencies: { a: "1.2.3", b: "^1.2.3" },
        devDependencies: { c: "latest", d: ">=1 <2" },
      }),
    });
    expect(manifest && checkExactVersions(manifest)).toHaveLength(3);
  });
});

import { describe, expect, test } from "vitest";
import { checkLadder, checkPackageBoundary, HYDRAULICS, type Ladder, UI } from "./ladder.js";
import { isTypeScript, madeUpTree, readTree } from "./source-files.js";

describe.each([
  ["hydraulics", HYDRAULICS],
  ["ui", UI],
])("the folders of %s", (_name, ladder: Ladder) => {
  test("each import only themselves and those before them", () => {
    const files = readTree(ladder.root, isTypeScript);
    expect(files.map((file) => file.path)).toContain(`${ladder.root}/index.ts`);
    expect(checkLadder(files, ladder)).toEqual([]);
  });

  test("reach the other package only by its public entry", () => {
    expect(checkPackageBoundary(readTree(ladder.root, isTypeScript))).toEqual([]);
  });
});

const hydraulics = (path: string, text: string) =>
  checkLadder(madeUpTree({ [`packages/hydraulics/src/${path}`]: text }), HYDRAULICS);

describe("checkLadder", () => {
  test("lets a folder import itself and an earlier one", () => {
    expect(
      hydraulics("solve/a.ts", `import { b } from "./b.js"; import { c } from "../units/c.js";`),
    ).toEqual([]);
    expect(hydraulics("judge/deep/a.ts", `export * from "../../solve/b.js";`)).toEqual([]);
    expect(hydraulics("solve/a.ts", `import { z } from "zod"; // from "../judge/z.js"`)).toEqual([]);
  });

  test.each([
    ["an import", `import { b } from "../judge/b.js";`],
    ["an import of a type", `import type { B } from "../judge/b.js";`],
    ["an import for its effect", `import "../judge/b.js";`],
    ["an export from", `export { b } from "../judge/b.js";`],
    ["an export of all", `export * from "../judge/b.js";`],
    ["an import when needed", `export const b = () => import("../judge/b.js");`],
    ["an import inside a type", `export type B = import("../judge/b.js").B;`],
    ["an address beside the file", `new Worker(new URL("../judge/b.js", import.meta.url));`],
    ["an import over several lines", `import {\n  b,\n} from "../judge/b.js";`],
  ])("finds %s of a later folder", (_what, text) => {
    expect(hydraulics("solve/a.ts", text)).toEqual([
      "packages/hydraulics/src/solve/a.ts: imports ../judge/b.js, against the ladder",
    ]);
  });

  test("finds a folder that is not in the ladder, and a stray file beside the entry", () => {
    expect(hydraulics("extras/a.ts", `import "../judge/b.js";`)).toEqual([
      "packages/hydraulics/src/extras/a.ts: extras/ is not in the ladder",
    ]);
    expect(hydraulics("a.ts", "")).toEqual(["packages/hydraulics/src/a.ts: belongs into one of the folders"]);
  });

  test("finds an entry that re-exports the command, and a folder that imports the entry", () => {
    expect(hydraulics("index.ts", `export * from "./report/rows.js";`)).toEqual([]);
    expect(hydraulics("index.ts", `export * from "./command/main.js";`)).toHaveLength(1);
    expect(hydraulics("report/a.ts", `import "../index.js";`)).toHaveLength(1);
    expect(hydraulics("command/a.ts", `import "../index.js";`)).toEqual([]);
    const ui = (path: string) => checkLadder(madeUpTree({ [path]: `import "../define.js";` }), UI);
    expect(ui("packages/ui/src/app/a.ts")).toEqual([]);
    expect(ui("packages/ui/src/profile/a.ts")).toHaveLength(1);
  });

  test("finds an import that leaves the package by a path", () => {
    const tree = madeUpTree({ "packages/ui/src/app/a.ts": `import "../../../hydraulics/src/index.js";` });
    expect(checkLadder(tree, UI)).toEqual([
      "packages/ui/src/app/a.ts: imports ../../../hydraulics/src/index.js, which leaves the package by a path",
    ]);
    const example = madeUpTree({
      "packages/ui/src/app/a.ts": `import "../../../../docs/examples/b.json?raw";`,
    });
    expect(checkLadder(example, UI)).toEqual([]);
  });
});

describe("checkPackageBoundary", () => {
  test("lets ui import the public entry, and nothing else", () => {
    const tree = (path: string, specifier: string) => madeUpTree({ [path]: `import "${specifier}";` });
    const ui = "packages/ui/src/app/a.ts";
    expect(checkPackageBoundary(tree(ui, "@headfall/hydraulics"))).toEqual([]);
    expect(checkPackageBoundary(tree(ui, "@headfall/hydraulics/dist/solve/solve-line.js"))).toHaveLength(1);
    expect(checkPackageBoundary(tree("packages/hydraulics/src/report/a.ts", "@headfall/ui"))).toHaveLength(1);
    expect(
      checkPackageBoundary(tree("packages/hydraulics/src/report/a.ts", "@headfall/hydraulics")),
    ).toHaveLength(1);
  });
});

import { expect, test } from "vitest";
import { checkCycles } from "./cycles.js";
import { isTypeScript, madeUpTree, readTree } from "./source-files.js";

test("no files of the packages import one another in a circle", () => {
  const files = readTree("packages", (path) => isTypeScript(path) && path.includes("/src/"));
  expect(files.length).toBeGreaterThan(1);
  expect(checkCycles(files)).toEqual([]);
});

test("checkCycles lets two ways lead to one file", () => {
  const tree = madeUpTree({
    "s/a.ts": `import "./b.js"; import "./c.js";`,
    "s/b.ts": `import "./d.js";`,
    "s/c.ts": `import "./d.js";`,
    "s/d.ts": `import "zod";`,
  });
  expect(checkCycles(tree)).toEqual([]);
});

test("checkCycles finds a circle of three, told once, wherever the walk begins", () => {
  const tree = madeUpTree({
    "s/c.ts": `import type { A } from "./a.js";`,
    "s/a.ts": `import "./b.js";`,
    "s/b.ts": `export * from "./c.js";`,
    "s/z.ts": `import "./b.js";`,
  });
  expect(checkCycles(tree)).toEqual(["s/a.ts -> s/b.ts -> s/c.ts -> s/a.ts"]);
});

test("checkCycles finds a file that imports itself", () => {
  expect(checkCycles(madeUpTree({ "s/a.ts": `import "./a.js";` }))).toEqual(["s/a.ts -> s/a.ts"]);
});

import { describe, expect, test } from "vitest";
import { checkPure } from "./pure-core.js";
import { isTypeScript, madeUpTree, readTree } from "./source-files.js";

test("hydraulics outside its command uses no page, no machine, no clock and no chance", () => {
  const files = readTree(
    "packages/hydraulics/src",
    (path) => isTypeScript(path) && !path.includes("/src/command/"),
  );
  expect(files.length).toBeGreaterThan(0);
  expect(checkPure(files)).toEqual([]);
});

const check = (text: string) => checkPure(madeUpTree({ "a.ts": text }));

describe("checkPure", () => {
  test.each([
    ["document", `export const title = document.title;`],
    ["window", `export const width = window.innerWidth;`],
    ["process", `if (process.env.CI) throw new Error("no");`],
    ["Date", `export const now = () => Date.now();`],
    ["Date", `export const when: Date | undefined = undefined;`],
    ["console", `console.log("here");`],
    ["fetch", `export const rows = await fetch("rows.csv");`],
    ["localStorage", `export const plan = localStorage["plan"];`],
    ["globalThis", `export const all = globalThis;`],
    ["Math.random", `export const chance = Math.random();`],
    ["Math.random", `export const chance = Math["random"]();`],
    ["Math as a whole", `const { random } = Math; export const chance = random();`],
    ["process", `export const host = { process };`],
  ])("finds %s in: %s", (name, text) => {
    expect(check(text)).toEqual([`a.ts: uses ${name}`]);
  });

  test("finds an import from node, for its values, its types or when needed", () => {
    expect(check(`import { readFileSync } from "node:fs";`)).toEqual(["a.ts: imports node:fs"]);
    expect(check(`import type { Stats } from "node:fs";`)).toEqual(["a.ts: imports node:fs"]);
    expect(check(`export const fs = () => import("node:fs");`)).toEqual(["a.ts: imports node:fs"]);
  });

  test.each([
    `export const readPlan = (document: string) => document.length;`,
    `export const read = ({ document, window: other }: Both) => [document, other];`,
    `export const depth = (plan: Plan) => plan.document.window;`,
    `export interface Plan { document: string; process(): void }`,
    `export const plan = { document: 1, console: 2 };`,
    `// Math.random would differ at every run; see "node:fs" and document\nexport const note = "Date.now() and document";`,
    `export const largest = Math.max(1, 2);`,
    `export type Reader = (document: string) => void;`,
  ])("lets pass: %s", (text) => {
    expect(check(text)).toEqual([]);
  });
});

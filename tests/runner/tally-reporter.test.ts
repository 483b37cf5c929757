import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const cache = at("../../node_modules/.cache/");
mkdirSync(cache, { recursive: true });
const folder = mkdtempSync(join(cache, "tally-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Tally {
  passed: number;
  failed: string[];
  skipped: string[];
  again: string[];
}

/** Test files made up for it, by name. */
const FILES = {
  counted: `
    test("holds", () => expect(1).toBe(1));
    describe("a vessel", () => test("leaks", () => expect(1).toBe(2)));
    test.skip("later", () => undefined);`,
  again: `
    let tries = 0;
    test("at the second try", { retry: 1 }, () => expect(++tries).toBe(2));
    test("at no try", { retry: 1 }, () => expect(1).toBe(2));`,
  unloaded: `import "./not-there.mjs"; test("holds", () => undefined);`,
  unprepared: `describe("a line", () => {
    beforeAll(() => { throw new Error("no water"); });
    test("flows", () => undefined);
  });`,
  astray: `test("holds", () => { void Promise.reject(new Error("astray")); });`,
  empty: "",
};

let tally: Tally;
let status: number | null;

/** Runs them all by themselves and reads what the reporter wrote about them. */
beforeAll(() => {
  writeFileSync(join(folder, "vitest.config.mjs"), "export default { test: { exclude: [] } };");
  for (const [name, body] of Object.entries(FILES)) {
    const imports = `import { beforeAll, describe, expect, test } from "vitest";\n`;
    writeFileSync(join(folder, `${name}.test.mjs`), imports + body);
  }
  const words = ["run", `--root=${folder}`, `--reporter=${at("../tally-reporter.mjs")}`];
  const run = spawnSync(process.execPath, [at("../../node_modules/vitest/vitest.mjs"), ...words], {
    encoding: "utf8",
    env: { ...process.env, HEADFALL_TALLY: join(folder, "tally.json") },
  });
  tally = JSON.parse(readFileSync(join(folder, "tally.json"), "utf8")) as Tally;
  ({ status } = run);
}, 60_000);

const of = (file: keyof typeof FILES, names: readonly string[]) =>
  names.filter((name) => name.startsWith(`${file}.test.mjs`));

test("the tally counts passes, and names what failed and what was skipped", () => {
  expect(tally.passed).toBe(3);
  expect(of("counted", tally.failed)).toEqual(["counted.test.mjs > a vessel > leaks"]);
  expect(tally.skipped).toEqual(["counted.test.mjs > later", "unprepared.test.mjs > a line > flows"]);
  expect(status).not.toBe(0);
});

test("the tally names what passed only when tried again, and what the first try fell on", () => {
  expect(tally.again).toEqual([
    "again.test.mjs > at the second try: expected 1 to be 2 // Object.is equality",
  ]);
  expect(of("again", tally.failed)).toEqual(["again.test.mjs > at no try"]);
});

test("the tally counts a file that does not load as failed", () => {
  expect(of("unloaded", tally.failed)).toEqual([expect.stringContaining("not-there")]);
});

test("the tally counts a failing preparation as failed, not only its tests as skipped", () => {
  expect(of("unprepared", tally.failed)).toEqual(["unprepared.test.mjs > a line: no water"]);
});

test("the tally counts an error that no test waits for as failed", () => {
  expect(tally.failed).toContain("outside any test: astray");
});

test("the tally of a file without tests has a failure", () => {
  expect(of("empty", tally.failed)).toHaveLength(1);
});

test("the tally names nothing else", () => {
  expect(tally.failed).toHaveLength(6);
});

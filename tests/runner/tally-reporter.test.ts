import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, expect, test } from "vitest";

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

/** Runs a made-up test file by itself and reads what the reporter wrote about it. */
function tallyOf(body: string): { tally: Tally; status: number | null } {
  const name = "made-up";
  writeFileSync(join(folder, "vitest.config.mjs"), "export default { test: { exclude: [] } };");
  writeFileSync(
    join(folder, `${name}.test.mjs`),
    `import { beforeAll, describe, expect, test } from "vitest";\n${body}`,
  );
  const run = spawnSync(
    process.execPath,
    [
      at("../../node_modules/vitest/vitest.mjs"),
      "run",
      `--root=${folder}`,
      `--reporter=${at("../tally-reporter.mjs")}`,
    ],
    { encoding: "utf8", env: { ...process.env, HEADFALL_TALLY: join(folder, "tally.json") } },
  );
  return { tally: JSON.parse(readFileSync(join(folder, "tally.json"), "utf8")) as Tally, status: run.status };
}

test("the tally counts passes, and names what failed and what was skipped", () => {
  const { tally, status } = tallyOf(`
    test("holds", () => expect(1).toBe(1));
    describe("a vessel", () => test("leaks", () => expect(1).toBe(2)));
    test.skip("later", () => undefined);`);
  expect(tally).toEqual({
    passed: 1,
    failed: ["made-up.test.mjs > a vessel > leaks"],
    skipped: ["made-up.test.mjs > later"],
    again: [],
  });
  expect(status).not.toBe(0);
});

test("the tally names what passed only when tried again", () => {
  const { tally, status } = tallyOf(`
    let tries = 0;
    test("at the second try", { retry: 1 }, () => expect(++tries).toBe(2));
    test("at no try", { retry: 1 }, () => expect(1).toBe(2));`);
  expect(tally).toEqual({
    passed: 1,
    failed: ["made-up.test.mjs > at no try"],
    skipped: [],
    again: ["made-up.test.mjs > at the second try"],
  });
  expect(status).not.toBe(0);
});

test("the tally counts a file that does not load as failed", () => {
  const { tally } = tallyOf(`import "./not-there.mjs"; test("holds", () => undefined);`);
  expect(tally.passed).toBe(0);
  expect(tally.failed).toHaveLength(1);
  expect(tally.failed[0]).toContain("not-there");
});

test("the tally counts a failing preparation as failed, not only its tests as skipped", () => {
  const { tally } = tallyOf(`describe("a line", () => {
    beforeAll(() => { throw new Error("no water"); });
    test("flows", () => undefined);
  });`);
  expect(tally.passed).toBe(0);
  expect(tally.failed).toEqual(["made-up.test.mjs > a line: no water"]);
});

test("the tally counts an error that no test waits for as failed", () => {
  const { tally } = tallyOf(`test("holds", () => { void Promise.reject(new Error("astray")); });`);
  expect(tally.passed).toBe(1);
  expect(tally.failed).toEqual(["outside any test: astray"]);
});

test("the tally of a file without tests has a failure", () => {
  expect(tallyOf("").tally.failed).toHaveLength(1);
});

import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readExplained, readScore, scoreTable } from "./score.mjs";
import { makeSwitch, RUNS_AWAY } from "./switch.mjs";
import { writeSwitchable } from "./switchable.mjs";
import { writeTestFile } from "./test-file.mjs";

/** A file made switchable, and run: what its last function gives with each mutant switched on. */
function runSwitched(source: string, call: string, path = "made.ts") {
  const { text, mutants } = writeSwitchable(path, source, 1);
  const mutation = makeSwitch(mutants.length);
  const run = new Function("__mutation", `${text.replaceAll("export ", "")}\nreturn () => ${call};`)(
    mutation,
  );
  const makeConstants = () => {
    for (const make of mutation.makers) make();
  };
  const switched = (id: number): unknown => {
    mutation.on = id;
    mutation.passed = 0;
    try {
      makeConstants();
      return run();
    } catch (error) {
      return (error as Error).message;
    } finally {
      mutation.on = 0;
      makeConstants();
    }
  };
  const found = mutants.map(({ id, was, became }) => [`${was} -> ${became}`, switched(id)]);
  return { mutation, run, found: Object.fromEntries(found) };
}

describe("writeSwitchable", () => {
  it("writes a file that does as it did, and each of its mistakes when that is switched on", () => {
    const source = "const LIMIT = 2;\nexport function triple(x) { return x < LIMIT ? x * 3 : 0; }\n";
    const { run, found } = runSwitched(source, "[triple(1), triple(2), triple(3)].join()");
    expect(run()).toBe("3,0,0");
    expect(found).toEqual({
      "2 -> 3": "3,6,0",
      "x < LIMIT -> true": "3,6,9",
      "x < LIMIT -> false": "0,0,0",
      "x < LIMIT -> x <= LIMIT": "3,6,0",
      "x * 3 -> x / 3": `${1 / 3},0,0`,
      "3 -> 4": "4,0,0",
      "0 -> 1": "3,1,1",
    });
    expect(run()).toBe("3,0,0");
  });

  it("leaves out statements, loses each of two claims, and leaves what is thrown as it is", () => {
    const source = `export function least(xs) {
      if (xs === null || xs.length === 0) throw new RangeError("it holds 0");
      let found = xs[0];
      for (const x of xs) if (x < found) found = x;
      return found;
    }`;
    const { found } = runSwitched(source, "least([3, 1, 2])");
    expect(found).toMatchObject({
      "found = x; -> ": 3,
      "x < found -> false": 3,
      "x < found -> true": 2,
      "x < found -> x <= found": 1,
    });
    expect(Object.keys(found)).toContain("xs === null || xs.length === 0 -> xs === null");
    expect(Object.keys(found).some((key) => key.includes("it holds"))).toBe(false);
  });

  it("leaves each else with its own if", () => {
    const source = "export function sign(x) { let s = 9; if (x > 0) s = 1; else s = -1; return s; }";
    const { run, found } = runSwitched(source, "[sign(2), sign(-2)].join()");
    expect(run()).toBe("1,-1");
    expect(found).toMatchObject({ "s = 1; -> ": "9,-1", "s = -1; -> ": "1,9" });
  });

  it("judges the figures within a sentence where words are written, and nowhere else", () => {
    const source = `export function fall(from, to) { return \`it falls \${from - to} cm\`; }`;
    const { found } = runSwitched(source, "fall(5, 2)", "report/made.ts");
    expect(found).toMatchObject({ "from - to -> from + to": "it falls 7 cm" });
    expect(runSwitched(source, "fall(5, 2)").found).toEqual({});
  });

  it("gives up a loop that would not end", () => {
    const source = "export function count(n) { let k = 0; while (k < n) k += 1; return k; }";
    const { text, mutants } = writeSwitchable("made.ts", source, 1);
    const mutation = makeSwitch(mutants.length);
    mutation.limit = 1000;
    mutation.on = mutants.find(({ became }) => became === "k -= 1")?.id ?? 0;
    const count = new Function("__mutation", `${text.replace("export ", "")}\nreturn count;`)(mutation);
    expect(() => count(3)).toThrow(RUNS_AWAY);
  });
});

describe("writeTestFile", () => {
  const written = (source: string) =>
    writeTestFile("made.test.ts", source, { name: "made", call: "describeFile", from: "./warm.mjs" });

  it("makes a function of all that a file does after its imports", () => {
    const text = written(
      'import { two } from "./two.js";\nconst four = 2 * two;\ntest("four", () => see(four));\n',
    );
    expect(text).toMatch(/^import { describeFile } from ".\/warm.mjs";\nimport { two } from ".\/two.js";\n/);
    let two = 2;
    const seen: number[] = [];
    let again = () => {};
    const run = new Function("two", "test", "see", "describeFile", text!.replace(/^import .*$/gm, ""));
    const both = { valueOf: () => two };
    run(
      both,
      (_: string, body: () => void) => body(),
      (x: number) => seen.push(x),
      (_: string, body: () => void) => {
        again = body;
        body();
      },
    );
    two = 5;
    again();
    expect(seen).toEqual([4, 10]);
  });

  it("leaves alone what exports or waits", () => {
    expect(written("export const two = 2;\n")).toBeUndefined();
    expect(written("const two = await three();\n")).toBeUndefined();
  });
});

describe("the score that is kept", () => {
  it("is the one the page of the method shows", () => {
    const page = readFileSync(new URL("../../docs/method/mutation.md", import.meta.url), "utf8");
    expect(page).toContain(scoreTable(readScore()));
  });

  it("counts what adds up, and explains nothing without a reason", () => {
    for (const [file, row] of Object.entries(readScore())) {
      expect(row.killed + row.timedOut + row.survived, file).toBe(row.mutants);
      expect(row.explained, file).toBeLessThanOrEqual(row.survived);
    }
    for (const { why, mutants } of readExplained()) {
      expect(why.length).toBeGreaterThan(20);
      expect(mutants.length).toBeGreaterThan(0);
    }
  });
});

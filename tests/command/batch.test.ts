import { mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { linesOf } from "../../packages/hydraulics/src/command/text-lines.js";
import { LIMITS } from "../../packages/hydraulics/src/document/limits.js";
import { buildCommand, HEN_HOUSE, headfall, RAIN_BARREL, TWO_PENS } from "./run-headfall.js";

const folder = mkdtempSync(join(tmpdir(), "headfall-batch-"));
const fileOf = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};
const onOneLine = (plan: string): string => JSON.stringify(JSON.parse(readFileSync(plan, "utf8")));

const LINES = [
  onOneLine(HEN_HOUSE),
  '{"headfall": 1, "sources": [{"vessel": "bathtub of gold"}], "runs": []}',
  "",
  onOneLine(RAIN_BARREL),
  "no plan at all",
  onOneLine(TWO_PENS),
];
let plans = "";

beforeAll(() => {
  buildCommand();
  plans = fileOf("plans.jsonl", `${LINES.join("\n")}\n`);
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true }));

const SHORT = ["--samples", "0", "--day", "2026-07-04"];
const rowsOf = (text: string) =>
  text
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line));

test("headfall batch answers each line in order; a bad line costs only itself; the status is the worst", () => {
  const run = headfall(["batch", plans, ...SHORT, "--jobs", "2"]);
  expect(run).toMatchObject({ status: 2, stderr: "" });
  const rows = rowsOf(run.stdout);
  // The empty line is passed over, and counted.
  expect(rows.map(({ line, status }) => [line, status])).toEqual([
    [1, 0],
    [2, 2],
    [4, 1],
    [5, 2],
    [6, 0],
  ]);
  expect(rows[0].answer).toEqual(JSON.parse(headfall(["check", HEN_HOUSE, "--json", ...SHORT]).stdout));
  expect(rows[1].problems[0]).toMatchObject({ code: "unknownName", path: "sources[0].vessel" });
  expect(rows[1].problems[0].sentence).toContain("bathtub of gold");
  expect(rows[3].problems[0]).toMatchObject({ code: "notJson", path: "the plan" });
});

test("headfall batch --ask lasts gives the bytes of one thread from two, and of a pipe from a file", () => {
  const words = ["--ask", "lasts", "--day", "2026-07-04"];
  const one = headfall(["batch", plans, ...words, "--jobs", "1"]);
  expect(rowsOf(one.stdout).map((row) => row.answer?.format ?? row.ask)).toEqual([
    ...["headfall lasts", "lasts", "headfall lasts", "lasts", "headfall lasts"],
  ]);
  expect(headfall(["batch", "-", ...words, "--jobs", "2"], readFileSync(plans, "utf8"))).toEqual(one);
});

test("headfall batch --resume goes on after the last whole line, wherever the file was cut, and once only", () => {
  const whole = headfall(["batch", plans, ...SHORT]);
  const out = join(folder, "out.jsonl");
  const words = ["batch", plans, ...SHORT, "--resume", out];
  expect(headfall(words)).toEqual({ status: 2, stdout: "", stderr: "" });
  expect(readFileSync(out, "utf8")).toBe(whole.stdout);
  const ends = [...whole.stdout.matchAll(/\n/g)].map(({ index }) => index + 1);
  for (const size of [ends[0], ends[2] + 30]) {
    truncateSync(out, size);
    expect(headfall(words)).toEqual({ status: 2, stdout: "", stderr: "" });
    expect(readFileSync(out, "utf8")).toBe(whole.stdout);
  }
  // Nothing is left to do, and the status is still that of all of them.
  expect(headfall(words)).toEqual({ status: 2, stdout: "", stderr: "" });
  expect(readFileSync(out, "utf8")).toBe(whole.stdout);
});

test("headfall batch --resume leaves a file alone that is not its own", () => {
  const other = fileOf("other.jsonl", '{"line":1,"ask":"yard","status":0,"answer":{}}\nmine\n');
  const run = headfall(["batch", plans, "--ask", "yard", "--resume", other]);
  expect(run).toMatchObject({ status: 2, stdout: "" });
  expect(run.stderr).toMatch(
    /^headfall: line 2 of .*other\.jsonl was not written by a batch that asks yard: /,
  );
  expect(headfall(["batch", plans, "--resume", other]).stderr).toContain("headfall: line 1 of ");
  expect(readFileSync(other, "utf8")).toContain("mine");
});

interface Threads {
  readonly answersOf: (
    lines: AsyncIterable<{ line: number; text: string }>,
    asked: { ask: string; given: object },
    jobs: number,
  ) => AsyncGenerator<{ status: number; text: string }>;
}
const threads = (): Promise<Threads> =>
  import(new URL("../../packages/hydraulics/dist/command/batch-threads.js", import.meta.url).href);

test("answersOf reads a few lines ahead of a slow reader, and gives what it has while the next plan is not there", async () => {
  const { answersOf } = await threads();
  let read = 0;
  async function* lines() {
    for (read = 1; read <= 40; read += 1) yield { line: read, text: "not a plan" };
    // The forty-first never comes.
    await new Promise(() => {});
  }
  const answers = answersOf(lines(), { ask: "lasts", given: {} }, 2);
  expect((await answers.next()).value.text).toMatch(/^\{"line":1,"ask":"lasts","status":2,"problems":\[/);
  await new Promise((later) => setTimeout(later, 100));
  expect(read).toBeLessThan(12);
  for (let line = 2; line <= 40; line += 1)
    expect(JSON.parse((await answers.next()).value.text).line).toBe(line);
  await answers.return(undefined);
});

test("answersOf tells of each line whose thread died, and asks the next in a new one", async () => {
  const { answersOf } = await threads();
  async function* lines() {
    for (const line of [1, 2, 3]) yield { line, text: "" };
  }
  const told = [];
  for await (const { text } of answersOf(lines(), { ask: "nothing", given: {} }, 2))
    told.push(JSON.parse(text));
  expect(told.map(({ line, status }) => [line, status])).toEqual([
    [1, 2],
    [2, 2],
    [3, 2],
  ]);
  for (const { fault } of told) expect(fault).toMatch(/^This plan could not be answered for: /);
});

test.each([
  [["batch", "-", "--ask", "chekc"], /^headfall: --ask is one of check, .*, year, not "chekc"\./],
  [["batch", "-", "--jobs", "0"], /^headfall: --jobs is a whole number from 1 to 64\./],
  [["batch", "-", "--days", "5"], /^headfall: Unknown option '--days'\./],
  [
    ["batch", "-", "--ask", "year", "--csv"],
    /^headfall: --csv is of one plan; a batch writes a line for each\./,
  ],
  [["batch", "-", "--ask=cure", "--apply", "1"], /^headfall: --apply is of one plan/],
  [["batch", "no such file"], /^headfall: cannot read no such file: no such file or directory/],
  [
    ["batch", HEN_HOUSE, "--resume", "no such folder/out"],
    /^headfall: cannot write no such folder.out: no such/,
  ],
])("headfall %o ends with 2 and one sentence", (words, sentence) => {
  const run = headfall(words);
  expect(run).toMatchObject({ status: 2, stdout: "" });
  expect(run.stderr).toMatch(sentence);
  expect(run.stderr).toMatch(/^[^\n]*\n$/);
});

async function linesIn(pieces: readonly string[], most: number = LIMITS.textLength) {
  const lines = [];
  async function* stream() {
    for (const piece of pieces) yield Buffer.from(piece, "latin1");
  }
  for await (const line of linesOf(stream(), most)) lines.push(line);
  return lines;
}

test("linesOf gives the same lines however a stream is cut into pieces, whole letters too", async () => {
  const bytes = Buffer.from("one\n\nzwölf 🐔\r\nlast", "utf8").toString("latin1");
  const whole = await linesIn([bytes]);
  expect(whole.map(({ text }) => text)).toEqual(["one", "", "zwölf 🐔\r", "last"]);
  expect(whole.map(({ line, next }) => [line, next])).toEqual([
    [1, 4],
    [2, 5],
    [3, 18],
    [4, undefined],
  ]);
  for (let at = 0; at <= bytes.length; at += 1)
    expect(await linesIn([bytes.slice(0, at), bytes.slice(at)])).toEqual(whole);
  expect(await linesIn([...bytes])).toEqual(whole);
  expect(await linesIn([])).toEqual([]);
});

test("linesOf keeps no more of a line than it is told, and finds the next", async () => {
  const lines = await linesIn(["ab", "cdef", "g\nhi\n"], 3);
  expect(lines.map(({ text, next }) => [text, next])).toEqual([
    ["abc", 8],
    ["hi", 11],
  ]);
});

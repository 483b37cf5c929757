import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { buildCommand, HEN_HOUSE, headfall, headfallInShell } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

test("headfall help, --help and -h write the help; headfall alone does too, as a fault", () => {
  const help = headfall(["help"]);
  expect(help).toMatchObject({ status: 0, stderr: "" });
  expect(help.stdout).toMatch(/ {2}check PLAN [\s\S]*headfall help COMMAND [\s\S]*Exit status: 0 all good/);
  expect(headfall(["--help"])).toEqual(help);
  expect(headfall(["-h"])).toEqual(help);
  expect(headfall([])).toEqual({ ...help, status: 2 });
});

test("headfall help COMMAND and headfall COMMAND --help tell that command's options", () => {
  const help = headfall(["help", "cure"]);
  expect(help).toMatchObject({ status: 0, stderr: "" });
  expect(help.stdout).toMatch(
    /^headfall cure PLAN: [\s\S]*--stand-most 1.5m[\s\S]*For instance: headfall cure /,
  );
  expect(headfall(["cure", "--help"])).toEqual(help);
});

test("headfall --version writes the version of the package", () => {
  const { version } = JSON.parse(readFileSync("packages/hydraulics/package.json", "utf8"));
  expect(headfall(["--version"])).toEqual({ status: 0, stdout: `${version}\n`, stderr: "" });
});

test.each([
  [
    ["chekc", HEN_HOUSE],
    'headfall: there is no command "chekc". Do you mean check? There are: check, measure, weeks, sizes, compare, birds, yard, year, day, lasts, away, mark, rain, frost, heat, cure, mishaps, trouble, build, batch, help.\n',
  ],
  [
    ["constructor"],
    'headfall: there is no command "constructor". There are: check, measure, weeks, sizes, compare, birds, yard, year, day, lasts, away, mark, rain, frost, heat, cure, mishaps, trouble, build, batch, help.\n',
  ],
  [
    ["help", "chekc"],
    'headfall: there is no command "chekc". Do you mean check? There are: check, measure, weeks, sizes, compare, birds, yard, year, day, lasts, away, mark, rain, frost, heat, cure, mishaps, trouble, build, batch, help.\n',
  ],
  [["check"], "headfall: Which plan? Name a plan file, or - for standard input. See: headfall help check\n"],
  [["check", "a", "b"], 'headfall: One plan at a time; what is "b"? See: headfall help check\n'],
  [["check", HEN_HOUSE, "--colour"], "headfall: Unknown option '--colour'. See: headfall help check\n"],
  [["check", HEN_HOUSE, "--run", "feed"], "headfall: Unknown option '--run'. See: headfall help check\n"],
  [
    ["check", HEN_HOUSE, "--units", "imperial"],
    'headfall: --units is metric or us, not "imperial". See: headfall help check\n',
  ],
  [
    ["check", HEN_HOUSE, "--samples", "many"],
    'headfall: --samples is a whole number from 0 to 100000, not "many". See: headfall help check\n',
  ],
  [["check", HEN_HOUSE, "--seed", "-1"], undefined],
])(
  "headfall %o ends with 2, one sentence on standard error and nothing on standard output",
  (words, sentence) => {
    const run = headfall(words);
    expect(run).toMatchObject({ status: 2, stdout: "" });
    expect(run.stderr).toMatch(/^headfall: .*\n$/);
    if (sentence !== undefined) expect(run.stderr).toBe(sentence);
  },
);

test("headfall check (a missing file, a folder) says that it cannot be read, in one line", () => {
  const missing = headfall(["check", "no such plan.json"]);
  expect(missing).toMatchObject({ status: 2, stdout: "" });
  expect(missing.stderr).toBe("headfall: cannot read no such plan.json: no such file or directory\n");
  const folder = headfall(["check", "docs"]);
  expect(folder).toMatchObject({ status: 2, stdout: "" });
  expect(folder.stderr).toMatch(/^headfall: cannot read docs: it is a folder, and a file is wanted\n$/);
});

test("headfall check (a file that is no text) tells problems, not a fault of its own", () => {
  const run = headfall(["check", "-"], "\u0000\ufffd\u0001");
  expect(run).toMatchObject({ status: 2, stdout: "" });
  expect(run.stderr).toMatch(/^standard input has .* problems?:\n {2}the plan \(line 1\): found /);
  expect(headfall(["check", "-"], "").stderr).toMatch(
    /^standard input has one problem:\n {2}the plan \(line 1\): found the end/,
  );
});

test("headfall check into a pipe that closes early is no fault", () => {
  const run = headfallInShell(`headfall check ${HEN_HOUSE} --json --samples 0 | head -n 1`);
  expect(run).toEqual({ status: 0, stdout: "{\n", stderr: "" });
});

import { readdirSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { beforeAll, expect, test } from "vitest";
import { buildCommand, headfall } from "../command/run-headfall.js";
import { readDocument, TOP } from "./documents.js";

type Schema = { [key: string]: unknown };

beforeAll(buildCommand, 120_000);

const FOLDER = "packages/hydraulics/schemas/";
const files = readdirSync(`${TOP}${FOLDER}`);
const examples = readdirSync(`${TOP}docs/examples`).filter((name) => name.endsWith(".json"));
const exampleOf = (name: string) => `docs/examples/alder-bank-${name}.json`;

/** A schema that lets no key pass that it does not name: what ships lets them pass. */
function closed(part: unknown): unknown {
  if (Array.isArray(part)) return part.map(closed);
  if (typeof part !== "object" || part === null) return part;
  const inside: Schema = Object.fromEntries(Object.entries(part).map(([key, one]) => [key, closed(one)]));
  const isObject =
    inside["type"] === "object" && !("additionalProperties" in inside) && "properties" in inside;
  return isObject ? { ...inside, additionalProperties: false } : inside;
}

const checks = new Map<string, ReturnType<Ajv2020["compile"]>>();

/** What the schema of a document says against it. */
function faultsOf(document: Schema): readonly string[] {
  const name = String(document["format"]).replace("headfall ", "").replace(" ", "-");
  if (!checks.has(name)) {
    const schema = closed(JSON.parse(readDocument(`${FOLDER}${name}.schema.json`))) as Schema;
    checks.set(name, new Ajv2020({ strict: false, allErrors: true }).compile(schema));
  }
  const check = checks.get(name)!;
  if (check(document)) return [];
  return (check.errors ?? []).map(
    (error) => `${error.instancePath} ${error.message} ${JSON.stringify(error.params)}`,
  );
}

const RAIN = exampleOf("rain-on-the-coop");
const FIRST = exampleOf("first-line");
const FIVE_DAYS = exampleOf("five-days-away");

/** Each document once, from a plan that is quick to answer for; more of those that differ most from plan to plan. */
const ASKED: readonly (readonly string[])[] = [
  ...["brooder", "rain-barrel", "two-pens", "yard"].map((name) => [
    "check",
    exampleOf(name),
    "--samples",
    "20",
  ]),
  ["measure", FIRST, "--samples", "20"],
  ["birds", exampleOf("yard"), "--weeks", "2"],
  ["weeks", exampleOf("brooder"), "--weeks", "1"],
  ["year", exampleOf("yard"), "--weeks", "3"],
  ["yard", exampleOf("yard"), "--weeks", "2"],
  ["day", FIVE_DAYS],
  ["day", FIVE_DAYS, "--days", "2"],
  ["lasts", FIVE_DAYS],
  ["away", FIVE_DAYS, "--days", "5"],
  ["mark", FIVE_DAYS],
  ["rain", RAIN, "--example", "seattle"],
  ["frost", exampleOf("yard"), "--low", "-8 degC"],
  ["frost", exampleOf("yard"), "--example", "newyork"],
  ["heat", exampleOf("to-build")],
  ["mishaps", FIRST],
  ["trouble", FIRST, "--level", "falls-overnight"],
  ["sizes", FIRST],
  ["cure", exampleOf("brooder"), "--weeks", "0"],
  ["cure", FIRST, "--weeks", "0", "--front", "margin"],
  ["build", exampleOf("yard")],
  ["compare", FIRST, exampleOf("brooder"), "--samples", "0"],
];

/** Every question about every example: minutes, so only when it is asked for. */
const EVERY = [
  "check",
  "measure",
  "birds",
  "weeks",
  "yard",
  "day",
  "lasts",
  "mark",
  "frost",
  "heat",
  "mishaps",
  "sizes",
  "build",
  "year",
  "cure",
].flatMap((question) => examples.map((file) => [question, `docs/examples/${file}`]));

const runs = process.env["HEADFALL_EVERY"] === undefined ? ASKED : [...ASKED, ...EVERY];

test.each(runs.map((words) => ({ words, title: words.join(" ") })))(
  "headfall $title --json is as its schema says, with no key that it does not name",
  ({ words }) => {
    const { stdout, status } = headfall([...words, "--day", "2026-07-04", "--json"]);
    // A question that a plan cannot be asked says so, and prints nothing.
    if (status === 2 && stdout === "") return expect(EVERY).toContain(words);
    expect(faultsOf(JSON.parse(stdout))).toEqual([]);
  },
  120_000,
);

test("each document has a schema, and each schema is in the package and in schemas.md", () => {
  const asked = new Set(ASKED.map(([name]) => name));
  expect(asked.size).toBe(19);
  const page = readDocument("docs/reference/schemas.md");
  const manifest = JSON.parse(readDocument("packages/hydraulics/package.json"));
  expect(manifest.files).toContain("schemas");
  expect(manifest.exports["./schemas/*"]).toBe("./schemas/*");
  expect(files.filter((file) => !page.includes(`(../../${FOLDER}${file})`))).toEqual([]);
});

test("every example is a plan by plan.schema.json", () => {
  const check = new Ajv2020({ strict: false }).compile(JSON.parse(readDocument(`${FOLDER}plan.schema.json`)));
  expect(readDocument(`${FOLDER}plan.schema.json`)).toBe(readDocument("docs/plan.schema.json"));
  const wrong = examples.filter((file) => !check(JSON.parse(readDocument(`docs/examples/${file}`))));
  expect(wrong).toEqual([]);
  expect(check({ headfall: 1, sources: [], runs: [{ length: 12 }] })).toBe(false);
});

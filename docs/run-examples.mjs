/**
 * Runs the examples that stand in the comments of the library: `@example expression   // what it comes to`. Needs the
 * packages to be built.
 */
import { readFileSync } from "node:fs";

const library = await import("../packages/hydraulics/dist/index.js");

/** What an example may speak of beside the library's own names, each worked out when it is first asked for. */
export const RESULTS = {
  plan: 'examplePlan("hen-house")',
  checked: "checkPlan(plan, { samples: 40 }).checked",
  line: "checked.line",
  flock: "buildFlock(plan, line).flock",
  birds: "birdsForPlan(plan, { weeks: 1 }).birds",
  measuring:
    'measureAgain({ ...small, sources: [{ ...small.sources[0], stand: "14 cm" }] }, { samples: 20 }).measuring',
  lasting: "howLongItLasts(plan).lasting",
  away: 'goingAway(examplePlan("five-days-away"), { days: 5 }).away',
  mark: "dailyMark(plan).mark",
  day: "simulateDay(plan, { seed: 1 }).result",
  record: 'readRainRecord("date,rain mm\\n2025-05-01,12\\n2025-05-02,0").record',
  supply: 'rainSupply(examplePlan("rain-on-the-coop"), record).supply',
  small: `checkDocument({
    headfall: 1,
    sources: [{ id: "bucket", vessel: "5 gallon bucket", stand: "5 cm" }],
    runs: [{ id: "line", length: "9 m", fall: "10 cm", pipe: "1/2 in PVC schedule 40",
             drinkers: { kind: "nipple-side-action", count: 4, first: "8 m", every: "30 cm" } }],
  }).plan`,
  mishaps: "mishapsOfPlan(small).mishaps",
  loose: `mishapsOfPlan(checkDocument({
    headfall: 1, day: "2026-07-04", sources: [], runs: [],
    pens: [{ id: "brooder", birds: { kind: "pullet", count: 25, age: "10 days" },
             waterers: [{ id: "fount", kind: "fount-1gal" }] }],
  }).plan).mishaps.waterers`,
  trouble: 'whatIsWrong(small, [{ look: "gives", at: "drinker", id: "line 4", sees: "dry" }]).trouble',
  frost: 'frostOfPlan(examplePlan("yard")).frost',
  heat: "heatOfPlan(plan).heat",
  yard: 'yardForPlan(examplePlan("yard"), { weeks: 1 }).yard',
  year: 'yearForPlan(examplePlan("yard"), { weeks: 2 }).year',
  sheet: "buildSheetOf(small).sheet",
  sizes: "compareSizes(small).comparison",
  cures: "findCures(small, { weeks: 0 }).answer",
  front: "findFront(small, { weeks: 0, standMost: 0.5, standStep: 0.1 }).front",
  variants: 'compareVariants([small, { ...small, name: "warm", water: "20 degC" }], { samples: 0 }).variants',
};

/** A plan among docs/examples, by its name behind "alder-bank-". */
function examplePlan(name) {
  const reading = library.readPlan(
    readFileSync(new URL(`examples/alder-bank-${name}.json`, import.meta.url), "utf8"),
  );
  if (!reading.ok) throw new Error(`alder-bank-${name} is no plan`);
  return reading.plan;
}

/** The names an example may use: the library's, those of its own file, the results above. */
export function scopeOf(own = {}) {
  const scope = { ...library, ...own, examplePlan };
  for (const [name, text] of Object.entries(RESULTS)) {
    Object.defineProperty(scope, name, { get: () => resultOf(name, text), enumerable: true });
  }
  return scope;
}

const made = new Map();

function resultOf(name, text) {
  if (!made.has(name)) made.set(name, evaluate(text, scopeOf()));
  return made.get(name);
}

/** The value of an expression, its names looked up in a scope; what a result above is made by is not made twice. */
export function evaluate(text, scope) {
  const known = Object.entries(RESULTS).find(([, how]) => text !== how && text.startsWith(how));
  if (known !== undefined) return evaluate(`${known[0]}${text.slice(known[1].length)}`, scope);
  return new Function("scope", `with (scope) { return (${text}\n); }`)(scope);
}

/** An example taken apart: the expression, and what it is said to come to; undefined where it does not say. */
export function partsOf(example) {
  const [, expression, said] = /^([\s\S]*?)\s{2,}\/\/ ([\s\S]*)$/.exec(example) ?? [];
  return said === undefined ? undefined : { expression, said: said.replace(/\s*\n\s*/g, " ") };
}

/**
 * Whether a value is what an example says: numbers to as many figures as are written, text as it stands or its lines
 * with " / " between them, `...` for what is left out at its end; of objects the keys that are named.
 */
export function isAsSaid(value, said) {
  if (typeof value === "string" && !/^"/.test(said))
    return fits(value.trimEnd().replaceAll(/\r?\n/g, " / "), said);
  const expected = evaluate(said, {});
  if (typeof expected === "string" && typeof value === "string") return fits(value, expected);
  return isLike(value, expected, said);
}

const fits = (text, said) => (said.endsWith(" ...") ? text.startsWith(said.slice(0, -4)) : text === said);

function isLike(value, expected, said) {
  if (typeof expected === "number" && typeof value === "number") return isNear(value, expected, said);
  if (typeof expected !== "object" || expected === null) return Object.is(value, expected);
  if (typeof value !== "object" || value === null) return false;
  if (Array.isArray(expected) && expected.length !== value.length) return false;
  return Object.entries(expected).every(([key, one]) => isLike(value[key], one, said));
}

/** To half of the last figure written, a little more for what is rounded twice. */
function isNear(value, expected, said) {
  const written =
    said.match(/-?\d[\d.]*(?:e[-+]?\d+)?/g)?.find((one) => Number(one) === expected) ?? `${expected}`;
  const [digits, power = "0"] = written.split("e");
  const places = digits.includes(".") ? digits.length - digits.indexOf(".") - 1 : 0;
  const half = written.includes(".") || written.includes("e") ? 0.6 * 10 ** (Number(power) - places) : 0;
  const rounded = /^-?[1-9]\d{3,}$/.test(digits) ? 0.6 : 0;
  return Math.abs(value - expected) <= Math.max(half, rounded, 1e-9 * Math.abs(expected));
}

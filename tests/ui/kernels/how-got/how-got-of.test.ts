import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Checked,
  checkDocument,
  checkPlan,
  type Plan,
  readPlan,
  sourceByKey,
} from "../../../../packages/hydraulics/src/index.js";
import type { HowGot } from "../../../../packages/ui/src/kernels/how-got/how-got.js";
import { howGotOf } from "../../../../packages/ui/src/kernels/how-got/how-got-of.js";
import { HOW_SUBJECTS, type HowSubject } from "../../../../packages/ui/src/kernels/how-got/subject.js";
import { withRandomPens } from "../../../arbitraries/plan-pens.js";
import { randomPlan } from "../../../arbitraries/plans.js";
import { cases } from "../../../runner/cases.js";
import { everySubject, figureOf } from "./every-subject.js";

interface Case {
  readonly plan: Plan;
  readonly checked: Checked;
}

const EXAMPLES = [
  "alder-bank-hen-house",
  "alder-bank-rain-barrel",
  "alder-bank-two-pens",
  "alder-bank-meat-birds",
];

function example(name: string): Case {
  const reading = readPlan(readFileSync(`docs/examples/${name}.json`, "utf8"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return checkedCase(reading.plan, 20)!;
}

function checkedCase(plan: Plan, samples: number): Case | undefined {
  const checking = checkPlan(plan, { samples });
  return checking.ok ? { plan, checked: checking.checked } : undefined;
}

function random(seed: number): Case | undefined {
  const reading = checkDocument(withRandomPens(randomPlan(seed) as unknown as Plan, seed));
  return reading.ok ? checkedCase(reading.plan, seed % 3 === 0 ? 5 : 0) : undefined;
}

/** Random plans, and every subject of each (of many drinkers, some). */
const RANDOM = Array.from({ length: 45 }, (_, seed) => random(seed)).filter((one) => one !== undefined);
const ALL = [...EXAMPLES.map(example), ...RANDOM];

const told = new Map<Case, Map<string, HowGot | undefined>>();

/** howGotOf, which for the same is not asked twice: many numbers lead on to the same one. */
function tell(subject: HowSubject, one: Case, system: "metric" | "us" = "metric"): HowGot | undefined {
  const ofCase = told.get(one) ?? new Map<string, HowGot | undefined>();
  told.set(one, ofCase);
  const key = `${system} ${JSON.stringify(subject)}`;
  if (!ofCase.has(key)) ofCase.set(key, howGotOf(subject, one.checked, one.plan, system));
  return ofCase.get(key);
}

function* explained(): Generator<{ subject: HowSubject; how: HowGot; one: Case }> {
  for (const one of ALL) {
    const every = Math.max(1, Math.floor(one.checked.drinkers.length / 7));
    for (const subject of everySubject(one.checked, every)) {
      yield { subject, how: tell(subject, one)!, one };
    }
  }
}

const EXPLAINED = [...explained()];

const textOf = (how: HowGot): string =>
  JSON.stringify({ ...how, steps: how.steps.map(({ formula, filled }) => ({ formula, filled })) });

describe("howGotOf(every subject of the examples and of random plans)", () => {
  test("there are enough plans, and every kind of subject is provoked", () => {
    expect(RANDOM.length).toBeGreaterThan(35);
    const seen = new Set(EXPLAINED.map(({ subject }) => subject.of));
    expect([...seen].sort()).toEqual([...HOW_SUBJECTS].sort());
  });

  test("the first formula comes to the figure that the check came to", () => {
    let compared = 0;
    for (const { subject, how, one } of EXPLAINED) {
      const figure = figureOf(subject, one.checked);
      const first = how.steps[0];
      if (figure === undefined || first === undefined) continue;
      compared++;
      const tolerance = leastDifference(subject) + 2e-6 * Math.abs(figure);
      const name = one.checked.line.name;
      expect([
        name,
        subject,
        Math.abs(first.value - figure) <= tolerance ? "agrees" : [first.value, figure],
      ]).toEqual([name, subject, "agrees"]);
    }
    expect(compared).toBeGreaterThan(4000);
  });

  test("parts add up to the first formula's figure", () => {
    let compared = 0;
    for (const { subject, how } of EXPLAINED) {
      if (how.parts === undefined || how.steps.length === 0 || subject.of === "drinkerCertainty") continue;
      const total = how.parts.rows.reduce((all, { value }) => all + value, 0);
      const goal =
        subject.of === "drinkerHead"
          ? how.steps[0]!.terms.find(({ symbol }) => symbol === "lost in the pipe")!.value
          : how.steps[0]!.value;
      compared++;
      expect([
        subject,
        Math.abs(total - goal) <= 1e-7 + 1e-6 * Math.abs(goal) ? "agrees" : [total, goal],
      ]).toEqual([subject, "agrees"]);
    }
    expect(compared).toBeGreaterThan(400);
  });

  test("nothing shown is a hole: no NaN, undefined, or missing figure where the line was solved", () => {
    for (const { subject, how, one } of EXPLAINED) {
      const isSolved = Object.values(one.checked.solutions).every((laws) =>
        Object.values(laws).every(({ outcome }) => outcome === "solved"),
      );
      const text = textOf(how);
      expect([subject, /NaN|undefined|Infinity|\[object|null/.exec(text)?.[0]]).toEqual([subject, undefined]);
      if (isSolved) expect([subject, /no figure/.exec(text)?.[0]]).toEqual([subject, undefined]);
      expect(how.title).not.toBe("");
      expect(how.result).not.toBe("");
    }
  });

  test("every source it names is in the table of sources", () => {
    const keys = new Set<string>();
    for (const { how } of EXPLAINED) {
      for (const key of how.sources) keys.add(key);
      for (const { source } of [...(how.parts?.rows ?? []), ...(how.listed?.rows ?? [])])
        if (source !== undefined) keys.add(source);
    }
    expect([...keys].filter((key) => sourceByKey(key) === undefined)).toEqual([]);
    expect(keys.size).toBeGreaterThan(12);
  });

  test("every number that leads on leads to a subject that is there", () => {
    const led = EXPLAINED.flatMap(({ how, one }) =>
      how.steps
        .flatMap(({ terms }) => terms)
        .flatMap(({ from }) => (from === undefined ? [] : [{ from, one }])),
    );
    expect(led.length).toBeGreaterThan(4000);
    expect(led.filter(({ from, one }) => tell(from, one) === undefined).map(({ from }) => from)).toEqual([]);
  });

  test("the figure that a term leads to is the term's own", () => {
    for (const { subject, how, one } of EXPLAINED) {
      for (const { from, value, symbol } of inSi(how).flatMap(({ terms }) => terms)) {
        const figure = from === undefined ? undefined : figureOf(from, one.checked);
        if (figure === undefined) continue;
        expect([
          subject,
          symbol,
          Math.abs(figure - value) <= 1e-6 + 1e-6 * Math.abs(figure) ? "agrees" : [figure, value],
        ]).toEqual([subject, symbol, "agrees"]);
      }
    }
  });
});

/** Steps whose numbers are SI: not those of a law that holds in certain units only. */
const inSi = (how: HowGot) => how.steps.filter(({ formula }) => !formula.includes("L and h in"));

/** Differences that mean nothing: rounding of the solver, and of tables. In SI. */
function leastDifference({ of }: HowSubject): number {
  if (of === "runBore") return 6e-6;
  return ["drinkerFlow", "runFlow", "sourceDraw", "sourceFeed"].includes(of) ? 1e-12 : 1e-8;
}

const METRIC_UNIT =
  /\d\s?(?:mm|cm|m|km|mL|L|m³|mL\/min|L\/min|kg|kg\/m³|°C|m\/s|cm\/s|mm²\/s|m\/s²|mPa s)(?![\w²³/])/;
const US_UNIT =
  /\d\s?(?:in|ft|fl oz|gal|fl oz\/min|gal\/min|lb|lb\/gal|°F|ft\/s|in²\/s|ft\/s²|lb\/\(ft s\))(?![\w²³/])/;
/** Names and what was typed are shown as they are, in quotation marks; titles of pipes carry sizes of the trade. */
const withoutQuoted = (text: string) => text.replace(/“[^”]*”/g, "“”");

test.each(["metric", "us"] as const)("howGotOf(%s) shows every unit in the system asked for", (system) => {
  const alien = system === "us" ? METRIC_UNIT : US_UNIT;
  const own = system === "us" ? US_UNIT : METRIC_UNIT;
  let shown = 0;
  for (const one of ALL.slice(0, 20)) {
    for (const subject of everySubject(one.checked, 5)) {
      const text = withoutQuoted(textOf(tell(subject, one, system)!));
      expect([subject, alien.exec(text)?.[0]]).toEqual([subject, undefined]);
      if (own.test(text)) shown++;
    }
  }
  expect(shown).toBeGreaterThan(500);
});

test("howGotOf(formulas) come to the same in either system of units", () => {
  for (const one of ALL.slice(0, 15)) {
    for (const subject of everySubject(one.checked, 5)) {
      const [metric, us] = (["metric", "us"] as const).map((system) => tell(subject, one, system)!.steps);
      expect(us!.length).toBe(metric!.length);
      us!.forEach(({ value }, at) => {
        // The flow at 1 m is another number than the flow at 1 ft.
        if (/^flow (?:at|of)/.test(us![at]!.formula)) return;
        expect(Math.abs(value - metric![at]!.value)).toBeLessThanOrEqual(1e-12 + 1e-9 * Math.abs(value));
      });
    }
  }
});

test("howGotOf(a part that is gone) is undefined, and no older or newer plan makes it throw", () => {
  const [one, other] = [example(EXAMPLES[0]!), example(EXAMPLES[2]!)];
  expect(howGotOf({ of: "verdict", drinker: 9999 }, one.checked, one.plan, "metric")).toBeUndefined();
  expect(howGotOf({ of: "runFall", run: 99 }, one.checked, one.plan, "metric")).toBeUndefined();
  expect(howGotOf({ of: "sourceMass", source: 9 }, one.checked, one.plan, "metric")).toBeUndefined();
  expect(howGotOf({ of: "pointHeight", point: 1e6 }, one.checked, one.plan, "metric")).toBeUndefined();
  expect(howGotOf({ of: "filling", finding: 99 }, one.checked, one.plan, "metric")).toBeUndefined();
  expect(howGotOf({ of: "default", used: 999 }, one.checked, one.plan, "metric")).toBeUndefined();
  for (const subject of everySubject(one.checked)) howGotOf(subject, one.checked, other.plan, "metric");
  for (const subject of everySubject(other.checked)) howGotOf(subject, other.checked, one.plan, "us");
  for (const subject of everySubject(one.checked)) howGotOf(subject, one.checked, undefined, "us");
});

test("howGotOf(line that could not be solved) shows no figure rather than a wrong one", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: ALL.length - 1 }), (at) => {
      const { plan, checked } = ALL[at]!;
      const holes = unsolved(checked);
      for (const subject of everySubject(holes, 6)) {
        expect(textOf(howGotOf(subject, holes, plan, "metric")!)).not.toMatch(/NaN|Infinity|undefined/);
      }
    }),
    cases(10),
  );
});

/** The same check with holes where the solver left no number. */
function unsolved(checked: Checked): Checked {
  const nothing = (array: Float64Array) => array.map(() => Number.NaN);
  const solutions = Object.fromEntries(
    Object.entries(checked.solutions).map(([moment, laws]) => [
      moment,
      Object.fromEntries(
        Object.entries(laws).map(([law, solution]) => [
          law,
          {
            ...solution,
            outcome: "stalled",
            head: nothing(solution.head),
            flow: nothing(solution.flow),
            drinkerFlow: nothing(solution.drinkerFlow),
            sourceFlow: nothing(solution.sourceFlow),
            feedFlow: nothing(solution.feedFlow),
          },
        ]),
      ),
    ]),
  ) as unknown as Checked["solutions"];
  const readings = <Reading>(reading: Reading): Reading => ({
    ...reading,
    staticHead: NaN,
    flowingHead: NaN,
    flow: NaN,
  });
  const drinkers = checked.drinkers.map((drinker) => ({
    ...drinker,
    margin: Number.NaN,
    moments: Object.fromEntries(
      Object.entries(drinker.moments).map(([moment, laws]) => [
        moment,
        Object.fromEntries(Object.entries(laws).map(([law, reading]) => [law, readings(reading)])),
      ]),
    ) as unknown as typeof drinker.moments,
    because: { code: "notSolved", outcome: "stalled" } as const,
  }));
  return { ...checked, solutions, drinkers };
}

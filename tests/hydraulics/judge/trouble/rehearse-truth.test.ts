import { expect, test } from "vitest";
import { supposeAirAtHumps } from "../../../../packages/hydraulics/src/judge/trouble/air-causes.js";
import { askAboutTrouble } from "../../../../packages/hydraulics/src/judge/trouble/ask-about-trouble.js";
import { asBuilt, mayHappen } from "../../../../packages/hydraulics/src/judge/trouble/rehearse-truth.js";
import { randomFrom } from "../../../../packages/hydraulics/src/numerics/random.js";
import { penPlan } from "../birds/pens.js";
import { ASKED_ON, example, planOf } from "./ask.js";

function benchOf(plan = planOf(penPlan())) {
  const asking = askAboutTrouble(plan, { day: ASKED_ON });
  if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
  return asking.question.bench;
}
const made = (bench: ReturnType<typeof benchOf>, seed: number) =>
  mayHappen(bench).map((make) => make(bench, randomFrom(seed)));

test("runs of two metres and more may sag, shorter ones not: 4 to 30 cm of air for all beyond some place of the run", () => {
  const bench = benchOf();
  for (const seed of [1, 2, 3, 4]) {
    const sags = made(bench, seed).filter(({ cause }) => cause.code === "sagHoldsAir");
    // The feed is 4 m long, the hen line 3 m.
    expect(sags.map(({ cause }) => cause.id)).toEqual(["feed", "hen line"]);
    for (const { trial, cause } of sags) {
      const { airHead } = trial.severity;
      expect(airHead!).toBeGreaterThanOrEqual(0.04);
      expect(airHead!).toBeLessThanOrEqual(0.3);
      const { points } = bench.line.runs[cause.index]!;
      expect(trial.airHead![points[0]!]).toBe(0);
      expect(trial.airHead![points.at(-1)!]).toBe(airHead);
    }
  }
  // A hose of 1.5 m and a lane of 1.2 m.
  const short = made(benchOf(example("alder-bank-brooder")), 1);
  expect(short.filter(({ cause }) => cause.code === "sagHoldsAir")).toEqual([]);
});

test("a drinker with slime in it gives 2 to 40 parts in a hundred of its flow, and is one truth, whole", () => {
  const bench = benchOf();
  const slimed = [1, 2, 3, 4, 5, 6].flatMap((seed) =>
    made(bench, seed).filter(
      ({ cause, trial }) => cause.code === "drinkerBlocked" && (trial.severity.openShare ?? 0) > 0,
    ),
  );
  expect(slimed.length).toBeGreaterThan(5);
  let drawn = 0;
  for (const { cause, trial } of slimed) {
    const share = trial.severity.openShare!;
    const { coefficient } = trial.line.drinkers;
    expect(coefficient[cause.index]! / bench.line.drinkers.coefficient[cause.index]!).toBeCloseTo(share, 12);
    expect(share).toBeGreaterThanOrEqual(0.02);
    expect(share).toBeLessThanOrEqual(0.4);
    // Those of the causes that are looked for are a quarter each.
    if (trial.weight === 1) drawn += 1;
    else expect(trial.weight).toBe(0.25);
  }
  expect(drawn).toBeGreaterThan(0);
});

test("a line as built is a little off from its plan, and its levels stay between outlet and full", () => {
  const bench = benchOf();
  const built = asBuilt(bench, randomFrom(5));
  const [source] = bench.line.sources;
  expect(built.levels[0]!).toBeGreaterThan(source!.outlet);
  expect(built.levels[0]!).toBeLessThanOrEqual(source!.levels.full);
  built.line.drinkers.height.forEach((height, d) => {
    expect(Math.abs(height - bench.line.drinkers.height[d]!)).toBeLessThan(0.06);
  });
  expect([...built.line.drinkers.height]).not.toEqual([...bench.line.drinkers.height]);
});

test("supposeAirAtHumps supposes nothing of a line without humps", () => {
  expect(supposeAirAtHumps(benchOf(example("alder-bank-brooder")))).toBeUndefined();
});

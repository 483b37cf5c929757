import { expect, test } from "vitest";
import { askAboutTrouble } from "../../../../packages/hydraulics/src/judge/trouble/ask-about-trouble.js";
import { supposeStoppage } from "../../../../packages/hydraulics/src/judge/trouble/pipe-causes.js";
import { penPlan } from "../birds/pens.js";
import { planOf } from "./ask.js";

test("supposeStoppage of a short run tries each of its pieces of pipe", () => {
  const asking = askAboutTrouble(planOf({ ...penPlan({ drinkers: { count: 3 } }), pens: undefined }));
  if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
  const { bench } = asking.question;
  const run = bench.line.runs[1]!;
  const supposed = supposeStoppage(bench, 1, []);
  expect(supposed!.cause).toMatchObject({ code: "runBlocked", id: "hen line" });
  expect(run.segmentCount).toBeGreaterThan(2);
  const places = supposed!.trials.map(({ severity }) => severity.along);
  expect(new Set(places).size).toBe(run.segmentCount);
  expect(supposed!.trials.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9);
});

test("supposeStoppage stops pipe alone, never a valve; a narrow place loses (1 / (C_d a))² velocity heads", () => {
  const plan = { ...penPlan({ drinkers: { count: 3 } }), pens: undefined };
  const valved = { ...plan, runs: [plan.runs[0], { ...plan.runs[1], oneWay: true }] };
  const asking = askAboutTrouble(planOf(valved));
  if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
  const { bench } = asking.question;
  const { segments } = bench.line;
  const { trials } = supposeStoppage(bench, 1, []);
  for (const { line, severity } of trials) {
    const shut = [...line.segments.shut.keys()].filter((s) => line.segments.shut[s] !== segments.shut[s]);
    const narrow = [...segments.kInfinity.keys()].filter(
      (s) => line.segments.kInfinity[s] !== segments.kInfinity[s],
    );
    const [at, ...more] = [...shut, ...narrow];
    expect(more).toEqual([]);
    expect(segments.kind[at!]).toBe(0);
    if (severity.openShare === 0) continue;
    const lost = line.segments.kInfinity[at!]! - segments.kInfinity[at!]!;
    // Sharp-edged, some 0.61.
    expect(Math.sqrt(1 / lost) / severity.openShare!).toBeGreaterThan(0.59);
    expect(Math.sqrt(1 / lost) / severity.openShare!).toBeLessThan(0.63);
  }
});

test("supposeStoppage tries the pipe on both sides of a drinker that was looked at", () => {
  const asking = askAboutTrouble(
    planOf({ ...penPlan({ drinkers: { count: 24, every: "10 cm" } }), pens: undefined }),
  );
  if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
  const { bench } = asking.question;
  const run = bench.line.runs[1]!;
  const alongOf = (looked: readonly string[]) => {
    const signs = looked.map((id) => ({ look: "gives", at: "drinker", id, sees: "dry" }) as const);
    return new Set(supposeStoppage(bench, 1, signs).trials.map(({ severity }) => severity.along));
  };
  const d = 10;
  const at = [...run.points].indexOf(bench.line.drinkers.point[d]!);
  const beside = [run.along[at - 1]!, run.along[at]!];
  expect([...alongOf([])].filter((along) => beside.includes(along!))).not.toHaveLength(2);
  const tried = alongOf([bench.line.drinkers.id[d]!]);
  expect(beside.map((along) => tried.has(along))).toEqual([true, true]);
  // Before the first there is the run's start, which is tried anyway.
  expect(alongOf([bench.line.drinkers.id[0]!]).has(run.along[1]!)).toBe(true);
});

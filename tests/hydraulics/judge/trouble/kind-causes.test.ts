import { expect, test } from "vitest";
import { supposeSags } from "../../../../packages/hydraulics/src/judge/trouble/air-causes.js";
import { askAboutTrouble } from "../../../../packages/hydraulics/src/judge/trouble/ask-about-trouble.js";
import {
  supposeLessDrunk,
  supposeMoreDrunk,
} from "../../../../packages/hydraulics/src/judge/trouble/bird-causes.js";
import {
  supposeWeakKinds,
  supposeWornSeals,
} from "../../../../packages/hydraulics/src/judge/trouble/kind-causes.js";
import { supposeMishap } from "../../../../packages/hydraulics/src/judge/trouble/mishap-causes.js";
import {
  stalledTrials,
  waterTrials,
  withEmptySource,
} from "../../../../packages/hydraulics/src/judge/trouble/water-causes.js";
import { mishapsOf } from "../../../../packages/hydraulics/src/model/mishaps-of.js";
import { planOf } from "./ask.js";

/** A drum under roof and a lane of two kinds of drinkers, twenty hens. */
function benchOf(more: Record<string, unknown> = {}) {
  const asking = askAboutTrouble(
    planOf({
      headfall: 1,
      sources: [{ id: "drum", vessel: "drum-55gal-plastic", stand: "60 cm", level: { full: "60 cm" } }],
      runs: [
        {
          ...{ id: "lane", length: "6 m", fall: "30 cm" },
          drinkers: [
            { id: "nipples", kind: "nipple-side-action", count: 3, first: "1 m", every: "1 m" },
            { id: "cups", kind: "cup-float", count: 2, first: "4 m", every: "1 m" },
          ],
        },
      ],
      pens: [{ id: "hens", birds: { kind: "hen", count: 20 } }],
      ...more,
    }),
  );
  if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
  return asking.question.bench;
}
const weightOf = (trials: readonly { readonly weight: number }[]) =>
  trials.reduce((sum, { weight }) => sum + weight, 0);
const ratios = (now: Float64Array, was: Float64Array) => [...now].map((one, d) => one / was[d]!);

test("what a kind gives less than thought is of its own drinkers alone: at most seven tenths, then half the least", () => {
  const bench = benchOf();
  const { coefficient, groups } = bench.line.drinkers;
  const weak = supposeWeakKinds(bench);
  expect(weak.map(({ cause }) => [cause.code, cause.id, cause.index])).toEqual([
    ["givesLessThanThought", "nipples", 0],
    ["givesLessThanThought", "cups", 1],
  ]);
  weak.forEach(({ trials }, g) => {
    expect(weightOf(trials)).toBe(1);
    const shares = [Math.min(0.7, groups[g]!.flowLow), groups[g]!.flowLow / 2];
    trials.forEach(({ line, severity }, k) => {
      expect(severity.openShare).toBe(shares[k]);
      const each = ratios(line.drinkers.coefficient, coefficient);
      expect(each).toEqual(
        [0, 0, 0, 1, 1].map((group) => (group === g ? expect.closeTo(shares[k]!, 12) : 1)),
      );
    });
  });
});

test("worn seals hold half or a fifth of what they did, those of one kind", () => {
  const bench = benchOf();
  const held = bench.line.drinkers.groups.map(({ holdsUpTo }) => holdsUpTo);
  const [, cups] = supposeWornSeals(bench);
  expect(cups!.cause).toEqual({ code: "sealsWorn", at: "group", id: "cups", index: 1 });
  expect(weightOf(cups!.trials)).toBe(1);
  expect(cups!.trials.map(({ line }) => line.drinkers.groups.map(({ holdsUpTo }) => holdsUpTo))).toEqual([
    [held[0], held[1]! / 2],
    [held[0], expect.closeTo(held[1]! / 5, 12)],
  ]);
});

test("less drunk is six tenths or three of every batch; more is each batch, or the heat, as likely", () => {
  const bench = benchOf({ weather: { high: "24 degC", hotSpell: { high: "36 degC", days: 4 } } });
  const less = supposeLessDrunk(bench)!;
  expect(weightOf(less.trials)).toBe(1);
  expect(less.trials.map(({ flock }) => flock!.pens[0]!.batches[0]!.count)).toEqual([12, 6]);
  const more = supposeMoreDrunk(bench, mishapsOf(bench.asked.plan, bench.line, bench.asked.flock))!;
  expect(more.trials.length).toBeGreaterThan(1);
  expect(weightOf(more.trials)).toBeCloseTo(1, 12);
  const { atWork } = bench.asked.judged.moments.named.fullBusiest;
  for (const trial of more.trials) expect(trial.atWork).toEqual(atWork);
  const nobody = benchOf({ pens: undefined });
  expect(supposeLessDrunk(nobody)).toBeUndefined();
  expect(
    supposeMoreDrunk(nobody, mishapsOf(nobody.asked.plan, nobody.line, nobody.asked.flock)),
  ).toBeUndefined();
});

test("low water is two fifths, three quarters or all of what the source could still give, gone", () => {
  const bench = benchOf();
  const [source] = bench.line.sources;
  const over = bench.levels[0]! - source!.outlet;
  const trials = waterTrials(bench, 0, { notFilled: 0 });
  expect(weightOf(trials)).toBeCloseTo(1, 12);
  expect(trials.map(({ severity }) => severity.below! / over)).toEqual(
    [0.4, 0.75, 1].map((share) => expect.closeTo(share, 9)),
  );
  expect(trials.map(({ isAlike }) => isAlike)).toEqual([true, true, false]);
  expect(trials.map(({ levels }) => levels![0]! - source!.outlet)).toEqual(
    [0.6, 0.25, 0].map((share) => expect.closeTo(share * over, 9)),
  );
  for (const { notFilled } of trials) expect(notFilled).toBe(0);
  // Only what begins at the source is cut off.
  const { from, shut } = trials[2]!.line.segments;
  expect([...shut]).toEqual([...from].map((p) => (p === source!.point ? 1 : 0)));
});

test("withEmptySource leaves shut what is shut, and shuts a pipe that ends at the source as well", () => {
  const { line } = benchOf();
  const { from, to } = line.segments;
  const last = line.segments.count - 1;
  const shut = line.segments.shut.slice();
  shut[last] = 1;
  const turned = { ...line, segments: { ...line.segments, from: to, to: from, shut } };
  const cut = withEmptySource(turned, 0).segments.shut;
  expect([...cut]).toEqual([...from].map((p, s) => (p === line.sources[0]!.point || s === last ? 1 : 0)));
});

test("a source that gets no air presses with nothing over its lowest drinker, or with an eighth of what it did", () => {
  const bench = benchOf();
  const lowest = Math.min(...bench.line.drinkers.height);
  const trials = stalledTrials(bench, 0);
  expect(weightOf(trials)).toBe(1);
  const surface = bench.line.sources[0]!.base + bench.levels[0]!;
  expect(trials.map(({ heads }) => heads![0])).toEqual([
    expect.closeTo(lowest, 9),
    expect.closeTo(lowest + 0.12 * (surface - lowest), 9),
  ]);
});

test("a blocked drinker gives nothing, or 8 or 30 parts in a hundred, itself alone", () => {
  const bench = benchOf();
  const { cause, trials } = supposeMishap(bench, { kind: "drinkerBlocked", drinker: 1 })!;
  expect(cause).toEqual({ code: "drinkerBlocked", at: "drinker", id: bench.line.drinkers.id[1], index: 1 });
  expect(trials.map(({ weight }) => weight)).toEqual([0.5, 0.25, 0.25]);
  expect(trials.map(({ severity }) => severity.openShare)).toEqual([0, 0.08, 0.3]);
  const was = bench.line.drinkers.coefficient;
  expect(trials.slice(1).map(({ line }) => ratios(line.drinkers.coefficient, was))).toEqual(
    [0.08, 0.3].map((share) => [1, expect.closeTo(share, 12), 1, 1, 1]),
  );
});

test("a tipped cup leaves a tenth to be drunk; mishaps of birds and whole runs are told as other causes", () => {
  const bench = benchOf();
  const tipped = supposeMishap(bench, { kind: "cupTipped", drinker: 3 })!;
  expect(tipped.trials).toHaveLength(1);
  expect(tipped.trials[0]!.spilt).toEqual({ drinker: 3, left: 0.1 });
  expect(supposeMishap(bench, { kind: "runBlocked", run: 0 })).toBeUndefined();
  expect(supposeMishap(bench, { kind: "hottestWeek" })).toBeUndefined();
});

test("a sag holds 3, 10 or 25 cm of air for all beyond it, at the run's start or its middle", () => {
  const bench = benchOf();
  const [sag, ...more] = supposeSags(bench);
  expect(more).toEqual([]);
  const { points, along } = bench.line.runs[0]!;
  expect(weightOf(sag!.trials)).toBeCloseTo(1, 12);
  expect(sag!.trials.map(({ severity }) => severity.airHead)).toEqual([0.03, 0.1, 0.25, 0.03, 0.1, 0.25]);
  const half = Math.ceil(points.length / 2);
  sag!.trials.forEach(({ severity, airHead }, k) => {
    const from = k < 3 ? 1 : half;
    expect(severity.along).toBe(along[from - 1]);
    points.forEach((point, j) => {
      expect(airHead![point]).toBe(j >= from ? severity.airHead : 0);
    });
  });
});

import { expect, test } from "vitest";
import { findLimiter, withDisc } from "../../../../packages/hydraulics/src/judge/mishaps/limiter.js";
import { weighLine } from "../../../../packages/hydraulics/src/judge/weigh-line.js";
import { asked } from "../../../laws/asked-plans.js";
import { headerTank } from "../header-tank.js";

test("withDisc adds (A / (0.61 a))² velocity heads to the first piece of its run, and nothing elsewhere", () => {
  const { line } = asked(headerTank).judged;
  const at = line.runs[1]!.firstSegment;
  const bore = line.segments.bore[at]!;
  const { kInfinity } = withDisc(line, 1, bore / 2).segments;
  // A hole of half the bore has a quarter of its area.
  expect(kInfinity[at]! - line.segments.kInfinity[at]!).toBeCloseTo((4 / 0.61) ** 2, 9);
  expect([...kInfinity].filter((k, s) => k !== line.segments.kInfinity[s])).toHaveLength(1);
});

test("findLimiter lets a header tank keep up with its drinkers: half a millimetre less, and it falls behind", () => {
  const { judged } = asked(headerTank);
  const feedOf = (hole: number) => {
    const { feedFlow, sourceFlow } = weighLine(withDisc(judged.line, 0, hole)).solved.darcyWeisbach
      .lowestBusiest.solution;
    return { lets: feedFlow[1]!, takes: sourceFlow[1]! };
  };
  const { hole, run } = findLimiter(judged, 0)!;
  expect(run).toBe(0);
  expect(feedOf(hole).lets).toBeGreaterThanOrEqual(feedOf(hole).takes);
  expect(feedOf(hole - 0.0005).lets).toBeLessThan(feedOf(hole - 0.0005).takes);
});

test("findLimiter finds none in a bore of half a millimetre, and the widest hole is less than the bore", () => {
  const { judged } = asked(headerTank);
  const narrowed = (bore: number) => ({
    ...judged,
    line: { ...judged.line, runs: judged.line.runs.map((run) => ({ ...run, bore })) },
  });
  expect(findLimiter(narrowed(0.0005), 0)).toBeUndefined();
  // The pipe itself stays as wide as it was: only the bit is chosen by the bore that is told.
  expect(findLimiter(narrowed(0.001), 0)?.hole ?? 0.0005).toBe(0.0005);
});

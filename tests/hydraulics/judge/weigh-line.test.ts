import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { type JudgedLine, judgeLine } from "../../../packages/hydraulics/src/judge/judge-line.js";
import { type WeighedLine, weighLine } from "../../../packages/hydraulics/src/judge/weigh-line.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import type { Flock } from "../../../packages/hydraulics/src/model/flock.js";
import { mishapsOf } from "../../../packages/hydraulics/src/model/mishaps-of.js";
import { withMishap } from "../../../packages/hydraulics/src/model/with-mishap.js";
import { plans } from "../../arbitraries/plans.js";
import { farthestApart, SAME_HEAD } from "../../laws/drawn-lines.js";
import { headerTank } from "./header-tank.js";
import { planOf } from "./trouble/ask.js";

const nobody = { pens: [] } as unknown as Flock;

function expectAlike(judged: JudgedLine, weighed: WeighedLine) {
  const verdicts = ({ drinkers }: WeighedLine) =>
    drinkers.map(({ verdict, also }) => [verdict, also.map((one) => one.verdict)]);
  expect(verdicts(weighed)).toEqual(verdicts(judged));
  expect(weighed.moments).toEqual(judged.moments);
  const [low, lowWeighed] = [judged, weighed].map(({ solved }) => solved.darcyWeisbach.lowestBusiest);
  expect(farthestApart(lowWeighed!.idle.head, low!.idle.head)).toBeLessThan(SAME_HEAD);
  expect(farthestApart(lowWeighed!.solution.head, low!.solution.head)).toBeLessThan(SAME_HEAD);
  expect(farthestApart(weighed.filling.airHead, judged.filling.airHead)).toBe(0);
}

describe("weighLine of any plan, as it is and after any of its mishaps", () => {
  it("gives the verdicts of judgeLine, the heads within a hair, and what is left by filling", () => {
    fc.assert(
      fc.property(plans(), fc.nat(), (data, choice) => {
        const reading = checkDocument(data);
        if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
        const built = buildLine(reading.plan);
        if (!built.ok) throw new Error(JSON.stringify(built.problems));
        const asBuilt = judgeLine(built.line);
        const mishaps = mishapsOf(reading.plan, built.line, nobody);
        const struck = withMishap(built.line, mishaps[choice % mishaps.length]!);
        for (const line of [built.line, struck]) expectAlike(judgeLine(line), weighLine(line, asBuilt));
      }),
      { numRuns: 20 },
    );
  });
});

test("weighLine of a line in which other drinkers are at work takes nothing of that from one laid alike", () => {
  const built = buildLine(planOf(headerTank));
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const { line } = built;
  const like = weighLine(line);
  const groups = line.drinkers.groups.map((group) => ({ ...group, busiest: group.count, ordinary: 0 }));
  const busier = { ...line, drinkers: { ...line.drinkers, groups } };
  const raised = { ...line, points: { ...line.points, height: line.points.height.map((z) => z + 0.02) } };
  const apart = { ...line, sources: line.sources.map((source) => ({ ...source, feed: undefined })) };
  for (const other of [busier, raised, apart, line]) {
    const [alone, alike] = [weighLine(other), weighLine(other, like)];
    expect(alike.moments).toEqual(alone.moments);
    expect(alike.ways).toEqual(alone.ways);
    expect(alike.drinkers).toEqual(alone.drinkers);
  }
});

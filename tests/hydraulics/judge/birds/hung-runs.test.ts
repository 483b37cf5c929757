import { expect, test } from "vitest";
import { hangHeight } from "../../../../packages/hydraulics/src/birds/hang-height.js";
import { raisesOf } from "../../../../packages/hydraulics/src/judge/birds/hung-runs.js";
import { buildFlock } from "../../../../packages/hydraulics/src/model/build-flock.js";
import { buildLine } from "../../../../packages/hydraulics/src/model/build-line.js";
import type { Flock } from "../../../../packages/hydraulics/src/model/flock.js";
import { flockInDays } from "../../../../packages/hydraulics/src/model/flock-on.js";
import { hangPointsOf } from "../../../../packages/hydraulics/src/tables/bird-heights.js";
import { planOf } from "../trouble/ask.js";
import { type PenPlan, penPlan } from "./pens.js";

const CHICKS = { kind: "pullet", count: 12, age: "14 days" };
/** Where a nipple hangs for a pullet of so many days. */
const hangAt = (ageDays: number) => hangHeight(hangPointsOf("pullet"), "nipple", ageDays)!;

function hung(asked: PenPlan = {}) {
  const plan = planOf(penPlan({ birds: CHICKS, run: { hung: true }, ...asked }));
  const built = buildLine(plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const flocking = buildFlock(plan, built.line, "2026-07-04");
  if (!flocking.ok) throw new Error(JSON.stringify(flocking.problems));
  const now = flocking.flock;
  return { now, raises: (flock: Flock) => raisesOf(plan, built.line, now, flock) };
}

test("raisesOf leaves a run as it hangs on the plan's own day, however wrong", () => {
  const { now, raises } = hung({ above: "50 cm" });
  const { low, high } = hangAt(14);
  expect(raises(now)).toEqual([
    { run: "hen line", index: 1, raise: 0, height: expect.closeTo(0.5, 9), low, high },
  ]);
});

test("raisesOf takes a hung run, three weeks on, to where nipples hang for birds of five weeks", () => {
  const { now, raises } = hung({ above: "10 cm" });
  const { height, low, high } = hangAt(35);
  expect(height).toBeGreaterThan(hangAt(14).height);
  expect(raises(flockInDays(now, 21))).toEqual([
    {
      ...{ run: "hen line", index: 1, low, high },
      raise: expect.closeTo(height - 0.1, 9),
      height: expect.closeTo(height, 9),
    },
  ]);
});

test("raisesOf of a line whose height is not told takes it to hang right on the plan's day", () => {
  const { now, raises } = hung({ above: "0 cm" });
  const [raised] = raises(flockInDays(now, 21));
  expect(raised!.height).toBeUndefined();
  expect(raised!.raise).toBeCloseTo(hangAt(35).height - hangAt(14).height, 9);
});

test("raisesOf hangs a run for the smallest birds that reach it, and not for those of other runs", () => {
  const nipples = (id: string, first: string) => ({ id, kind: "nipple-side-action", count: 2, first });
  const { now, raises } = hung({
    run: { hung: true, drinkers: [nipples("near", "50 cm"), nipples("far", "2 m")] },
    more: {
      pens: [
        { id: "old", birds: { kind: "pullet", count: 6, age: "60 days" }, drinkers: ["near"] },
        { id: "young", birds: CHICKS, drinkers: ["far"] },
      ],
    },
  });
  expect(raises(flockInDays(now, 7))[0]!.low).toBe(hangAt(21).low);
  const elsewhere = { ...now, pens: now.pens.map((pen, p) => (p === 1 ? { ...pen, drinkers: [] } : pen)) };
  expect(raises(flockInDays(elsewhere, 7))[0]!.low).toBe(hangAt(67).low);
});

test("raisesOf sees another day in another number of birds, too", () => {
  const { now, raises } = hung({ above: "50 cm" });
  const fewer = {
    ...now,
    pens: now.pens.map((pen) => ({ ...pen, batches: pen.batches.map((one) => ({ ...one, count: 11 })) })),
  };
  expect(raises(fewer)[0]!.raise).toBeCloseTo(hangAt(14).height - 0.5, 9);
});

test("raisesOf tells nothing of runs that do not hang, have no drinkers, or serve nobody", () => {
  expect(hung({ run: {} }).raises(hung().now)).toEqual([]);
  const gone = hung({ birds: { kind: "pullet", count: 12, hatched: "2026-08-01" } });
  expect(gone.raises(gone.now)).toEqual([]);
});

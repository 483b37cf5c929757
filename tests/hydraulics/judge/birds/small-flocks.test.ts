import { expect, test } from "vitest";
import { hangHeight } from "../../../../packages/hydraulics/src/birds/hang-height.js";
import { needAtAge } from "../../../../packages/hydraulics/src/judge/birds/bird-needs.js";
import { birdsForPlan } from "../../../../packages/hydraulics/src/judge/birds/birds-for-plan.js";
import { drinkersForPlan } from "../../../../packages/hydraulics/src/judge/birds/drinkers-for-plan.js";
import { hangAtForBirds } from "../../../../packages/hydraulics/src/judge/birds/hang-range.js";
import { judgeWeeks } from "../../../../packages/hydraulics/src/judge/birds/weeks.js";
import { hangPointsOf } from "../../../../packages/hydraulics/src/tables/bird-heights.js";
import { birdById } from "../../../../packages/hydraulics/src/tables/birds.js";
import { planOf } from "../trouble/ask.js";
import { penPlan } from "./pens.js";

const pullets = (ageDays: number, count = 5) => ({
  kind: birdById("pullet")!,
  index: 0,
  count,
  ageDays,
  lay: 0.9,
});
const penOf = (...batches: ReturnType<typeof pullets>[]) => ({ id: "pen", index: 0, batches, drinkers: [] });

test("hangAtForBirds hangs for the smallest that are there, in whatever order they are told", () => {
  const young = hangHeight(hangPointsOf("pullet"), "nipple", 14)!;
  for (const pen of [penOf(pullets(14), pullets(60)), penOf(pullets(60), pullets(14))])
    expect(hangAtForBirds(pen, "nipple")).toEqual({ ...young, ageDays: 14 });
  expect(hangAtForBirds(penOf(pullets(60), pullets(14, 0)), "nipple")!.ageDays).toBe(60);
  expect(hangAtForBirds(penOf(pullets(-3)), "nipple")).toBeUndefined();
});

const answered = <T>(answer: ({ ok: true } & T) | { ok: false; problems: unknown }): T => {
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer;
};

test("a pen whose birds have yet to hatch needs no drinkers, and has enough of them", () => {
  const plan = planOf(penPlan({ birds: { kind: "pullet", count: 9, hatched: "2026-08-01" } }));
  const { drinkers } = answered(drinkersForPlan(plan, { day: "2026-07-04" }));
  expect(drinkers.pens[0]).toMatchObject({ covered: 1, isSuggestion: false });
  expect(drinkers.pens[0]!.devices[0]).toMatchObject({ needed: 0, because: "nobody", has: 8 });
  const { birds } = answered(birdsForPlan(plan, { day: "2026-07-04", weeks: 5 }));
  expect([birds.pens[0]!.birds, birds.weeks.length]).toEqual([0, 6]);
  expect(birds.weeks.map(({ ages }) => ages[0]!.ageDays)).toEqual([-28, -21, -14, -7, 0, 7]);
  expect([birds.weeks[0]!.now.size, birds.weeks[5]!.now.size > 0]).toEqual([0, true]);
  const [nipples] = birds.pens[0]!.hangs;
  const none = undefined;
  expect(nipples!.weeks.map((hang) => hang?.ageDays)).toEqual([none, none, none, none, 0, 7]);
});

test("the hot day is the plan's spell, else of 32 degC, or of its own high where that is hotter, its night as much cooler", () => {
  const hotDay = (weather: object) =>
    answered(birdsForPlan(planOf(penPlan({ more: { weather } })), { day: "2026-07-04", weeks: 0 })).birds
      .hotDay;
  expect(hotDay({ high: "24 degC", low: "14 degC" })).toEqual({ high: 32, low: 22, isTaken: true });
  expect(hotDay({ high: "35 degC", low: "25 degC" })).toEqual({ high: 35, low: 25, isTaken: true });
  const spell = { high: "24 degC", hotSpell: { high: "30 degC", low: "21 degC" } };
  expect(hotDay(spell)).toEqual({ high: 30, low: 21, isTaken: false });
});

test("birds drown in open water until so old, and no longer than that", () => {
  const { birds } = answered(
    birdsForPlan(planOf(penPlan({ birds: { kind: "pullet", count: 9, age: "2 days" } })), { weeks: 0 }),
  );
  const [batch] = birds.pens[0]!.batches;
  expect(batch!.drownsFor).toBe(birdById("pullet")!.drownsUntilDays - 2);
  const grown = answered(birdsForPlan(planOf(penPlan()), { weeks: 0 })).birds;
  expect(grown.pens[0]!.batches[0]!.drownsFor).toBe(0);
});

test("judgeWeeks tells how much of its weeks is done, the hot ones after the usual", () => {
  const shares = (more: object) => {
    const told: number[] = [];
    answered(
      judgeWeeks(planOf(penPlan({ more: more as never })), {
        weeks: 1,
        progress: (share) => void told.push(share),
      }),
    );
    return told;
  };
  expect(shares({})).toEqual([0.5, 1]);
  expect(shares({ weather: { high: "21 degC", hotSpell: { high: "35 degC" } } })).toEqual([
    0.25, 0.5, 0.75, 1,
  ]);
});

test("birds want their flow from the day they hatch, and none before", () => {
  const pullet = birdById("pullet")!;
  expect(needAtAge(pullet, -1)).toBe(0);
  expect(needAtAge(pullet, 0)).toBeGreaterThan(0);
  expect(needAtAge(pullet, 100)).toBeGreaterThan(needAtAge(pullet, 0));
});

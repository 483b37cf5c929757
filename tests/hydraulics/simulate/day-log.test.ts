import { expect, test } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { settingOfPlan } from "../../../packages/hydraulics/src/judge/time/simulate-day.js";
import { runDay } from "../../../packages/hydraulics/src/simulate/day.js";
import { DAY_EVENTS, type DayResult } from "../../../packages/hydraulics/src/simulate/day-result.js";
import { penPlan } from "../judge/birds/pens.js";

function dayOf(birds: number, drinkers: number, above = "30 cm"): DayResult {
  const reading = checkDocument(
    penPlan({ birds: { kind: "hen", count: birds }, drinkers: { count: drinkers }, above }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const set = settingOfPlan(reading.plan, { day: "2026-07-04" });
  if (!set.ok) throw new Error(JSON.stringify(set.problems));
  return runDay(set.setting, { seed: 4, figure: "expect", record: true });
}

/** What the events of a day alone say of its drinkers, and of how many drink at once. */
function countedOf({ events, drinkers }: DayResult) {
  const at = drinkers.map(() => 0);
  const [bouts, busy, since] = [[...at], [...at], [...at]];
  let [now, most, mostAt] = [0, 0, 0];
  for (let k = 0; k < events!.count; k += 1) {
    const [time, d] = [events!.time[k]!, events!.drinker[k]!];
    if (events!.kind[k] === DAY_EVENTS.begins) {
      bouts[d]! += 1;
      if (at[d] === 0) since[d] = time;
      at[d]! += 1;
      now += 1;
      if (now > most) [most, mostAt] = [now, time];
    } else if (events!.kind[k] === DAY_EVENTS.ends) {
      at[d]! -= 1;
      now -= 1;
      if (at[d] === 0) busy[d]! += time - since[d]!;
    }
  }
  return { bouts, busy, most, mostAt };
}

test("what a day tells of its drinkers is what its events say: bouts, time at work, the most at once and when", () => {
  const day = dayOf(30, 2);
  const { bouts, busy, most, mostAt } = countedOf(day);
  expect(day.drinkers.map((one) => one.bouts)).toEqual(bouts);
  expect(bouts.reduce((sum, one) => sum + one, 0)).toBe(day.birds.reduce((sum, bird) => sum + bird.bouts, 0));
  expect(day.drinkers.map((one) => one.busy)).toEqual(busy.map((time) => expect.closeTo(time, 6)));
  expect(day.pens[0]).toMatchObject({ mostAtOnce: most, mostAt });
});

test("what stands in the sources at the end, and at the beginning, is what the balance says", () => {
  const { balance, sources } = dayOf(8, 2);
  const sum = (of: "start" | "end" | "poured" | "drawn") =>
    sources.reduce((total, source) => total + source[of], 0);
  for (const of of ["start", "end", "poured", "drawn"] as const) expect(sum(of)).toBeCloseTo(balance[of], 12);
});

test("the least that a drinker passed is less than what it passes on the mean, and not nothing", () => {
  for (const { leastFlow, drawn, busy } of dayOf(30, 2).drinkers) {
    expect(leastFlow).toBeGreaterThan(0);
    // Half of what a worked nipple passes is taken in; what is spilled with it is a twentieth.
    expect(0.5 * leastFlow).toBeLessThan(drawn / busy);
    expect(leastFlow).toBeGreaterThan(drawn / busy);
  }
});

test("a set of drinkers at work is solved once and asked for often", () => {
  const { solves, asked, unsolved } = dayOf(30, 2).solver;
  // Three sets of two drinkers, at a level that falls by less than 10 cm: two or three heights.
  expect(solves).toBeGreaterThanOrEqual(3);
  expect(solves).toBeLessThanOrEqual(9);
  expect(asked).toBeGreaterThan(100);
  expect(unsolved).toBe(0);
});

test("a drinker that gives nothing passed nothing", () => {
  expect(dayOf(3, 2, "2 m").drinkers.map(({ leastFlow, bouts }) => [leastFlow, bouts])).toEqual([
    [0, 0],
    [0, 0],
  ]);
});

test("what birds waited in all is what its events say: from waiting until drinking or giving up", () => {
  const { events, birds } = dayOf(60, 1);
  const since = new Map<number, number>();
  let waited = 0;
  for (let k = 0; k < events!.count; k += 1) {
    const [time, bird] = [events!.time[k]!, events!.bird[k]!];
    if (events!.kind[k] === DAY_EVENTS.waits) since.set(bird, time);
    else if (since.has(bird)) {
      waited += time - since.get(bird)!;
      since.delete(bird);
    }
  }
  expect(waited).toBeGreaterThan(100);
  expect(birds.reduce((sum, bird) => sum + bird.waited, 0)).toBeCloseTo(waited, 6);
});

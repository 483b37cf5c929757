import { type Plan, yearForPlan } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import { costOfLending } from "../../packages/hydraulics/src/numerics/lending/lending.js";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { allBirds } from "../../packages/hydraulics/src/tables/birds.js";
import { allWaterers } from "../../packages/hydraulics/src/tables/waterers.js";
import { dayNumber, writeDay } from "../../packages/hydraulics/src/units/day.js";
import { chooserOf } from "../arbitraries/typed.js";

/** More of them: `HEADFALL_CASES=200 npx vitest run --config tests/vitest.config.ts --project node tests/laws/year.law.test.ts`. */
const CASES = Number(process.env["HEADFALL_CASES"] ?? 12);
const START = dayNumber(2026, 3, 2);

/** A yard without a line: pens whose batches come and go, and a small kit. */
function yard(seed: number): Plan {
  const choose = chooserOf(randomFrom(seed));
  const day = (from: number, to: number) => writeDay(START + choose.whole(from, to));
  const pens = Array.from({ length: choose.whole(1, 3) }, (_, p) => ({
    id: `pen ${p + 1}`,
    drinkers: [],
    birds: Array.from({ length: choose.whole(1, 2) }, () => ({
      kind: choose.oneOf(allBirds).id,
      count: choose.whole(1, 40),
      age: `${choose.whole(0, 30)} weeks`,
      ...(choose.chance(0.5) ? { arrives: day(1, 30) } : {}),
      ...(choose.chance(0.5) ? { leaves: day(31, 80) } : {}),
    })),
  }));
  const reading = checkDocument({
    headfall: 1,
    day: writeDay(START),
    sources: [],
    runs: [],
    pens,
    kit: Array.from({ length: choose.whole(1, 3) }, () => ({
      kind: choose.oneOf(allWaterers).id,
      count: choose.whole(1, 3),
    })),
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

function kitOf(plan: Plan) {
  const answer = yearForPlan(plan, { weeks: 10 });
  if (!answer.ok || answer.year.kit === undefined) throw new Error("no year");
  return { year: answer.year, kit: answer.year.kit };
}

test("a year's kit keeps to what there is and suits; its cost is that of what it says; more of it never leaves more short", () => {
  for (let seed = 1; seed <= CASES; seed += 1) {
    const plan = yard(seed);
    const { year, kit } = kitOf(plan);
    kit.lent.forEach((pens, t) => {
      kit.kinds.forEach(({ count }, k) => {
        expect([seed, pens.reduce((sum, own) => sum + own[k]!, 0) <= count]).toEqual([seed, true]);
        pens.forEach((own, p) => {
          const isEmpty = year.periods[t]!.pens[p]!.birds === 0;
          expect([seed, own[k] === 0 || isEmpty || kit.serves[t]![p]![k] !== undefined]).toEqual([
            seed,
            true,
          ]);
        });
      });
    });
    const cost = costOfLending(
      {
        stock: kit.kinds.map(({ count }) => count),
        lasts: year.periods.map(({ from, to }) => to - from),
        upkeep: kit.kinds.map(({ holds }) => Math.round(holds * 10_000)),
        asks: year.pens.map((_, p) =>
          year.periods.map(({ pens }, t) => ({
            weight: pens[p]!.birds,
            met: pens[p]!.byLine + pens[p]!.byWaterers,
            shares: kit.serves[t]![p]!.map((one) => one?.share ?? 0),
          })),
        ),
      },
      year.pens.map((_, p) => kit.lent.map((pens) => pens[p]!)),
    );
    expect([seed, cost.handed, cost.upkeep]).toEqual([seed, kit.cost.handed, kit.cost.upkeep]);
    expect([seed, cost.short === 0]).toEqual([seed, kit.shortages.length === 0]);
    // Whole thousandths are rounded up period by period, or for several that ask alike at once.
    expect(Math.abs(cost.short - kit.cost.short)).toBeLessThanOrEqual(year.periods.length * year.pens.length);
    expect(kit.bound.short).toBe(kit.cost.short);
    const more = kitOf({ ...plan, kit: plan.kit!.map((entry) => ({ ...entry, count: entry.count + 1 })) });
    expect([seed, more.kit.cost.short <= kit.cost.short]).toEqual([seed, true]);
  }
});

test("what a year says is least to buy leaves nothing short but what nothing helps", () => {
  for (let seed = 1; seed <= CASES; seed += 1) {
    const plan = yard(seed);
    const { buy, shortages } = kitOf(plan).kit;
    if (buy === undefined) {
      expect([seed, shortages]).toEqual([seed, []]);
      continue;
    }
    const bought = buy.items.map(({ id, count }) => ({ kind: id, count }));
    const after = kitOf({ ...plan, kit: [...plan.kit!, ...bought] }).kit;
    const never = new Set(buy.never.map(({ pen }) => pen));
    expect([seed, after.shortages.filter(({ pen }) => !never.has(pen))]).toEqual([seed, []]);
  }
});

import type { Plan } from "@headfall/hydraulics";
import { REGIONS } from "../../packages/hydraulics/src/document/regions.js";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { allDrinkers } from "../../packages/hydraulics/src/tables/drinkers.js";
import { allRoofs } from "../../packages/hydraulics/src/tables/roofs.js";
import { allWaterers } from "../../packages/hydraulics/src/tables/waterers.js";
import { withRandomExposure } from "./plan-exposure.js";
import { withRandomPens } from "./plan-pens.js";
import type { PlanData } from "./plans.js";
import { type Chooser, chooserOf } from "./typed.js";

/**
 * The plan with birds at its drinkers, and all that bears on them and on time, by number: weather, region, how its
 * sources are filled, runs that hang, what is carried. The line itself stays as it was.
 */
export function withRandomFlock(plan: PlanData, seed: number): PlanData {
  const choose = chooserOf(randomFrom(seed));
  const withPens = choose.chance(0.75)
    ? (withRandomPens(plan as unknown as Plan, choose.whole(0, 0x7fffffff)) as unknown as PlanData)
    : plan;
  const withFlock = {
    ...withPens,
    ...(choose.chance(0.6) ? { weather: weather(choose) } : {}),
    ...(choose.chance(0.4) ? { region: choose.oneOf(REGIONS) } : {}),
    ...(choose.chance(0.3) ? { carry: carry(choose) } : {}),
    ...(choose.chance(0.25) ? { kit: kit(choose) } : {}),
    sources: (plan["sources"] as PlanData[]).map((source) => ({ ...source, ...filling(choose, source) })),
    runs: (plan["runs"] as PlanData[]).map((run) => ({
      ...run,
      ...(choose.chance(0.15) ? { hung: choose.chance(0.8) } : {}),
    })),
  };
  return withRandomExposure(withFlock, seed);
}

/** Waterers and drinkers on hand, some of them kept back. */
const kit = (choose: Chooser): PlanData[] =>
  Array.from({ length: choose.whole(1, 4) }, () => {
    const count = choose.whole(0, 6);
    return {
      kind: choose.oneOf([...allWaterers, ...allDrinkers]).id,
      count,
      ...(choose.chance(0.3) ? { spare: choose.whole(0, count) } : {}),
      ...(choose.chance(0.2) ? { price: choose.whole(0, 90) } : {}),
    };
  });

const MONTHS = ["january", "april", "july", "august", "november"];

/** The air of some months. */
const months = (choose: Chooser): PlanData[] =>
  MONTHS.slice(choose.whole(0, 4)).map((month) => {
    const high = choose.uniform(-5, 35);
    return {
      month,
      high: choose.temperature(high),
      ...(choose.chance(0.5) ? { low: choose.temperature(high - choose.uniform(0.5, 15)) } : {}),
      ...(choose.chance(0.3) ? { hot: choose.temperature(high + choose.uniform(0.5, 15)) } : {}),
    };
  });

function weather(choose: Chooser): PlanData {
  const high = choose.uniform(-10, 42);
  const hottest = choose.uniform(high, 50);
  const clock = () => `${String(choose.whole(0, 23)).padStart(2, "0")}:${choose.oneOf(["00", "07", "30"])}`;
  return {
    high: choose.temperature(high),
    ...(choose.chance(0.5) ? { low: choose.temperature(high - choose.uniform(0.5, 20)) } : {}),
    ...(choose.chance(0.4) ? { light: choose.time(choose.uniform(4.01, 23.99) * 3600) } : {}),
    ...(choose.chance(0.4) ? { dawn: clock() } : {}),
    ...(choose.chance(0.2) ? { months: months(choose) } : {}),
    ...(choose.chance(0.4)
      ? {
          hotSpell: {
            high: choose.temperature(hottest),
            ...(choose.chance(0.5) ? { low: choose.temperature(hottest - choose.uniform(0.5, 15)) } : {}),
            ...(choose.chance(0.5) ? { days: choose.whole(1, 60) } : {}),
          },
        }
      : {}),
  };
}

/** By hand, by hose, from a roof, or not at all; a header tank fills by its feed. */
function filling(choose: Chooser, { feed }: PlanData): PlanData {
  if (feed !== undefined) return {};
  const refill = choose.oneOf<() => unknown>([
    () => "none",
    () => ({ hose: choose.flow(choose.spread(1e-7, 1e-3)) }),
    () => ({
      every: choose.time(choose.spread(3700, 80 * 86_400)),
      ...(choose.chance(0.5) ? { at: `${choose.whole(0, 23)}:30` } : {}),
    }),
  ])();
  return {
    ...(choose.chance(0.5) ? { refill } : {}),
    ...(choose.chance(0.2) ? { roof: roof(choose) } : {}),
  };
}

const roof = (choose: Chooser): PlanData => ({
  area: choose.area(choose.spread(0.5, 300)),
  ...(choose.chance(0.5) ? { kind: choose.oneOf(allRoofs).id } : {}),
  ...(choose.chance(0.3) ? { runoff: choose.share(choose.uniform(0, 1)) } : {}),
  ...(choose.chance(0.3) ? { wetting: choose.length(choose.uniform(0, 0.004)) } : {}),
  ...(choose.chance(0.3) ? { firstFlush: choose.volume(choose.spread(0.001, 0.1)) } : {}),
  ...(choose.chance(0.3) ? { overflow: choose.length(choose.uniform(0.01, 0.2)) } : {}),
});

const carry = (choose: Chooser): PlanData => ({
  ...(choose.chance(0.5) ? { each: choose.volume(choose.spread(0.001, 0.05)) } : {}),
  ...(choose.chance(0.5) ? { climb: choose.length(choose.uniform(-20, 20)) } : {}),
  ...(choose.chance(0.5) ? { most: choose.uniform(1, 40) } : {}),
});

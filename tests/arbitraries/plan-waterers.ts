import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { allBirds } from "../../packages/hydraulics/src/tables/birds.js";
import { allWaterers } from "../../packages/hydraulics/src/tables/waterers.js";
import type { PlanData } from "./plans.js";
import { type Chooser, chooserOf } from "./typed.js";

/**
 * The plan with loose waterers, by number: in some of its pens, and in a pen of their own that has no drinkers. The line
 * stays as it was.
 */
export function withRandomWaterers(plan: PlanData, seed: number): PlanData {
  const choose = chooserOf(randomFrom(seed));
  const pens = ((plan["pens"] ?? []) as PlanData[]).map((pen) =>
    choose.chance(0.4) ? { ...pen, ...standing(choose) } : pen,
  );
  const own = {
    id: "loose pen",
    birds: {
      kind: choose.oneOf(allBirds).id,
      count: choose.whole(1, 40),
      age: `${choose.whole(0, 40)} weeks`,
    },
    drinkers: [],
    ...standing(choose),
  };
  return { ...plan, pens: choose.chance(0.6) || pens.length === 0 ? [...pens, own] : pens };
}

/** A few waterers and the slope they stand on. */
function standing(choose: Chooser): PlanData {
  return {
    ...(choose.chance(0.7) ? { slope: slope(choose) } : {}),
    waterers: Array.from({ length: choose.whole(1, 3) }, () => waterer(choose)),
  };
}

const slope = (choose: Chooser): string => `${choose.uniform(0, 40).toFixed(2)} %`;

function waterer(choose: Chooser): PlanData {
  const { id, works } = choose.oneOf(allWaterers);
  return {
    kind: id,
    ...(choose.chance(0.4) ? { count: choose.whole(1, 5) } : {}),
    ...(choose.chance(0.2) ? { slope: slope(choose) } : {}),
    ...(choose.chance(0.5) ? { hole: choose.oneOf(["uphill", "sideways", "downhill"] as const) } : {}),
    ...(choose.chance(0.2) ? { holds: choose.volume(choose.uniform(0.0005, 0.02)) } : {}),
    ...(choose.chance(0.3) ? { hang: choose.length(choose.uniform(0, 0.6)) } : {}),
    ...(choose.chance(0.2) ? { cord: choose.length(choose.uniform(0.1, 3)) } : {}),
    ...(choose.chance(0.3) ? { refill: `${choose.whole(2, 200)} h` } : {}),
    ...(choose.chance(0.3) ? { shade: choose.chance(0.5) } : {}),
    ...(works === "vacuum" && choose.chance(0.3)
      ? {
          sizes: {
            lip: choose.length(choose.uniform(0.004, 0.04)),
            base: choose.length(choose.uniform(0.1, 0.5)),
          },
        }
      : {}),
  };
}

import { COLOURS } from "../../packages/hydraulics/src/document/colours.js";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import type { PlanData } from "./plans.js";
import { type Chooser, chooserOf } from "./typed.js";

/** Drawn from a stream of its own, so that plans without these keys stay as they were. */
const OWN_STREAM = 0x5eed;

/** The plan with frost, sun and wind, and with what keeps them off its runs and sources, by number. */
export function withRandomExposure(plan: PlanData, seed: number): PlanData {
  const choose = chooserOf(randomFrom((seed ^ OWN_STREAM) >>> 0));
  if (choose.chance(0.4)) return plan;
  const { weather } = plan as { weather?: PlanData };
  return {
    ...plan,
    ...(weather === undefined ? {} : { weather: { ...weather, ...extremes(choose) } }),
    sources: (plan["sources"] as PlanData[]).map((source) => ({ ...source, ...inSun(choose) })),
    runs: (plan["runs"] as PlanData[]).map((run) => ({
      ...run,
      ...inSun(choose),
      ...(choose.chance(0.2) ? { buried: choose.length(choose.uniform(0, 2.9)) } : {}),
      ...(choose.chance(0.2) ? { lagging: choose.length(choose.uniform(0, 0.19)) } : {}),
    })),
  };
}

const inSun = (choose: Chooser): PlanData => ({
  ...(choose.chance(0.3) ? { colour: choose.oneOf(COLOURS) } : {}),
  ...(choose.chance(0.3) ? { shade: choose.share(choose.uniform(0, 1)) } : {}),
});

function extremes(choose: Chooser): PlanData {
  const low = choose.uniform(-39, -0.1);
  return {
    ...(choose.chance(0.5)
      ? {
          frost: {
            low: choose.temperature(low),
            ...(choose.chance(0.5) ? { high: choose.temperature(low + choose.uniform(0.5, 20)) } : {}),
            ...(choose.chance(0.5) ? { hours: choose.time(choose.uniform(1.01, 90) * 3600) } : {}),
            ...(choose.chance(0.5) ? { wind: `${choose.uniform(0, 39).toFixed(1)} m/s` } : {}),
          },
        }
      : {}),
    ...(choose.chance(0.4) ? { sun: `${choose.whole(0, 1200)} W/m2` } : {}),
    ...(choose.chance(0.4) ? { wind: `${choose.uniform(0, 30).toFixed(1)} m/s` } : {}),
  };
}

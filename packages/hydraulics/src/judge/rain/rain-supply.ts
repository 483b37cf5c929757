import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import type { RainRecord } from "../../document/rain-record.js";
import { volumeAtLevel } from "../../physics/vessel.js";
import { runOff, sequentPeak } from "../../simulate/rain.js";
import { askPlan } from "../asked-plan.js";
import type { RainAnswer, RainOptions } from "./rain-answer.js";
import { demandByDay } from "./rain-demand.js";
import { overflowOf, roofOf } from "./rain-roof.js";
import { runsOf } from "./rain-runs.js";
import { roofWithoutShortDays, sizesAround, sizeWithoutShortDays } from "./rain-sizes.js";

/**
 * Whether a vessel under a roof would have kept a plan's birds through a record of rain. The flock stays as it is on
 * the plan's day; days whose rain is not known are taken as dry.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param record   from `readRainRecord`
 * @param options  which source, which figure, what day
 * @returns days short by year and season, sizes, overflow; or what is missing in the plan
 * @example rainSupply(examplePlan("rain-on-the-coop"), record).supply.neverFails   // 0.002916
 */
export function rainSupply(plan: Plan, record: RainRecord, options: RainOptions = {}): RainAnswer {
  const asking = askPlan(plan, options.day);
  if (!asking.ok) return asking;
  const { asked } = asking;
  const index = options.source ?? plan.sources.findIndex(({ roof }) => roof !== undefined);
  const typed = plan.sources[index]?.roof;
  if (typed === undefined) return { ok: false, problems: [noRoof(Math.max(0, index))] };
  const figure = options.figure ?? "size";
  const roof = roofOf(typed);
  const source = asked.judged.line.sources[index];
  const usable =
    volumeAtLevel(source.shape, source.levels.full) - volumeAtLevel(source.shape, source.levels.lowest);
  const inflow = runOff(roof, record.rain);
  const demand = demandByDay(asked, index, record, figure);
  const neverFails = sequentPeak(inflow, demand);
  return {
    ok: true,
    supply: {
      source: source.id,
      index,
      roof,
      figure,
      days: record.rain.length,
      firstDay: record.firstDay,
      missingDays: record.missing.reduce((sum, one) => sum + one, 0),
      heatFrom: record.air === undefined ? "plan" : "record",
      inflow,
      demand,
      usable,
      demandMean: demand.reduce((sum, one) => sum + one, 0) / demand.length,
      demandMost: demand.reduce((most, one) => Math.max(most, one), 0),
      runs: runsOf(record, { inflow, demand, usable }),
      neverFails,
      neverFailsDrawnFirst:
        neverFails === undefined ? undefined : sizeWithoutShortDays(inflow, demand, neverFails),
      roofNeeded: roofWithoutShortDays(roof, record, demand, usable),
      sizes: sizesAround(inflow, demand, usable, neverFails),
      overflow: overflowOf(typed, roof, record),
    },
  };
}

const noRoof = (index: number): Problem => ({
  code: "missing",
  path: `sources[${index}].roof`,
  found: "nothing",
  allowed: "A source that rain fills has a roof.",
  mend: 'Add for instance "roof": {"area": "12 m²", "kind": "metal"}.',
});

import type { Plan } from "../../document/plan-schema.js";
import type { Flock } from "../../model/flock.js";
import type { Line, Run } from "../../model/line.js";
import { deviceOf, groupOf } from "../../simulate/crowd-want.js";
import { heightAboveGround } from "../height-above-ground.js";
import { type HangRange, hangAtForBirds } from "./hang-range.js";
import type { RunRaise } from "./week-report.js";

/**
 * How far each hung run is to be raised from where the plan has it, so that its drinkers hang right for the birds
 * that reach them. On the plan's own day it hangs as the plan says. Where the plan does not tell how high that is
 * above the ground, it is taken to hang right that day.
 *
 * @param now    the flock on the plan's day
 * @param flock  the flock on the day asked about
 */
export function raisesOf(plan: Plan, line: Line, now: Flock, flock: Flock): RunRaise[] {
  return line.runs
    .filter(({ index }) => plan.runs[index].hung === true)
    .flatMap((run) => {
      const hangAt = hangAtOfRun(line, run, flock);
      if (hangAt === undefined) return [];
      const height = heightAboveGround(line, drinkersOfRun(line, run));
      const from = height ?? hangAtOfRun(line, run, now)?.height ?? hangAt.height;
      const raise = isSameDay(now, flock) ? 0 : hangAt.height - from;
      return [
        {
          run: run.id,
          index: run.index,
          raise,
          height: height === undefined ? undefined : height + raise,
          low: hangAt.low,
          high: hangAt.high,
        },
      ];
    });
}

/** Ages of the birds tell days apart even where no day is known. */
function isSameDay(now: Flock, flock: Flock): boolean {
  return now.pens.every((pen, p) =>
    pen.batches.every(({ ageDays, count }, k) => {
      const then = flock.pens[p].batches[k];
      return ageDays === then.ageDays && count === then.count;
    }),
  );
}

const drinkersOfRun = ({ drinkers }: Line, run: Run): number[] =>
  Array.from(drinkers.run.keys()).filter((d) => drinkers.run[d] === run.index);

/** Where the drinkers of a run should hang: low enough for the smallest birds that reach any of them. */
function hangAtOfRun(line: Line, run: Run, flock: Flock): HangRange | undefined {
  const members = drinkersOfRun(line, run);
  const [first] = members;
  if (first === undefined) return undefined;
  const device = deviceOf(groupOf(line, first));
  let lowest: HangRange | undefined;
  for (const pen of flock.pens) {
    if (!members.some((d) => pen.drinkers.includes(d))) continue;
    const range = hangAtForBirds(pen, device);
    if (range !== undefined && (lowest === undefined || range.height < lowest.height)) lowest = range;
  }
  return lowest;
}

import type { DayResult } from "./day-result.js";
import { beginDay, type DayOptions, type DayRun } from "./day-run.js";
import type { DaySetting } from "./day-setting.js";
import { tellDay } from "./day-told.js";
import { come, end, loseHeart } from "./day-visits.js";

const DAY = 86_400;

/**
 * One day of the birds at their drinkers, from midnight to midnight, event by event: a bird comes, takes a free place
 * at random, drinks as fast as that drinker then gives, and goes; one that finds no place waits, then gives up and
 * comes back. Whenever the drinkers at work change, the line is solved for those at work, and every bird drinks on at
 * what its drinker then gives. While it is worked a drinker counts as open in the line; what is drawn is what is drunk
 * and spilled there.
 *
 * @example runDay(settingOfPlan(plan).setting, { seed: 1, figure: "expect", record: false }).seed   // 1
 */
export function runDay(setting: DaySetting, options: DayOptions): DayResult {
  const run = beginDay(setting, options);
  for (;;) {
    const next = nextTime(run);
    if (next.time >= DAY) break;
    advance(run, next.time);
    next.act();
  }
  advance(run, DAY);
  const { birds, water, log } = run;
  return tellDay({ setting, kept: log.close(), birds, water }, options);
}

interface Next {
  readonly time: number;
  readonly act: () => void;
}

/** What happens next: a bird has had enough, comes, or loses patience; at one instant in this order. */
function nextTime(run: DayRun): Next {
  const { birds, drinking, waiting, habits } = run;
  let ends = Number.POSITIVE_INFINITY;
  let ending = -1;
  for (const bird of drinking) {
    const at =
      run.time + (birds.rate[bird] > 0 ? birds.left[bird] / birds.rate[bird] : Number.POSITIVE_INFINITY);
    if (at < ends || (at === ends && bird < ending)) [ends, ending] = [at, bird];
  }
  let leaves = Number.POSITIVE_INFINITY;
  let leaving = -1;
  for (const queue of waiting) {
    const [bird] = queue;
    if (bird === undefined) continue;
    const at = birds.waitsSince[bird] + habits.patience;
    if (at < leaves) [leaves, leaving] = [at, bird];
  }
  const comer = run.coming.pop();
  const comes = comer === undefined ? Number.POSITIVE_INFINITY : birds.comes[comer];
  if (comer !== undefined && comes < ends && comes < leaves)
    return { time: comes, act: () => come(run, comer) };
  if (comer !== undefined) run.coming.push(comer);
  if (ends <= leaves) return { time: ends, act: () => end(run, ending) };
  return { time: leaves, act: () => loseHeart(run, leaving) };
}

/** Time goes on: birds drink, drinkers draw, sources fall and are filled. */
function advance(run: DayRun, to: number): void {
  const { birds, drinking, setting, water, log } = run;
  const lasts = to - run.time;
  if (lasts > 0) {
    for (const bird of drinking) {
      const drunk = Math.min(birds.left[bird], birds.rate[bird] * lasts);
      birds.left[bird] -= drunk;
      birds.drunk[bird] += drunk;
      const spilled = drunk * setting.pens[birds.pen[bird]].spilled;
      water.draw(birds.drinker[bird], drunk + spilled);
      log.drew(birds.drinker[bird], drunk, spilled);
    }
    log.passed(run.time, to, run.working, run.workingCount, run.taken);
    water.pass(run.time, to);
  }
  run.time = to;
}

import type { DayRun } from "./day-run.js";

/** Whether any drinker of a pen gives water. */
export const anyGives = (run: DayRun, pen: number) =>
  run.setting.pens[pen].drinkers.some((d) => run.water.gives(d));

/** A place at random among those free at drinkers that give; −1 when there is none. */
export function freePlace({ setting, taken, water, random }: DayRun, pen: number): number {
  let free = 0;
  for (const d of setting.pens[pen].drinkers) {
    if (taken[d] < setting.places[d] && water.gives(d)) free += setting.places[d] - taken[d];
  }
  if (free === 0) return -1;
  let pick = random.integerBelow(free);
  for (const d of setting.pens[pen].drinkers) {
    if (taken[d] >= setting.places[d] || !water.gives(d)) continue;
    pick -= setting.places[d] - taken[d];
    if (pick < 0) return d;
  }
  return -1;
}

/** Drinkers at work are kept in order, so that a set has one name. */
export function putIn(run: DayRun, drinker: number): void {
  let at = run.workingCount;
  while (at > 0 && run.working[at - 1] > drinker) {
    run.working[at] = run.working[at - 1];
    at -= 1;
  }
  run.working[at] = drinker;
  run.workingCount += 1;
}

export function takeOut(run: DayRun, drinker: number): void {
  const at = run.working.indexOf(drinker);
  run.working.copyWithin(at, at + 1, run.workingCount);
  run.workingCount -= 1;
}

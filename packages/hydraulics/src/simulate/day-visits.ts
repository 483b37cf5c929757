import { TAKEN_IN } from "./crowd-want.js";
import { boutOf, nextCome } from "./day-birds.js";
import { anyGives, freePlace, putIn, takeOut } from "./day-places.js";
import { DAY_EVENTS } from "./day-result.js";
import type { DayRun } from "./day-run.js";

const DAY = 86_400;

/** A bird comes: it drinks, waits, gives up or finds no water. */
export function come(run: DayRun, bird: number): void {
  const { birds, setting, habits, random, log } = run;
  const batch = setting.batches[birds.batch[bird]];
  log.came(birds.pen[bird]);
  birds.left[bird] = boutOf(birds, bird, batch, run.time, habits, random);
  const place = freePlace(run, birds.pen[bird]);
  if (place >= 0) {
    log.waited(birds.pen[bird], 0);
    sit(run, bird, place);
    return;
  }
  if (!anyGives(run, birds.pen[bird])) {
    foundDry(run, bird);
    return;
  }
  birds.waitsSince[bird] = run.time;
  if (habits.patience <= 0) {
    giveUp(run, bird);
    return;
  }
  run.waiting[birds.pen[bird]].push(bird);
  log.noted(run.time, DAY_EVENTS.waits, bird, -1);
}

function sit(run: DayRun, bird: number, drinker: number): void {
  const { birds, drinking, taken, log } = run;
  birds.drinker[bird] = drinker;
  birds.bouts[bird] += 1;
  drinking.push(bird);
  taken[drinker] += 1;
  if (taken[drinker] === 1) putIn(run, drinker);
  log.noted(run.time, DAY_EVENTS.begins, bird, drinker);
  log.began(drinker, birds.pen[bird], run.time);
  setRates(run);
}

/** A bird has had enough, or its drinker has run dry under it. */
export function end(run: DayRun, bird: number): void {
  const { birds, setting, random } = run;
  rise(run, bird);
  const batch = setting.batches[birds.batch[bird]];
  birds.comes[bird] = nextCome(batch, run.time, random);
  if (birds.comes[bird] < DAY) run.coming.push(bird);
  callNext(run, birds.pen[bird]);
  setRates(run);
}

function rise(run: DayRun, bird: number): void {
  const { birds, drinking, taken, log } = run;
  const drinker = birds.drinker[bird];
  const at = drinking.indexOf(bird);
  drinking[at] = drinking[drinking.length - 1];
  drinking.pop();
  taken[drinker] -= 1;
  if (taken[drinker] === 0) takeOut(run, drinker);
  birds.drinker[bird] = -1;
  birds.left[bird] = 0;
  birds.rate[bird] = 0;
  log.noted(run.time, DAY_EVENTS.ends, bird, drinker);
  log.ended(birds.pen[bird]);
}

/** The first of those that wait takes the place that has come free. */
function callNext(run: DayRun, pen: number): void {
  const [bird] = run.waiting[pen];
  if (bird === undefined) return;
  const place = freePlace(run, pen);
  if (place < 0) return;
  run.waiting[pen].shift();
  noteWait(run, bird);
  sit(run, bird, place);
}

function noteWait(run: DayRun, bird: number): void {
  const { birds, log } = run;
  const wait = run.time - birds.waitsSince[bird];
  birds.waited[bird] += wait;
  birds.longestWait[bird] = Math.max(birds.longestWait[bird], wait);
  log.waited(birds.pen[bird], wait);
}

/** It has lost patience. */
export function loseHeart(run: DayRun, bird: number): void {
  const queue = run.waiting[run.birds.pen[bird]];
  queue.splice(queue.indexOf(bird), 1);
  giveUp(run, bird);
}

function giveUp(run: DayRun, bird: number): void {
  noteWait(run, bird);
  run.birds.gaveUp[bird] += 1;
  leave(run, bird);
}

/** Where no water comes nobody waits: that is no wait, and is told apart. */
function foundDry(run: DayRun, bird: number): void {
  run.birds.foundDry[bird] += 1;
  leave(run, bird);
}

/** It goes, and comes back after a while if it is still light enough to come at all. */
function leave(run: DayRun, bird: number): void {
  const { birds, habits, random, log } = run;
  birds.left[bird] = 0;
  log.noted(run.time, DAY_EVENTS.givesUp, bird, -1);
  const batch = run.setting.batches[birds.batch[bird]];
  const back = run.time - habits.retry * Math.log(1 - random.uniform());
  birds.comes[bird] = habits.retry > 0 ? back : nextCome(batch, run.time, random);
  if (birds.comes[bird] < DAY) run.coming.push(bird);
}

/** What each bird drinks from now on. One at a drinker that gives nothing any more leaves it. */
function setRates(run: DayRun): void {
  const { birds, setting, drinking, taken, water, log, working } = run;
  if (run.workingCount === 0) return;
  water.solve(working, run.workingCount);
  log.flowing(working, run.workingCount, water.flow);
  const { drinkers } = setting.line;
  let dry = -1;
  for (const bird of drinking) {
    const d = birds.drinker[bird];
    const isTrigger = drinkers.groups[drinkers.group[d]].workedBy === "trigger";
    const offered = isTrigger ? TAKEN_IN.share * water.flow[d] : water.flow[d] / taken[d];
    birds.rate[bird] = Math.min(offered, setting.batches[birds.batch[bird]].fastest);
    if (birds.rate[bird] <= 0) dry = bird;
  }
  if (dry < 0) return;
  rise(run, dry);
  foundDry(run, dry);
  setRates(run);
}

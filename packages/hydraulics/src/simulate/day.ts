import { createHeap, type Heap } from "../numerics/heap.js";
import { type Random, randomFrom } from "../numerics/random.js";
import { TAKEN_IN } from "./crowd-want.js";
import { boutOf, createBirds, type DayBirds, nextCome } from "./day-birds.js";
import { createDayLog, type DayLog } from "./day-log.js";
import { DAY_EVENTS, type DayResult } from "./day-result.js";
import { BIRD_HABITS, type DaySetting, type Habits } from "./day-setting.js";
import { createDayWater, type DayWater } from "./day-water.js";

const DAY = 86_400;

/** How one day is run. */
export interface DayOptions {
  /** The same seed gives the same day, to the bit. */
  readonly seed: number;
  readonly figure: "expect" | "size";
  /** Whether every event is kept, for playing. */
  readonly record: boolean;
  readonly habits?: Habits;
}

/** Everything that changes while a day runs. */
interface Running {
  readonly setting: DaySetting;
  readonly habits: Habits;
  readonly random: Random;
  readonly birds: DayBirds;
  readonly water: DayWater;
  readonly log: DayLog;
  readonly coming: Heap<number>;
  /** Birds that drink, in no order. */
  readonly drinking: number[];
  /** By pen, birds that wait, the first come first. */
  readonly waiting: number[][];
  /** By drinker, birds at it. */
  readonly taken: Int32Array;
  /** Drinkers with birds at them, ascending. */
  readonly working: Int32Array;
  workingCount: number;
  time: number;
  settledAt: number;
}

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
  const run = begin(setting, options);
  for (;;) {
    const next = nextTime(run);
    if (next.time >= DAY) break;
    advance(run, next.time);
    next.act();
  }
  advance(run, DAY);
  return run.log.finish(run.birds, run.water, options);
}

function begin(setting: DaySetting, options: DayOptions): Running {
  const random = randomFrom(options.seed);
  const habits = options.habits ?? BIRD_HABITS;
  const birds = createBirds(setting, habits, random);
  const coming = createHeap<number>(
    (a, b) => birds.comes[a] < birds.comes[b] || (birds.comes[a] === birds.comes[b] && a < b),
  );
  for (let bird = 0; bird < birds.count; bird += 1) if (birds.comes[bird] < DAY) coming.push(bird);
  const water = createDayWater(setting);
  return {
    setting,
    habits,
    random,
    birds,
    water,
    log: createDayLog(setting, water, options.record),
    coming,
    drinking: [],
    waiting: setting.pens.map(() => []),
    taken: new Int32Array(setting.line.drinkers.count),
    working: new Int32Array(setting.line.drinkers.count),
    workingCount: 0,
    time: 0,
    settledAt: 0,
  };
}

interface Next {
  readonly time: number;
  readonly act: () => void;
}

/** What happens next: a bird has had enough, comes, or loses patience; at one instant in this order. */
function nextTime(run: Running): Next {
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
function advance(run: Running, to: number): void {
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

function come(run: Running, bird: number): void {
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

const anyGives = (run: Running, pen: number) =>
  run.setting.pens[pen].drinkers.some((d) => run.water.gives(d));

/** A place at random among those free at drinkers that give; −1 when there is none. */
function freePlace({ setting, taken, water, random }: Running, pen: number): number {
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

function sit(run: Running, bird: number, drinker: number): void {
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
function end(run: Running, bird: number): void {
  const { birds, setting, random } = run;
  rise(run, bird);
  const batch = setting.batches[birds.batch[bird]];
  birds.comes[bird] = nextCome(batch, run.time, random);
  if (birds.comes[bird] < DAY) run.coming.push(bird);
  callNext(run, birds.pen[bird]);
  setRates(run);
}

function rise(run: Running, bird: number): void {
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
function callNext(run: Running, pen: number): void {
  const [bird] = run.waiting[pen];
  if (bird === undefined) return;
  const place = freePlace(run, pen);
  if (place < 0) return;
  run.waiting[pen].shift();
  noteWait(run, bird);
  sit(run, bird, place);
}

function noteWait(run: Running, bird: number): void {
  const { birds, log } = run;
  const wait = run.time - birds.waitsSince[bird];
  birds.waited[bird] += wait;
  birds.longestWait[bird] = Math.max(birds.longestWait[bird], wait);
  log.waited(birds.pen[bird], wait);
}

/** It has lost patience. */
function loseHeart(run: Running, bird: number): void {
  const queue = run.waiting[run.birds.pen[bird]];
  queue.splice(queue.indexOf(bird), 1);
  giveUp(run, bird);
}

function giveUp(run: Running, bird: number): void {
  noteWait(run, bird);
  run.birds.gaveUp[bird] += 1;
  leave(run, bird);
}

/** Where no water comes nobody waits: that is no wait, and is told apart. */
function foundDry(run: Running, bird: number): void {
  run.birds.foundDry[bird] += 1;
  leave(run, bird);
}

/** It goes, and comes back after a while if it is still light enough to come at all. */
function leave(run: Running, bird: number): void {
  const { birds, habits, random, log } = run;
  birds.left[bird] = 0;
  log.noted(run.time, DAY_EVENTS.givesUp, bird, -1);
  const batch = run.setting.batches[birds.batch[bird]];
  const back = run.time - habits.retry * Math.log(1 - random.uniform());
  birds.comes[bird] = habits.retry > 0 ? back : nextCome(batch, run.time, random);
  if (birds.comes[bird] < DAY) run.coming.push(bird);
}

/** Drinkers at work are kept in order, so that a set has one name. */
function putIn(run: Running, drinker: number): void {
  let at = run.workingCount;
  while (at > 0 && run.working[at - 1] > drinker) {
    run.working[at] = run.working[at - 1];
    at -= 1;
  }
  run.working[at] = drinker;
  run.workingCount += 1;
}

function takeOut(run: Running, drinker: number): void {
  const at = run.working.indexOf(drinker);
  run.working.copyWithin(at, at + 1, run.workingCount);
  run.workingCount -= 1;
}

/** What each bird drinks from now on. One at a drinker that gives nothing any more leaves it. */
function setRates(run: Running): void {
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

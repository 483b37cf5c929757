import { createHeap, type Heap } from "../numerics/heap.js";
import { type Random, randomFrom } from "../numerics/random.js";
import { createBirds, type DayBirds } from "./day-birds.js";
import { createDayLog, type DayLog } from "./day-log.js";
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
export interface DayRun {
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

/** At midnight: who comes when is drawn for the first time of each bird. */
export function beginDay(setting: DaySetting, options: DayOptions): DayRun {
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

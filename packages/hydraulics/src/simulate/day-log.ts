import { type DayKept, type EventLists, keepDay } from "./day-kept.js";
import type { DaySetting } from "./day-setting.js";
import type { DayWater } from "./day-water.js";

const DAY = 86_400;
/** How often the level is noted [s]. */
const LEVEL_EVERY = 300;

/** Keeps what a day was like, as it happens. */
export interface DayLog {
  readonly noted: (time: number, kind: number, bird: number, drinker: number) => void;
  readonly came: (pen: number) => void;
  readonly waited: (pen: number, wait: number) => void;
  readonly began: (drinker: number, pen: number, time: number) => void;
  readonly ended: (pen: number) => void;
  readonly drew: (drinker: number, drunk: number, spilled: number) => void;
  readonly flowing: (working: Int32Array, count: number, flow: Float64Array) => void;
  readonly passed: (from: number, to: number, working: Int32Array, count: number, taken: Int32Array) => void;
  /** All that was kept, levels noted until midnight. */
  readonly close: () => DayKept;
}

/** @param record  whether every event is kept, for playing */
export function createDayLog(setting: DaySetting, water: DayWater, record: boolean): DayLog {
  const kept = keepDay(setting, water, record);
  const { tallies, sums, drawn, busy, least } = kept;
  return {
    noted: (time, kind, bird, drinker) => noteEvent(kept, { time, kind, bird, drinker }),
    came(pen) {
      tallies[pen].comers += 1;
    },
    waited(pen, wait) {
      tallies[pen].waits.push(wait);
    },
    began: (drinker, pen, time) => noteBegun(kept, { drinker, pen, time }),
    ended(pen) {
      tallies[pen].atOnce -= 1;
    },
    drew(drinker, drunk, spilled) {
      drawn[drinker] += drunk + spilled;
      sums.drunk += drunk;
      sums.spilled += spilled;
    },
    flowing(working, count, flow) {
      for (let k = 0; k < count; k += 1) least[working[k]] = Math.min(least[working[k]], flow[working[k]]);
    },
    passed(from, to, working, count, taken) {
      noteLevels(kept, water, from);
      for (let k = 0; k < count; k += 1) busy[working[k]] += to - from;
      if (isLight(setting, from)) countLightHours(kept, { setting, water, taken }, to - from, from);
    },
    close() {
      noteLevels(kept, water, DAY);
      return kept;
    },
  };
}

type Noted = { readonly [what in keyof EventLists]: number };

function noteEvent({ events }: DayKept, { time, kind, bird, drinker }: Noted): void {
  if (events === undefined) return;
  events.time.push(time);
  events.kind.push(kind);
  events.bird.push(bird);
  events.drinker.push(drinker);
}

interface Begun {
  readonly drinker: number;
  readonly pen: number;
  readonly time: number;
}

function noteBegun({ bouts, tallies }: DayKept, { drinker, pen, time }: Begun): void {
  bouts[drinker] += 1;
  const tally = tallies[pen];
  tally.atOnce += 1;
  if (tally.atOnce <= tally.mostAtOnce) return;
  tally.mostAtOnce = tally.atOnce;
  tally.mostAt = time;
}

/** What stands in the sources, at every step of the clock that has come. */
function noteLevels({ levels }: DayKept, water: DayWater, until: number): void {
  while (levels.time.length * LEVEL_EVERY <= until) {
    levels.time.push(levels.time.length * LEVEL_EVERY);
    levels.volumes.push(water.volumes());
  }
}

const isLight = ({ light }: DaySetting, time: number) =>
  (((time - light.dawn) % DAY) + DAY) % DAY < light.lasts;

interface AtDrinkers {
  readonly setting: DaySetting;
  readonly water: DayWater;
  /** By drinker, birds at it. */
  readonly taken: Int32Array;
}

/** How long pens are dry, and how long every place that gives water is taken. */
function countLightHours({ tallies }: DayKept, at: AtDrinkers, lasts: number, from: number): void {
  const { setting, water, taken } = at;
  const { pens, places } = setting;
  pens.forEach(({ drinkers }, p) => {
    if (drinkers.every((d) => !water.gives(d))) {
      tallies[p].dry += lasts;
      tallies[p].dryFrom ??= from;
    }
    if (tallies[p].atOnce === 0) return;
    if (drinkers.every((d) => taken[d] >= places[d] || !water.gives(d))) tallies[p].allTaken += lasts;
  });
}

import type { DayBirds } from "./day-birds.js";
import type { DayEvents, DayResult, DrinkerDay, PenDay } from "./day-result.js";
import type { DaySetting } from "./day-setting.js";
import type { DayWater } from "./day-water.js";

const DAY = 86_400;
/** How often the level is noted [s]. */
const LEVEL_EVERY = 300;
/** A bird that got less than this share of what it wanted came short. */
export const SHORT_BELOW = 0.8;

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
  readonly finish: (
    birds: DayBirds,
    water: DayWater,
    options: { readonly seed: number; readonly figure: "expect" | "size" },
  ) => DayResult;
}

interface PenTally {
  comers: number;
  readonly waits: number[];
  atOnce: number;
  mostAtOnce: number;
  mostAt: number;
  allTaken: number;
  dry: number;
  dryFrom: number | undefined;
}

export function createDayLog(setting: DaySetting, water: DayWater, record: boolean): DayLog {
  const { line, pens, places, light } = setting;
  const drinkerCount = line.drinkers.count;
  const bouts = new Int32Array(drinkerCount);
  const drawn = new Float64Array(drinkerCount);
  const busy = new Float64Array(drinkerCount);
  const least = new Float64Array(drinkerCount).fill(Number.POSITIVE_INFINITY);
  const tallies = pens.map(
    (): PenTally => ({
      comers: 0,
      waits: [],
      atOnce: 0,
      mostAtOnce: 0,
      mostAt: 0,
      allTaken: 0,
      dry: 0,
      dryFrom: undefined,
    }),
  );
  const sums = { drunk: 0, spilled: 0 };
  const events = record
    ? { time: [] as number[], kind: [] as number[], bird: [] as number[], drinker: [] as number[] }
    : undefined;
  const levels = { time: [] as number[], volumes: [] as number[][] };
  const start = water.volumes();
  let nextLevel = 0;
  const noteLevels = (to: number) => {
    while (nextLevel <= to) {
      levels.time.push(nextLevel);
      levels.volumes.push(water.volumes());
      nextLevel += LEVEL_EVERY;
    }
  };
  const isLight = (time: number) => (((time - light.dawn) % DAY) + DAY) % DAY < light.lasts;

  return {
    noted: (time, kind, bird, drinker) => {
      if (events === undefined) return;
      events.time.push(time);
      events.kind.push(kind);
      events.bird.push(bird);
      events.drinker.push(drinker);
    },
    came: (pen) => {
      tallies[pen].comers += 1;
    },
    waited: (pen, wait) => {
      tallies[pen].waits.push(wait);
    },
    began: (drinker, pen, time) => {
      bouts[drinker] += 1;
      const tally = tallies[pen];
      tally.atOnce += 1;
      if (tally.atOnce > tally.mostAtOnce) {
        tally.mostAtOnce = tally.atOnce;
        tally.mostAt = time;
      }
    },
    ended: (pen) => {
      tallies[pen].atOnce -= 1;
    },
    drew: (drinker, drunk, spilled) => {
      drawn[drinker] += drunk + spilled;
      sums.drunk += drunk;
      sums.spilled += spilled;
    },
    flowing: (working, count, flow) => {
      for (let k = 0; k < count; k += 1) least[working[k]] = Math.min(least[working[k]], flow[working[k]]);
    },
    passed: (from, to, working, count, taken) => {
      noteLevels(from);
      for (let k = 0; k < count; k += 1) busy[working[k]] += to - from;
      if (!isLight(from)) return;
      pens.forEach(({ drinkers }, p) => {
        if (drinkers.every((d) => !water.gives(d))) {
          tallies[p].dry += to - from;
          tallies[p].dryFrom ??= from;
        }
        if (tallies[p].atOnce === 0) return;
        if (drinkers.every((d) => taken[d] >= places[d] || !water.gives(d))) tallies[p].allTaken += to - from;
      });
    },
    finish: (birds, done, { seed, figure }) => {
      noteLevels(DAY);
      const end = done.volumes();
      return {
        seed,
        day: setting.day,
        figure,
        birds: Array.from({ length: birds.count }, (_, bird) => ({
          pen: birds.pen[bird],
          batch: setting.batches[birds.batch[bird]].index,
          wanted: birds.wanted[bird],
          drunk: birds.drunk[bird],
          bouts: birds.bouts[bird],
          gaveUp: birds.gaveUp[bird],
          foundDry: birds.foundDry[bird],
          waited: birds.waited[bird],
          longestWait: birds.longestWait[bird],
        })),
        drinkers: Array.from(
          { length: drinkerCount },
          (_, d): DrinkerDay => ({
            drinker: line.drinkers.id[d],
            bouts: bouts[d],
            drawn: drawn[d],
            busy: busy[d],
            leastFlow: Number.isFinite(least[d]) ? least[d] : 0,
          }),
        ),
        pens: pens.map((pen, p) => penDay(pen.id, p, birds, tallies[p], light.lasts)),
        sources: line.sources.map((source, i) => ({
          source: source.id,
          start: start[i],
          end: end[i],
          poured: done.bySource.poured[i],
          drawn: start[i] + done.bySource.poured[i] - end[i],
        })),
        levels: levelsOf(setting, levels),
        balance: {
          ...sums,
          drawn: done.sums.drawn,
          start: start.reduce((sum, one) => sum + one, 0),
          poured: done.sums.poured,
          end: end.reduce((sum, one) => sum + one, 0),
        },
        solver: { ...done.tally },
        events: events === undefined ? undefined : eventsOf(events),
      };
    },
  };
}

function penDay(pen: string, p: number, birds: DayBirds, tally: PenTally, light: number): PenDay {
  const sums = { birds: 0, wanted: 0, drunk: 0, short: 0, gaveUp: 0, foundDry: 0 };
  for (let bird = 0; bird < birds.count; bird += 1) {
    if (birds.pen[bird] !== p) continue;
    sums.birds += 1;
    sums.wanted += birds.wanted[bird];
    sums.drunk += birds.drunk[bird];
    sums.gaveUp += birds.gaveUp[bird];
    sums.foundDry += birds.foundDry[bird];
    if (birds.drunk[bird] < SHORT_BELOW * birds.wanted[bird]) sums.short += 1;
  }
  const waits = tally.waits.sort((a, b) => a - b);
  return {
    pen,
    ...sums,
    mostAtOnce: tally.mostAtOnce,
    mostAt: tally.mostAt,
    allTaken: tally.allTaken / light,
    dry: Math.min(1, tally.dry / light),
    dryFrom: tally.dryFrom,
    comers: tally.comers,
    meanWait: waits.length === 0 ? 0 : waits.reduce((sum, one) => sum + one, 0) / waits.length,
    wait95: waits[Math.floor(0.95 * waits.length)] ?? 0,
    longestWait: waits.at(-1) ?? 0,
  };
}

function levelsOf(
  { line, pools }: DaySetting,
  levels: { time: number[]; volumes: number[][] },
): DayResult["levels"] {
  const stores = pools.flatMap((pool) => pool.stores);
  return {
    time: Float64Array.from(levels.time),
    level: line.sources.map((source, i) => {
      const store = stores.find((one) => one.source === i);
      return Float64Array.from(levels.volumes, (volumes) =>
        store === undefined ? source.levels.full : store.levelAt(volumes[i]),
      );
    }),
  };
}

function eventsOf(events: { time: number[]; kind: number[]; bird: number[]; drinker: number[] }): DayEvents {
  return {
    count: events.time.length,
    time: Float64Array.from(events.time),
    kind: Uint8Array.from(events.kind),
    bird: Int32Array.from(events.bird),
    drinker: Int32Array.from(events.drinker),
  };
}

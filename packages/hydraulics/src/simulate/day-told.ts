import type { DayBirds } from "./day-birds.js";
import type { DayKept, EventLists, PenTally } from "./day-kept.js";
import type { BirdDay, DayEvents, DayResult, DrinkerDay, PenDay } from "./day-result.js";
import type { DaySetting } from "./day-setting.js";
import type { DayWater } from "./day-water.js";

/** A bird that got less than this share of what it wanted came short. */
export const SHORT_BELOW = 0.8;

/** A day that has come to its end. */
interface DoneDay {
  readonly setting: DaySetting;
  readonly kept: DayKept;
  readonly birds: DayBirds;
  readonly water: DayWater;
}

/** What a day came to, of what was kept while it ran. */
export function tellDay(
  done: DoneDay,
  { seed, figure }: { readonly seed: number; readonly figure: "expect" | "size" },
): DayResult {
  const { setting, kept, birds, water } = done;
  const { sums, start, events } = kept;
  const end = water.volumes();
  return {
    seed,
    day: setting.day,
    figure,
    birds: Array.from({ length: birds.count }, (_, bird) => birdDay(birds, setting, bird)),
    drinkers: drinkerDays(kept, setting.line.drinkers.id),
    pens: setting.pens.map((pen, p) => penDay(pen.id, p, birds, kept.tallies[p], setting.light.lasts)),
    sources: sourceDays(done, end),
    levels: levelsOf(setting, kept.levels),
    balance: {
      ...sums,
      drawn: water.sums.drawn,
      start: start.reduce((sum, one) => sum + one, 0),
      poured: water.sums.poured,
      end: end.reduce((sum, one) => sum + one, 0),
    },
    solver: { ...water.tally },
    events: events === undefined ? undefined : eventsOf(events),
  };
}

const birdDay = (birds: DayBirds, { batches }: DaySetting, bird: number): BirdDay => ({
  pen: birds.pen[bird],
  batch: batches[birds.batch[bird]].index,
  wanted: birds.wanted[bird],
  drunk: birds.drunk[bird],
  bouts: birds.bouts[bird],
  gaveUp: birds.gaveUp[bird],
  foundDry: birds.foundDry[bird],
  waited: birds.waited[bird],
  longestWait: birds.longestWait[bird],
});

const drinkerDays = ({ bouts, drawn, busy, least }: DayKept, ids: readonly string[]): DrinkerDay[] =>
  ids.map((drinker, d) => ({
    drinker,
    bouts: bouts[d],
    drawn: drawn[d],
    busy: busy[d],
    leastFlow: Number.isFinite(least[d]) ? least[d] : 0,
  }));

const sourceDays = ({ setting, kept, water }: DoneDay, end: readonly number[]): DayResult["sources"] =>
  setting.line.sources.map((source, i) => ({
    source: source.id,
    start: kept.start[i],
    end: end[i],
    poured: water.bySource.poured[i],
    drawn: kept.start[i] + water.bySource.poured[i] - end[i],
  }));

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
    // Where no bird comes, no bird finds its drinkers dry.
    dry: sums.birds === 0 ? 0 : Math.min(1, tally.dry / light),
    dryFrom: sums.birds === 0 ? undefined : tally.dryFrom,
    comers: tally.comers,
    meanWait: waits.length === 0 ? 0 : waits.reduce((sum, one) => sum + one, 0) / waits.length,
    wait95: waits[Math.floor(0.95 * waits.length)] ?? 0,
    longestWait: waits.at(-1) ?? 0,
  };
}

function levelsOf({ line, pools }: DaySetting, levels: DayKept["levels"]): DayResult["levels"] {
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

function eventsOf(events: EventLists): DayEvents {
  return {
    count: events.time.length,
    time: Float64Array.from(events.time),
    kind: Uint8Array.from(events.kind),
    bird: Int32Array.from(events.bird),
    drinker: Int32Array.from(events.drinker),
  };
}

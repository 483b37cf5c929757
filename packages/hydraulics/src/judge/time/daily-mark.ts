import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import { volumeAtLevel } from "../../physics/vessel.js";
import { drawDown, type Refill } from "../../simulate/drawdown.js";
import type { IntakeFigure } from "../../simulate/pen-draw.js";
import { type AskedPlan, askPlan, MORNING } from "../asked-plan.js";
import { poolsOf } from "./give-out.js";

const DAY = 86_400;
/** A level read off a stick is good to this [m]; common practice, no source. */
const READING = 0.002;

/** A mark on the stick: where the water stands so many days on, by the figure to expect. */
export interface StickMark {
  readonly day: number;
  /** Level above the inside bottom [m], and what the vessel then holds [m³]. */
  readonly level: number;
  readonly volume: number;
  /** Where it may stand by then: from the most to the least that may be drunk [m]. */
  readonly low: number;
  readonly high: number;
}

/** How far a level should fall in a day, and what other falls mean. Heights [m], volumes [m³]. */
export interface Mark {
  readonly source: string;
  readonly index: number;
  readonly day: number | undefined;
  /** Level it begins from [m above the inside bottom]. */
  readonly from: number;
  /** Full level, outlet, and inside height that matters for a stick [m]. */
  readonly full: number;
  readonly outlet: number;
  /** How far it falls by tomorrow at the same hour [m], and the water that is [m³]. */
  readonly fall: {
    readonly low: number;
    readonly expect: number;
    readonly size: number;
    readonly high: number;
  };
  readonly volume: {
    readonly low: number;
    readonly expect: number;
    readonly size: number;
    readonly high: number;
  };
  /** From dark to light [m]: what birds take in the dark, at most. */
  readonly nightFall: number;
  /** Falls less than this by tomorrow: something is stuck, and birds are thirsty [m]. */
  readonly stuckBelow: number;
  /** Falls more than this overnight: it leaks [m]; and what each further centimetre is a day [m³/day]. */
  readonly leakAbove: number;
  readonly leakPerCentimetre: number;
  /** Whether the least a day may fall is too small to be told from none on a stick. */
  readonly isTooSmallToRead: boolean;
  /** Whether it is kept full (a hose, a feed): then the level tells nothing and no mark can be made. */
  readonly isKeptFull: boolean;
  readonly marks: readonly StickMark[];
  /** Levels a centimetre or more apart with what the vessel holds there, for the stick's scale. */
  readonly scale: readonly { readonly level: number; readonly volume: number }[];
}

/** The mark of a source, or what in the plan contradicts itself. */
export type MarkAnswer =
  | { readonly ok: true; readonly mark: Mark }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * The daily mark of a source: how far its level falls by tomorrow, and what it means when it falls less, or overnight.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  `source` by position (0 unless told); `level` it begins from [m], else full; `day` asked about
 * @returns the mark, or what in the plan does not fit
 * @throws RangeError when there is no such source, or the level is outside it
 * @example dailyMark(plan).mark.source   // "barrel"
 */
export function dailyMark(
  plan: Plan,
  options: { readonly source?: number; readonly level?: number; readonly day?: string | undefined } = {},
): MarkAnswer {
  const asking = askPlan(plan, options.day);
  if (!asking.ok) return asking;
  const { asked } = asking;
  const index = options.source ?? 0;
  const source = asked.judged.line.sources[index];
  if (source === undefined)
    throw new RangeError(`dailyMark: source is ${index}; there are ${plan.sources.length}`);
  const from = options.level ?? source.levels.full;
  if (!(from >= 0 && from <= source.levels.full + 1e-9))
    throw new RangeError(`dailyMark: level is ${from}; it must be from 0 to ${source.levels.full}`);
  return { ok: true, mark: markOf(asked, index, from) };
}

function markOf(asked: AskedPlan, index: number, from: number): Mark {
  const { line } = asked.judged;
  const source = line.sources[index];
  const start = asked.fullVolumes.map((full, i) => (i === index ? volumeAtLevel(source.shape, from) : full));
  const days = (figure: IntakeFigure) => levelsByDay(asked, index, start, figure);
  const [low, expect, size, high] = (["low", "expect", "size", "high"] as const).map(days);
  const fallOf = (levels: readonly number[]) => from - (levels[1] ?? from);
  const volumeOf = (levels: readonly number[]) =>
    volumeAtLevel(source.shape, from) - volumeAtLevel(source.shape, levels[1] ?? from);
  const nightFall = fallAtNight(asked, index, start);
  const area =
    (volumeAtLevel(source.shape, from) - volumeAtLevel(source.shape, Math.max(0, from - 0.01))) / 0.01;
  const light = asked.flock.weather.light;
  return {
    source: source.id,
    index,
    day: asked.flock.day,
    from,
    full: source.levels.full,
    outlet: source.outlet,
    fall: { low: fallOf(low), expect: fallOf(expect), size: fallOf(size), high: fallOf(high) },
    volume: { low: volumeOf(low), expect: volumeOf(expect), size: volumeOf(size), high: volumeOf(high) },
    nightFall,
    stuckBelow: Math.max(0, fallOf(low) - READING),
    leakAbove: nightFall + READING,
    leakPerCentimetre: light < DAY ? (area * 0.01 * DAY) / (DAY - light) : 0,
    isTooSmallToRead: fallOf(low) < 2 * READING,
    isKeptFull: source.feed !== undefined || asked.refills[index].kind === "hose",
    marks: expect.slice(1).map((level, d) => ({
      day: d + 1,
      level,
      volume: volumeAtLevel(source.shape, level),
      low: high[d + 1] ?? source.outlet,
      high: low[d + 1] ?? level,
    })),
    scale: scaleOf(asked, index),
  };
}

/** Level each day at the same hour, until the outlet, at most 60 days on; the first is the start. None of a tank kept full. */
function levelsByDay(
  asked: AskedPlan,
  index: number,
  start: readonly number[],
  figure: IntakeFigure,
): readonly number[] {
  const { judged, flock } = asked;
  const pools = poolsOf(judged, flock, aloneFrom(asked, start));
  const drawdown = drawDown(judged.line, flock, pools, { figure, from: MORNING, lasts: 60 * DAY });
  const store = pools.flatMap(({ stores }) => stores).find((one) => one.source === index);
  if (store === undefined) return [];
  const levels: number[] = [];
  for (let day = 0; day <= 60; day += 1) {
    const time = MORNING + day * DAY;
    if (time > drawdown.until + 1e-6) break;
    levels.push(store.levelAt(volumeAtTime(drawdown.levels, index, time)));
  }
  return levels;
}

/** Straight between the points: the draw is even there. */
function volumeAtTime(
  levels: readonly { readonly time: number; readonly volumes: readonly number[] }[],
  index: number,
  time: number,
): number {
  const next = levels.findIndex((point) => point.time >= time - 1e-6);
  const [before, after] = [levels[Math.max(0, next - 1)], levels[next < 0 ? levels.length - 1 : next]];
  if (before === after || after.time <= before.time) return after.volumes[index];
  const share = Math.min(1, (time - before.time) / (after.time - before.time));
  return before.volumes[index] + share * (after.volumes[index] - before.volumes[index]);
}

/** The most birds take in the dark, as a fall of the level. */
function fallAtNight(asked: AskedPlan, index: number, start: readonly number[]): number {
  const { judged, flock } = asked;
  const { dawn, light } = flock.weather;
  if (light >= DAY) return 0;
  const pools = poolsOf(judged, flock, aloneFrom(asked, start));
  const drawdown = drawDown(judged.line, flock, pools, {
    figure: "high",
    from: dawn + light,
    lasts: DAY - light,
  });
  const store = pools.flatMap(({ stores }) => stores).find((one) => one.source === index);
  if (store === undefined) return 0;
  const [first, last] = [drawdown.levels[0], drawdown.levels[drawdown.levels.length - 1]];
  return store.levelAt(first.volumes[index]) - store.levelAt(last.volumes[index]);
}

function aloneFrom(asked: AskedPlan, start: readonly number[]) {
  const refills = asked.refills.map((): Refill => ({ kind: "none" }));
  return { refills, start, failed: new Set<number>(), dripRate: 0 };
}

function scaleOf(asked: AskedPlan, index: number): Mark["scale"] {
  const { shape, levels } = asked.judged.line.sources[index];
  const step = levels.full > 0.6 ? 0.05 : levels.full > 0.2 ? 0.02 : 0.01;
  const count = Math.floor(levels.full / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, k) => ({
    level: k * step,
    volume: volumeAtLevel(shape, k * step),
  }));
}

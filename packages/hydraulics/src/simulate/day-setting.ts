import { type DayCurve, dayCurve } from "../birds/day-curve.js";
import { type Flock, isThere } from "../model/flock.js";
import { intakeOfBatch } from "../model/flock-intake.js";
import type { Line } from "../model/line.js";
import { groupOf, isOpen, placesOf } from "./crowd-want.js";
import type { DrawnPool } from "./drawdown.js";
import { spilledShareOfPen } from "./pen-draw.js";

/**
 * How birds behave where nothing published says so; all common practice, no source.
 *
 * spread    of what one bird wants against the next: standard deviation as a share
 * patience  a bird that finds every place taken waits this long, then goes away [s]
 * retry     and comes back after so long on average [s]
 * ahead     how many bouts a bird drinks ahead of its thirst
 * least, most  a bout is no less and no more than so many usual ones
 *
 * @source common-practice, not stated, from memory
 */
export const BEHAVIOUR = { spread: 0.2, patience: 60, retry: 300, ahead: 1, least: 0.3, most: 3 } as const;

/** How bouts and waits are drawn; only tests against theory take other than the birds' own. */
export interface Habits {
  readonly bouts: "thirst" | "fixed" | "exponential";
  readonly patience: number;
  readonly retry: number;
  readonly spread: number;
}

export const BIRD_HABITS: Habits = {
  bouts: "thirst",
  patience: BEHAVIOUR.patience,
  retry: BEHAVIOUR.retry,
  spread: BEHAVIOUR.spread,
};

/** One batch of a pen, ready to be let loose. */
export interface DayBatch {
  readonly pen: number;
  readonly index: number;
  readonly count: number;
  /** Wanted by a middling bird in the day [m³]. */
  readonly wanted: number;
  readonly bouts: number;
  readonly fastest: number;
  readonly curve: DayCurve;
}

/** All a day needs that does not change from one seed to another. */
export interface DaySetting {
  readonly line: Line;
  readonly day: number | undefined;
  readonly light: { readonly dawn: number; readonly lasts: number };
  readonly pools: readonly DrawnPool[];
  readonly batches: readonly DayBatch[];
  /** By pen: name, drinkers, what is spilled over what is drunk. */
  readonly pens: readonly {
    readonly id: string;
    readonly drinkers: readonly number[];
    readonly spilled: number;
  }[];
  /** By drinker: birds that drink there at once. */
  readonly places: readonly number[];
  /** By drinker: head that air left in the line takes [m]. */
  readonly airHead: readonly number[];
}

export function buildDaySetting(
  line: Line,
  flock: Flock,
  pools: readonly DrawnPool[],
  figure: "expect" | "size",
  airHead: readonly number[],
): DaySetting {
  const { weather } = flock;
  const isMostlyOpen = (drinkers: readonly number[]) =>
    2 * drinkers.filter((d) => isOpen(groupOf(line, d))).length > drinkers.length;
  return {
    line,
    day: flock.day,
    light: { dawn: weather.dawn, lasts: weather.light },
    pools,
    batches: flock.pens.flatMap((pen, p) =>
      pen.batches.filter(isThere).map(
        (batch): DayBatch => ({
          pen: p,
          index: batch.index,
          count: batch.count,
          wanted: intakeOfBatch(batch, weather)[figure],
          bouts: isMostlyOpen(pen.drinkers) ? batch.kind.boutsOpen : batch.kind.boutsClosed,
          fastest: batch.kind.fastest,
          curve: dayCurve({ shape: batch.kind.dayShape, ...weather, temperature: weather.high }),
        }),
      ),
    ),
    pens: flock.pens.map((pen) => ({
      id: pen.id,
      drinkers: pen.drinkers,
      spilled: spilledShareOfPen(line, pen),
    })),
    places: Array.from({ length: line.drinkers.count }, (_, d) => placesOf(groupOf(line, d))),
    airHead,
  };
}

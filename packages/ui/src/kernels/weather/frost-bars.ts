import type { Frost, FrostPart } from "@headfall/hydraulics";
import { linearScale, type Tick, ticksOf } from "../linear-scale.js";

const HOUR = 3600;

/** One part's bar: from dusk until its water is at 0 °C, then until it stops, then stopped; with what still air makes of it. */
export interface FrostBar {
  readonly part: FrostPart;
  readonly y: number;
  /** Where the water is at 0 °C, where it stops, and where it stops at the latest; no further than the axis. */
  readonly cold: number;
  readonly stops: number;
  readonly stopsLatest: number;
  /** Whether it goes on beyond the axis without stopping. */
  readonly goesOn: boolean;
}

export interface FrostBars {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly bars: readonly FrostBar[];
  readonly hours: readonly Tick[];
  /** Where the night ends. */
  readonly nightEnds: number;
}

/** Height of a row, and of its bar below its words. */
export const ROW = { height: 44, words: 15, bar: 16 } as const;
const MARGIN = { side: 10, top: 4, bottom: 40 } as const;

/** Bars of hours on one axis with the night's length: a quarter more than the night is shown. */
export function layFrostBars(frost: Frost, width: number): FrostBars {
  const { parts, night } = frost;
  const shown = 1.25 * night.hours;
  const [left, right] = [MARGIN.side, width - MARGIN.side];
  const x = linearScale([0, shown], [left, right]);
  const at = (seconds: number) => x(Math.min(seconds, shown));
  const bottom = MARGIN.top + parts.length * ROW.height;
  return {
    width,
    height: bottom + MARGIN.bottom,
    left,
    right,
    bottom,
    bars: parts.map((part, k) => {
      const stop = part.blocked ?? part.solid;
      return {
        part,
        y: MARGIN.top + k * ROW.height,
        cold: at(part.cold.soonest),
        stops: at(stop.soonest),
        stopsLatest: at(stop.latest),
        goesOn: stop.soonest > shown,
      };
    }),
    hours: ticksOf(x, HOUR, width < 420 ? 6 : 12),
    nightEnds: x(night.hours),
  };
}

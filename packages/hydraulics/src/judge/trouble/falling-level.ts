import type { Source } from "../../model/line.js";
import { levelAtVolume, volumeAtLevel } from "../../physics/vessel.js";

/** How a level goes down: by what leaks from it, and what is drawn besides. */
export interface FallingLevel {
  /** Level after a time [m above the inside bottom]. */
  readonly fallIn: (seconds: number, drawnRate: number) => number;
  /** Until it gives no more [s]; Infinity where nothing leaves. */
  readonly timeToEmpty: (drawnRate: number) => number;
}

/** Pieces of the way down over which the leak is taken as even: its flow changes by a few parts in a hundred in each. */
const PIECES = 8;

/**
 * The level of a source that leaks, in pieces of equal volume: in each the leak is that of its middle, solved with
 * the line.
 *
 * @param level   where the water stands [m above the inside bottom]
 * @param leakAt  flow that leaves with nobody drinking, by level [m3/s]
 */
export function fallingLevel(source: Source, level: number, leakAt: (level: number) => number): FallingLevel {
  const { shape, outlet } = source;
  const start = volumeAtLevel(shape, level);
  const dead = volumeAtLevel(shape, Math.min(level, outlet));
  const piece = (start - dead) / PIECES;
  const leaks =
    leakAt(level) <= 0
      ? new Array<number>(PIECES).fill(0)
      : Array.from({ length: PIECES }, (_, k) => leakAt(levelAtVolume(shape, start - (k + 0.5) * piece)));
  const volumeAfter = (seconds: number, drawnRate: number) => {
    let left = seconds;
    for (let k = 0; k < PIECES; k += 1) {
      const rate = Math.max(0, leaks[k] + drawnRate);
      if (rate * left < piece) return start - k * piece - rate * left;
      left -= piece / rate;
    }
    return dead;
  };
  return {
    fallIn: (seconds, drawnRate) =>
      Math.max(0, level - levelAtVolume(shape, volumeAfter(seconds, drawnRate))),
    timeToEmpty: (drawnRate) =>
      leaks.reduce((sum, leak) => {
        const rate = leak + drawnRate;
        return rate > 0 ? sum + piece / rate : Number.POSITIVE_INFINITY;
      }, 0),
  };
}

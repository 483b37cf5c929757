import type { Citation } from "./citation.js";

/** A soil, dry and undisturbed, and what it is presumed to bear [Pa]. */
export interface Soil {
  readonly id: string;
  readonly name: string;
  readonly pressure: number;
  readonly citation: Citation;
}

/** A thread of small pipe or hose. Lengths [m]. */
export interface Thread {
  readonly id: string;
  readonly kind: string;
  /** As sold, inches. */
  readonly size: string;
  readonly name: string;
  /** Outside of the thread at its widest. */
  readonly major: number;
  /** Threads to the inch. */
  readonly perInch: number;
  /** Hole through which it passes freely. */
  readonly hole: number;
  /** Drill before a tap cuts the thread; 0 where nobody taps it. */
  readonly tap: number;
  readonly citation: Citation;
}

/** What is drilled for a part: commonest, and the range of the patterns sold [m]. */
export interface Hole {
  readonly id: string;
  readonly part: string;
  readonly name: string;
  /** Row of the threads; empty where it has none. */
  readonly thread: string;
  readonly hole: number;
  readonly holeLow: number;
  readonly holeHigh: number;
  readonly citation: Citation;
}

/** A length that a make of pipe is sold in [m]. */
export interface StockLength {
  readonly id: string;
  /** First word of the families it is for. */
  readonly family: string;
  readonly form: string;
  readonly length: number;
  readonly citation: Citation;
}

import type { Pool } from "./pool.js";

/** How a source is filled again. */
export type Refill =
  | { readonly kind: "none" }
  /** Up to full, every so long from the first time on [s]. */
  | { readonly kind: "byHand"; readonly every: number; readonly first: number }
  /** Through a float valve, no faster than this [m³/s]. */
  | { readonly kind: "hose"; readonly flow: number };

/** What pours out of a pool where nobody drinks: it follows the height the pool presses from. */
export interface PoolLeak {
  /** The surface at and below which nothing leaks [m above datum]. */
  readonly endsAt: number;
  /** @returns what leaks while the pool presses from this height [m³/s] */
  flowAt(surface: number): number;
}

/** A pool with what hangs on it. */
export interface DrawnPool extends Pool {
  /** By store. */
  readonly refills: readonly Refill[];
  /** Besides what birds take: drips that do not stop [m³/s]. */
  readonly drips: number;
  /** Left out where nothing pours out. */
  readonly leak?: PoolLeak | undefined;
  /** Pens it serves, with the share of each pen's drinkers it does. */
  readonly pens: readonly { readonly pen: number; readonly share: number }[];
  /** Drinkers by index, each with the surface at and below which nothing comes [m above datum]. */
  readonly dryBelow: readonly { readonly drinker: number; readonly surface: number }[];
  /** Pens by index, each with the surface below which its drinkers together cannot keep up with its busiest hour. */
  readonly shortBelow: readonly { readonly pen: number; readonly surface: number }[];
}

/** Something that happens while water is drawn down; times [s after midnight of the first day]. */
export type DrawdownEvent =
  | { readonly time: number; readonly kind: "drinkerDry"; readonly drinker: number }
  | { readonly time: number; readonly kind: "penShort"; readonly pen: number; readonly pool: number }
  | { readonly time: number; readonly kind: "empty"; readonly pool: number }
  | { readonly time: number; readonly kind: "refilled"; readonly source: number; readonly volume: number };

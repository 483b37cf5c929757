import type { Pool } from "./pool.js";

/** How a source is filled again. */
export type Refill =
  | { readonly kind: "none" }
  /** Up to full, every so long from the first time on [s]. */
  | { readonly kind: "byHand"; readonly every: number; readonly first: number }
  /** Through a float valve, no faster than this [m³/s]. */
  | { readonly kind: "hose"; readonly flow: number };

/** A pool with what hangs on it. */
export interface DrawnPool extends Pool {
  /** By store. */
  readonly refills: readonly Refill[];
  /** Besides what birds take: drips and leaks that do not stop [m³/s]. */
  readonly drips: number;
  /** Pens it serves, with the share of each pen's drinkers it does. */
  readonly pens: readonly { readonly pen: number; readonly share: number }[];
  /** Drinkers by index, each with the surface at and below which nothing comes [m above datum]. */
  readonly dryBelow: readonly { readonly drinker: number; readonly surface: number }[];
  /** Pens by index, each with the surface below which its drinkers together cannot keep up with its busiest hour. */
  readonly shortBelow: readonly { readonly pen: number; readonly surface: number }[];
}

export type DrawdownEvent =
  | { readonly time: number; readonly kind: "drinkerDry"; readonly drinker: number }
  | { readonly time: number; readonly kind: "penShort"; readonly pen: number }
  | { readonly time: number; readonly kind: "empty"; readonly pool: number }
  | { readonly time: number; readonly kind: "refilled"; readonly source: number; readonly volume: number };

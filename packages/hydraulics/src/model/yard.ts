import type { Plan } from "../document/plan-schema.js";
import type { WatererKind } from "../tables/waterer-types.js";

/**
 * What holds water in the pens beside the line: loose waterers, each on its slope. Plain SI data, made by `buildYard`
 * and never changed.
 */
export interface Yard {
  readonly pens: readonly YardPen[];
}

/** A pen with its slope [-] and its loose waterers. */
export interface YardPen {
  readonly id: string;
  /** Position in the plan's list of pens. */
  readonly index: number;
  /** tan of the slope of its ground. */
  readonly slope: number;
  readonly waterers: readonly LooseWaterer[];
}

/** Which way the air hole of a fount looks. */
export const HOLE_WAYS = ["uphill", "sideways", "downhill"] as const;
/** Which way the hole of a fount looks on its slope. */
export type HoleWay = (typeof HOLE_WAYS)[number];

/** One entry of a pen: waterers that stand alike. */
export interface LooseWaterer {
  readonly id: string;
  /** Position in the pen's list. */
  readonly index: number;
  /** Its kind, with the plan's own sizes put in. */
  readonly kind: WatererKind;
  readonly count: number;
  /** tan of the slope it stands on; what hangs hangs plumb. */
  readonly slope: number;
  readonly hole: HoleWay;
  /** Water each holds when filled standing level [m³]. */
  readonly holds: number;
  /** Lip or pins above what the birds stand on [m]; undefined: it stands there, or hangs where the birds want it. */
  readonly hang: number | undefined;
  /** Hook to water [m], of what hangs. */
  readonly cord: number;
  /** Filled by hand this often [s]; undefined: when empty. */
  readonly refillEvery: number | undefined;
  readonly isShaded: boolean;
}

/** Angle of the first air hole from downhill [rad]. */
export const FACING: Readonly<Record<HoleWay, number>> = {
  uphill: Math.PI,
  sideways: Math.PI / 2,
  downhill: 0,
};

/**
 * Whether a plan has loose waterers at all.
 *
 * @example hasWaterers(examplePlan("yard"))   // true
 */
export const hasWaterers = ({ pens }: Pick<Plan, "pens">): boolean =>
  (pens ?? []).some(({ waterers }) => (waterers ?? []).length > 0);

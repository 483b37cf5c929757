import type { Plan } from "../document/plan-schema.js";
import type { DrinkerVerdict, VerdictName } from "../judge/check-result.js";
import type { Cost, CostMeasure } from "./cost.js";
import type { CureKind } from "./cure-kinds.js";
import type { SceneReport } from "./requirement.js";

export { CURE_KINDS, type CureKind } from "./cure-kinds.js";

/** One thing to do, with the numbers its sentence needs; lengths and heads in SI. */
export type Change =
  | { readonly code: "stand"; readonly source: string; readonly from: number; readonly to: number }
  | {
      readonly code: "pipe";
      readonly run: string;
      readonly length: number;
      readonly from: string;
      readonly to: string;
    }
  | { readonly code: "openTap"; readonly run: string; readonly was: "half" | "shut" }
  | { readonly code: "openVent"; readonly source: string; readonly opening: number }
  | {
      readonly code: "bleed";
      readonly run: string | undefined;
      readonly point: string;
      readonly along: number | undefined;
    }
  | {
      readonly code: "drinkers";
      readonly group: string;
      readonly count: number;
      readonly from: string;
      readonly to: string;
    }
  /** The last (or first) drinkers of a group left off; what the birds of its pen then have, and need, of that device. */
  | {
      readonly code: "leaveOff";
      readonly group: string;
      readonly off: number;
      readonly of: number;
      readonly end: "near" | "far";
      readonly pen: string;
      readonly birds: number;
      readonly has: number;
      readonly needed: number;
    }
  /** An outlet as wide as its pipe, in place of one so wide [m]. */
  | { readonly code: "outlet"; readonly source: string; readonly from: number }
  | {
      readonly code: "newRun";
      readonly run: string;
      readonly from: string;
      readonly to: string;
      readonly length: number;
      readonly pipe: string;
      /** A joint cut into this run for it, so far from its start [m]. */
      readonly into: string | undefined;
      readonly along: number | undefined;
      /** Whether that run is cut there, so that the new one alone feeds what lies beyond. */
      readonly isCut: boolean;
    }
  | { readonly code: "regulator"; readonly run: string; readonly sets: number }
  | {
      readonly code: "headerTank";
      readonly tank: string;
      readonly run: string;
      readonly at: string;
      readonly stand: number;
    }
  | { readonly code: "moveSource"; readonly source: string; readonly to: string };

/** How one drinker fares with a plan on the plan's own day. */
export interface DrinkerOutcome {
  readonly drinker: string;
  readonly verdict: VerdictName;
  /** Head to spare against what it would fall short of first, negative where it does [m]. */
  readonly spare: number;
  readonly moments: DrinkerVerdict["moments"];
}

/** How all drinkers fare, in each scene that was asked for. */
export interface Outcome {
  readonly verdict: VerdictName;
  readonly counts: Readonly<Record<VerdictName, number>>;
  readonly scenes: readonly SceneReport[];
  readonly drinkers: readonly DrinkerOutcome[];
  /** Whether every drinker is good in every scene, with the margin asked for. */
  readonly meets: boolean;
}

/** A drinker that works with a cure, but with little to spare. */
export interface Close {
  readonly drinker: string;
  /** [m] */
  readonly spare: number;
  readonly week: number;
  readonly hot: boolean;
  readonly against: "starving" | "dripping" | "notSealing";
}

/** A plan that works, and what it takes to come to it. */
export interface Cure {
  readonly kind: CureKind;
  readonly cost: Cost;
  readonly changes: readonly Change[];
  /** The plan with all of it done: to be opened in place of the one that was asked about. */
  readonly plan: Plan;
  readonly after: Outcome;
  /** Where least is to spare, in the scene where it is least. */
  readonly close: Close | undefined;
  /** Whether no plan of this kind is cheaper. */
  readonly proven: boolean;
}

/** What was searched for one kind of remedy. */
export interface SearchReport {
  readonly kind: CureKind;
  /** Plans in the space, plans judged one by one, and parts of the space for which a bound stood for all their plans. */
  readonly plans: number;
  readonly judged: number;
  readonly parts: number;
  readonly proven: boolean;
  /** Where it is not proven: no plan of this kind that works costs less. */
  readonly bound: Cost | undefined;
  readonly found: boolean;
}

/** What would have to give where nothing works: each by itself the least that would do, as far as was looked. */
export type Relaxation =
  /** A higher stand than was allowed [m]. */
  | {
      readonly give: "standMost";
      readonly needed: number;
      readonly allowed: number;
      readonly cost: Cost;
      readonly plan: Plan;
    }
  /** Less head to spare than was asked for; negative: so much short [m]. */
  | {
      readonly give: "margin";
      readonly best: number;
      readonly asked: number;
      readonly cost: Cost;
      readonly plan: Plan;
    }
  /** Drinkers that cannot be had: with the best plan that was found, so many are not good. */
  | {
      readonly give: "drinkers";
      readonly lost: number;
      readonly of: number;
      readonly names: readonly string[];
      /** The worst of them: its flow, and the flow it needs [m3/s]; undefined where it drips. */
      readonly flow: number | undefined;
      readonly need: number | undefined;
      readonly plan: Plan;
    };

/** The changes that make a plan work, what was searched, and how far that is proven. */
export interface CureAnswer {
  readonly by: CostMeasure;
  /** Name of the money of the plan's prices. */
  readonly money: string | undefined;
  readonly margin: number;
  readonly standMost: number;
  /** How the plan does as it is. */
  readonly before: Outcome;
  /** The cheapest of each kind, the cheapest of all first; none where nothing works, or nothing is wrong. */
  readonly cures: readonly Cure[];
  readonly searches: readonly SearchReport[];
  /** Whether the first cure is the cheapest of all that was searched; without cures, whether nothing there works. */
  readonly proven: boolean;
  /** Set where nothing works. */
  readonly relaxations: readonly Relaxation[];
  /** Whether the search was ended from outside. */
  readonly stopped: boolean;
}

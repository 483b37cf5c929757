import type { CostMeasure, CureAnswer, CureKind, FrontAnswer, Plan, Variant } from "@headfall/hydraulics";
import type { TypingController } from "../fields/typing-controller.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What a keeper says of the cure wanted; what is undefined is left to the library. */
export interface Wanted {
  readonly by: CostMeasure | undefined;
  /** Highest stand to think of [m]. */
  readonly standMost: number | undefined;
  /** Head to spare [m]. */
  readonly margin: number;
  /** Coming weeks in which it must hold. */
  readonly weeks: number | undefined;
  /** Kinds of remedy that are out of the question. */
  readonly never: readonly CureKind[];
}

/** What its user can do in this room besides editing the plan. */
export interface CureActs {
  readonly want: (wanted: Partial<Wanted>) => void;
  readonly look: () => void;
  readonly cancel: () => void;
  /** The tables of a cure are wanted, by its place. */
  readonly unfold: (cure: number) => void;
  readonly trade: () => void;
  readonly cancelTrade: () => void;
  /** Looks at one point of a trade-off, by its place. */
  readonly point: (which: TradeOff, at: number) => void;
  /** Makes of the plan in hand what was found for it, or for the plan it was then. */
  readonly take: (of: Plan, found: Plan, what: string) => void;
}

/** What every view of this room is made from. */
export interface CureRoom {
  readonly plan: Plan;
  readonly system: UnitSystem;
  readonly wanted: Wanted;
  readonly typing: TypingController;
  readonly isWide: boolean;
  readonly acts: CureActs;
}

/** What is given up for what: money for margin, or height for size. */
export type TradeOff = "margin" | "height";

/** A room in which what was found can be taken. */
export interface TakingRoom extends CureRoom {
  /** The plan it was found for. */
  readonly of: Plan;
  /** Whether the plan in hand is this one by now. */
  readonly isTaken: (found: Plan) => boolean;
}

/** The same with the cures that were found. */
export interface CuredRoom extends TakingRoom {
  readonly answer: CureAnswer;
  /** Cures whose tables have been unfolded, by their place. */
  readonly unfolded: ReadonlySet<number>;
}

/** The same with trade-offs, and the point of each that is looked at. */
export interface TradedRoom extends TakingRoom {
  readonly front: FrontAnswer;
  readonly at: Readonly<Record<TradeOff, number>>;
}

/** A plan that is kept elsewhere, to be set beside the one in hand. */
export interface KeptPlan {
  readonly id: string;
  readonly name: string;
  readonly plan: Plan;
}

/** What is set beside the plan in hand. */
export interface BesideRoom {
  readonly plan: Plan;
  readonly system: UnitSystem;
  /** Plans to choose from; undefined until they are asked for. */
  readonly others: readonly KeptPlan[] | undefined;
  readonly chosen: ReadonlySet<string>;
  /** The plan in hand first; undefined until they are compared. */
  readonly variants: readonly Variant[] | undefined;
  readonly isOld: boolean;
  readonly problems: readonly string[];
  readonly acts: BesideActs;
}

export interface BesideActs {
  /** Undefined where no plans are kept. */
  readonly list: (() => void) | undefined;
  readonly choose: (id: string, isChosen: boolean) => void;
  readonly openFiles: (files: readonly File[]) => void;
}

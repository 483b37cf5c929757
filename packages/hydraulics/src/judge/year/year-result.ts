import type { Problem } from "../../document/problem.js";
import type { FlockIntake } from "../../model/flock-intake.js";
import type { LendingCost } from "../../numerics/lending/lending.js";
import type { PenDrinkers, Region } from "../birds/drinkers-needed.js";
import type { HangRange } from "../birds/hang-range.js";

/** A plan through a year, week by week. Volumes [m³], temperatures [°C]; days are counted since 1970-01-01. */
export interface YearOfPlan {
  readonly from: number;
  /** The first day after it. */
  readonly to: number;
  readonly region: Region;
  readonly weatherFrom: "months" | "oneWeather";
  readonly pens: readonly { readonly pen: string; readonly index: number }[];
  /** Weeks, cut where a batch comes, moves or leaves. */
  readonly periods: readonly YearPeriod[];
  readonly events: readonly YearEvent[];
  /** Undefined where the plan tells of no kit. */
  readonly kit: KitGiven | undefined;
}

/** A year of a plan, or what in it contradicts itself. */
export type YearAnswer =
  | { readonly ok: true; readonly year: YearOfPlan }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Days on which the same birds are in the same pens. */
export interface YearPeriod {
  /** Week it lies in, from 0. */
  readonly week: number;
  readonly from: number;
  /** The first day after it. */
  readonly to: number;
  /** Usual air on its last day, and of the hottest days of that time; undefined where none is told. */
  readonly air: { readonly high: number; readonly low: number };
  readonly hotAir: { readonly high: number; readonly low: number } | undefined;
  /** In the order of the plan's pens. */
  readonly pens: readonly PenPeriod[];
}

/** One pen in one period, as it is on the last day, when birds that grow ask most; heights are those of the first. */
export interface PenPeriod {
  readonly birds: number;
  readonly batches: readonly {
    readonly kind: string;
    readonly kindName: string;
    readonly count: number;
    /** On the period's first and last day. */
    readonly ageFrom: number;
    readonly ageTo: number;
    /** What one drinks in a usual day, to size on, what is spilled not counted. */
    readonly each: number;
  }[];
  /** Spilled over drunk. */
  readonly spilled: number;
  /** Drunk and spilled in a day: usual, and on the hottest days of that time. */
  readonly draw: FlockIntake;
  readonly hotDraw: FlockIntake | undefined;
  /** Its drinkers of the line against what it needs of them. */
  readonly drinkers: PenDrinkers;
  /** Shares of its need met by its drinkers of the line and its own loose waterers. */
  readonly byLine: number;
  readonly byWaterers: number;
  /** Where pins and lips belong on the first day, for the smallest birds; undefined where no table says. */
  readonly heights: { readonly nipple: HangRange | undefined; readonly cup: HangRange | undefined };
}

/** What happens on a day. */
export type YearEvent =
  | (BatchEvent & { readonly code: "arrives" | "hatches" | "leaves" })
  | (BatchEvent & { readonly code: "moves"; readonly to: string })
  | ChangeOverEvent;

/** Something that happens to a batch of birds on a day. */
export interface BatchEvent {
  readonly day: number;
  readonly pen: string;
  readonly kindName: string;
  readonly count: number;
  readonly ageDays: number;
}

/** Birds grow out of what they drink from: both stay until a day. */
export interface ChangeOverEvent {
  readonly code: "changeOver";
  readonly day: number;
  readonly pen: string;
  readonly from: readonly string[];
  readonly to: readonly string[];
  /** The old may go on this day. */
  readonly until: number;
  /** Whether it is a waterer of the pen itself, or from the kit. */
  readonly by: "pen" | "kit";
  /** Kinds of the kit that are wanted elsewhere before then. */
  readonly wantedElsewhere: readonly string[];
}

/** The kit, given out to the pens. */
export interface KitGiven {
  readonly kinds: readonly KitKind[];
  /** By period, by pen, by kind: pieces there. */
  readonly lent: readonly (readonly (readonly number[])[])[];
  /** By period, by pen, by kind: how far one piece goes; undefined where it does not suit, or no bird is there. */
  readonly serves: readonly (readonly (readonly (Serving | undefined)[])[])[];
  readonly handed: readonly HandedOut[];
  readonly shortages: readonly Shortage[];
  readonly cost: LendingCost;
  readonly bound: LendingCost;
  readonly isProven: boolean;
  readonly isHeldDown: boolean;
  readonly parts: number;
  readonly buy: LeastToBuy | undefined;
}

/** How far one piece goes in a pen. */
export interface Serving {
  /** Share of the need it meets. */
  readonly share: number;
  /** Pieces that would be enough without anything else of the kit. */
  readonly enough: number;
  /** What leaves it so little: rules and advice, the crowd, a day's water in two fillings, or two in reach of each bird. */
  readonly because: "rules" | "crowd" | "water" | "inReach";
}

/** A kind of thing in the kit: how many there are, kept back, and out at once. */
export interface KitKind {
  readonly id: string;
  readonly name: string;
  readonly isWaterer: boolean;
  readonly count: number;
  readonly spare: number;
  /** Water one holds; 0 of a drinker. */
  readonly holds: number;
  /** The most of them that are out at once. */
  readonly mostOut: number;
}

/** Pieces put out in a pen on the first day of a period, and where they come from: another pen, or the shelf. */
export interface HandedOut {
  readonly period: number;
  readonly day: number;
  readonly pen: string;
  readonly kind: string;
  readonly kindName: string;
  readonly count: number;
}

/** A pen that goes short, from one day to another, for one reason. */
export interface Shortage {
  readonly pen: string;
  readonly from: number;
  readonly to: number;
  /** Share of the need that is met, at the worst; and birds without a place then. */
  readonly met: number;
  readonly birds: number;
  readonly because: ShortReason;
}

/** Why a pen is short of kit. */
export type ShortReason =
  /** Nothing in the kit suits these birds. */
  | { readonly code: "noneSuits" }
  /** All of the kit in this pen would not be enough. */
  | { readonly code: "tooFewOfAll" }
  /** Enough is there, but in other pens. */
  | { readonly code: "inOtherPens"; readonly pens: readonly string[] }
  /** Those kept back would be enough. */
  | { readonly code: "keptBack"; readonly kinds: readonly string[] };

/** The least to buy, once, so that no pen goes short for want of kit. */
export interface LeastToBuy {
  readonly items: readonly { readonly id: string; readonly name: string; readonly count: number }[];
  readonly by: "pieces" | "money";
  readonly cost: number;
  /** No purchase is cheaper than this. */
  readonly bound: number;
  /** Pens that go short whatever is bought, as nothing suits. */
  readonly never: readonly { readonly pen: string; readonly from: number }[];
}

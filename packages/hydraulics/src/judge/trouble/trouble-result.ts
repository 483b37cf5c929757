import type { Problem } from "../../document/problem.js";
import type { Cause } from "./cause.js";
import type { UsefulLook } from "./next-look.js";
import type { Sign } from "./signs.js";
import type { Severity } from "./trial.js";
import type { SignFit } from "./weigh.js";

/** Likely causes of what a keeper sees: plain data, SI. The sentences are written in report/. */
export interface Trouble {
  readonly plan: { readonly digest: string };
  readonly signs: readonly Sign[];
  /** Signs that follow from an empty source whatever emptied it: they were not held against the causes. */
  readonly setAside: readonly Sign[];
  /** Likeliest first; at least one, and those that hold more than a hundredth of all. */
  readonly likely: readonly LikelyCause[];
  /** Share of all causes not listed. */
  readonly otherShare: number;
  /** Whether even the likeliest cause leaves some sign unexplained that "something else" would not. */
  readonly fitsBadly: boolean;
  /** Two things wrong at once, where one leaves some sign badly explained and two do not; else undefined. */
  readonly twoAtOnce: TwoAtOnce | undefined;
  /** The look that best tells the first two apart; undefined where none does or nothing stands second. */
  readonly nextLook: UsefulLook | undefined;
  /** Further looks between the same two, best first. */
  readonly moreLooks: readonly UsefulLook[];
  /** The look that tells best which place it is, where the likeliest stands for several. */
  readonly lookAmong: UsefulLook | undefined;
  /** Positions in `likely` of causes that no look of these tells from the first one. */
  readonly notToldFromFirst: readonly number[];
  /** What was tried. */
  readonly tried: { readonly causes: number; readonly states: number; readonly drinkers: number };
  /** The levels the water was taken to stand at [m above the inside bottom], by source. */
  readonly levels: readonly { readonly source: string; readonly level: number }[];
}

/** What is wrong, and where. */
export interface NamedCause {
  readonly code: Cause["code"];
  readonly at: Cause["at"];
  /** Places the signs so far do not tell apart; one, or more of a kind. */
  readonly places: readonly string[];
  /** How bad, and where along its run, as the signs have it. */
  readonly severity: Severity;
}

/** Two causes that hold together. */
export interface TwoAtOnce {
  /** That first which is the likelier alone. */
  readonly causes: readonly [NamedCause, NamedCause];
  /** Share among all causes alone and all pairs that were solved, and that of the likeliest alone among these. */
  readonly share: number;
  readonly aloneShare: number;
  /** Signs that the likeliest cause alone leaves badly explained. */
  readonly unexplained: readonly Sign[];
  readonly fits: readonly SignFit[];
  readonly against: readonly SignFit[];
  /** Pairs of states that were solved. */
  readonly tried: number;
}

/** A cause with its share among all, and the signs that speak for and against it. */
export interface LikelyCause extends NamedCause {
  readonly share: number;
  /** Signs that speak for it, and those that do not fit it, strongest first. */
  readonly fits: readonly SignFit[];
  readonly against: readonly SignFit[];
}

/** The likely causes, or what in the plan or the signs contradicts itself. */
export type TroubleAnswer =
  | { readonly ok: true; readonly trouble: Trouble }
  | { readonly ok: false; readonly problems: readonly Problem[] };

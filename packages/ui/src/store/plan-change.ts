import type { Plan, PlanDrinkerGroup } from "@headfall/hydraulics";
import type { Ground } from "../kernels/above/spot.js";
import type { Selected } from "../kernels/selected.js";
import type { PlanDiff } from "./plan-diff.js";

/** Which of a source's water levels an edit means. */
export type LevelName = "full" | "lowest" | "ordinary";

/** Where a run begins or ends: at a joint, on another run (a tee is put there), or at a new place. */
export type RunEndChoice =
  | { readonly kind: "joint"; readonly joint: string }
  | { readonly kind: "onRun"; readonly run: number; readonly along: number }
  | { readonly kind: "place"; readonly place: Ground };

/**
 * The edits a user makes, by name and as data. Lengths that come from a hand are in metres and are written into the
 * plan in the user's own units; what was typed stands as typed.
 */
export type PlanChange =
  /** One key typed anew, or taken out when `value` is undefined. The words say what it is: "stand of the barrel". */
  | {
      readonly kind: "set";
      readonly path: readonly (string | number)[];
      readonly value: unknown;
      readonly what: string;
    }
  /** Several keys typed at once, as one edit. */
  | {
      readonly kind: "setAll";
      readonly entries: readonly { readonly path: readonly (string | number)[]; readonly value: unknown }[];
      readonly what: string;
    }
  /** Puts a vessel, written as in the plan file, at a place on the ground. */
  | { readonly kind: "addSource"; readonly vessel: Plan["sources"][number]["vessel"]; readonly place: Ground }
  /** Lays a run, by way of its corners; a tee or a joint is put where an end needs one. */
  | {
      readonly kind: "drawRun";
      readonly from: RunEndChoice;
      readonly to: RunEndChoice;
      readonly corners: readonly Ground[];
      /** Along the pipe [m]; measured off the drawing when left out. */
      readonly length?: number;
      readonly pipe?: string;
    }
  /** Hangs a group of drinkers on a run. */
  | { readonly kind: "addDrinkers"; readonly run: number; readonly drinkers: PlanDrinkerGroup }
  /** Moves a source or joint; runs that are drawn to scale are measured anew, others keep their length. */
  | { readonly kind: "moveJoint"; readonly joint: string; readonly place: Ground }
  /** Moves a corner of a run as it is drawn from above, counted from 0. */
  | { readonly kind: "moveCorner"; readonly run: number; readonly corner: number; readonly place: Ground }
  /** Bends a run: puts a corner in before another, or behind the last. */
  | { readonly kind: "addCorner"; readonly run: number; readonly before: number; readonly place: Ground }
  /** Takes a bend out. */
  | { readonly kind: "deleteCorner"; readonly run: number; readonly corner: number }
  /** Puts the first drinker of a group at a distance from the start of its run [m]. */
  | { readonly kind: "moveDrinkers"; readonly run: number; readonly group: number; readonly first: number }
  /** Puts the pipe at a joint at a height above the datum [m], by the key that decides it. */
  | { readonly kind: "setHeight"; readonly joint: string; readonly height: number }
  /** One surveyed place of a run: how much lower it is than where falls are counted from [m]. */
  | { readonly kind: "moveReading"; readonly run: number; readonly reading: number; readonly fall: number }
  /** Surveys another place, so far from the start of the run [m]. */
  | { readonly kind: "addReading"; readonly run: number; readonly along: number; readonly fall: number }
  /** Takes a surveyed place out. */
  | { readonly kind: "deleteReading"; readonly run: number; readonly reading: number }
  /**
   * Cuts a run in two at a distance from its start [m]; no head and no flow changes by it. Only at the ordinary hour,
   * where the plan says how many of a group drink but not which, others of a group that was cut through may be taken.
   */
  | { readonly kind: "splitRun"; readonly run: number; readonly along: number }
  /** Makes one run of the two that meet at a joint. */
  | { readonly kind: "joinRuns"; readonly joint: string }
  /** Lays one joint upon another, so that their runs meet there. */
  | { readonly kind: "mergeJoints"; readonly joint: string; readonly into: string }
  /** Lays a joint upon another run, so far from the start of that [m]: a tee is put there. */
  | { readonly kind: "landJoint"; readonly joint: string; readonly run: number; readonly along: number }
  /** Puts the same part once more beside it. */
  | { readonly kind: "duplicate"; readonly part: Selected }
  /** Takes a part out, with all that then hangs on nothing. */
  | { readonly kind: "delete"; readonly part: Selected }
  /** Makes a pen with a few birds; it reaches drinkers that no other needs, where there are any. */
  | { readonly kind: "addPen" }
  /** Takes a pen out with its birds; its drinkers stay. */
  | { readonly kind: "deletePen"; readonly pen: number }
  /** Puts one more batch of birds into a pen. */
  | { readonly kind: "addBirds"; readonly pen: number }
  /** Takes a batch of birds out; with the last one goes its pen. */
  | { readonly kind: "deleteBirds"; readonly pen: number; readonly batch: number }
  /** Lets the birds of a pen to a group of drinkers, or keeps them from it; no two pens share one. */
  | {
      readonly kind: "reachDrinkers";
      readonly pen: number;
      /** Name of the group. */
      readonly drinkers: string;
      readonly reaches: boolean;
    }
  /** Brings in what was found for this plan elsewhere, a cure say; refused where a place of it has changed since. */
  | { readonly kind: "bringIn"; readonly diff: PlanDiff; readonly what: string }
  /** Gives a source, run, joint or group another name, wherever the plan mentions it. */
  | { readonly kind: "rename"; readonly part: Selected; readonly name: string };

/** What came of an edit: the new plan with its name in a few words, or why it cannot be done. */
export type Edited =
  | {
      readonly ok: true;
      readonly plan: Plan;
      readonly words: string;
      /** The part to look at next; undefined leaves the choice as it was, unless it is gone. */
      readonly selected?: Selected;
    }
  | { readonly ok: false; readonly because: string };

/**
 * What an edit puts somewhere else, as one text; undefined for edits of other sorts. Two edits in a row of the same
 * subject: the second alone says all.
 */
export function subjectOf(change: PlanChange): string | undefined {
  switch (change.kind) {
    case "set":
      return JSON.stringify([change.kind, change.path]);
    case "setAll":
      return JSON.stringify([change.kind, change.entries.map(({ path }) => path)]);
    case "moveJoint":
    case "setHeight":
      return JSON.stringify([change.kind, change.joint]);
    case "moveCorner":
      return JSON.stringify([change.kind, change.run, change.corner]);
    case "moveDrinkers":
      return JSON.stringify([change.kind, change.run, change.group]);
    case "moveReading":
      return JSON.stringify([change.kind, change.run, change.reading]);
    default:
      return undefined;
  }
}

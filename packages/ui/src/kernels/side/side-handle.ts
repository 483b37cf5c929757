import type { Selected } from "../selected.js";

/** What a hand can take hold of on the drawing from the side. */
export type HandleKind = "stand" | "water" | "outlet" | "joint" | "reading" | "ground" | "drop";

/** What a handle's height decides in the plan. */
export type HandleTarget =
  | { readonly kind: "typed"; readonly path: readonly (string | number)[]; readonly what: string }
  | { readonly kind: "jointHeight"; readonly joint: string }
  | { readonly kind: "reading"; readonly run: number; readonly reading: number };

/** Something that can be moved up and down, in metres; where it is in pixels is said by `placeHandles`. */
export interface SideHandle {
  /** The same through all changes of heights. */
  readonly key: string;
  readonly kind: HandleKind;
  readonly part: Selected;
  /** As it is said: "height of the pipe at wall". */
  readonly name: string;
  /** Distance along the path [m]; undefined for what belongs to the vessel. */
  readonly along: number | undefined;
  /** Height above the plan's datum [m]. */
  readonly height: number;
  /** Height its own figure is counted from [m above datum], and whether that figure grows upwards or downwards. */
  readonly from: number;
  readonly counts: "up" | "down";
  /** What its figure is counted from, in words: "the ground"; empty where the name says it. */
  readonly fromWords: string;
  /** It stays between these heights [m above datum]. */
  readonly low: number;
  readonly high: number;
  /** Whether its height is the plan's own, so that it stays where it is when a neighbour is moved. */
  readonly isFirm: boolean;
  readonly target: HandleTarget;
}

/** A handle's own figure [m]: what would be typed for it. */
export function figureOf({ height, from, counts }: Pick<SideHandle, "height" | "from" | "counts">): number {
  return counts === "up" ? height - from : from - height;
}

import type { Hit } from "../../kernels/above/hit.js";
import type { Ground } from "../../kernels/above/spot.js";
import type { Pixel, Viewport } from "../../kernels/above/viewport.js";
import type { RunEndChoice } from "../../store/plan-change.js";
import type { Ghost, Wish } from "./hand.js";

/** Nothing pressed. The last tap on empty ground is kept, since two in a row mean more. */
export interface Idle {
  readonly name: "idle";
  readonly lastTap?: { readonly at: Pixel; readonly time: number };
}

/** Pressed and not yet moved: it may become a tap or a drag. */
export interface Pressing {
  readonly name: "pressing";
  readonly pointer: number;
  readonly type: string;
  readonly start: Pixel;
  readonly gesture: string;
  /** What a drag takes hold of, and what a tap chooses. */
  readonly hit: Hit | undefined;
  readonly tapped: Hit | undefined;
  readonly lastTap?: Idle["lastTap"];
}

/** A part in the hand: which pointer holds it, the name of the drag, and how far off its middle it was taken. */
interface Held {
  readonly pointer: number;
  readonly gesture: string;
  readonly offset: Ground;
  readonly ghost?: Ghost;
}

export interface DraggingJoint extends Held {
  readonly name: "dragging-joint";
  readonly joint: string;
  /** Where it was last asked to be; the drawing may not show it there yet. */
  readonly asked?: Ground;
  /** The joint or run it lies upon now, to meet there when let go. */
  readonly onto?: Exclude<RunEndChoice, { kind: "place" }>;
}

export interface DraggingCorner extends Held {
  readonly name: "dragging-corner";
  readonly run: number;
  readonly corner: number;
  /** Where it was last asked to be; the drawing may not show it there yet. */
  readonly asked?: Ground;
}

export interface DraggingDrinkers extends Held {
  readonly name: "dragging-drinkers";
  readonly run: number;
  readonly group: number;
  /** How far along the run the hand is from the group's first drinker [m]. */
  readonly ahead: number;
  /** How far along its first was last asked to be [m]; the drawing may not show it there yet. */
  readonly asked?: number;
}

export interface DrawingRun {
  readonly name: "drawing-run";
  readonly pointer: number;
  readonly from: RunEndChoice;
  /** Where the run starts, then where the hand has been. */
  readonly stroke: readonly Ground[];
  readonly start: Pixel;
  readonly hit: Hit | undefined;
  readonly ghost?: Ghost;
}

export interface Panning {
  readonly name: "panning";
  readonly pointer: number;
  readonly from: Pixel;
  readonly view: Viewport;
}

/** Two fingers, and the ground each of them holds. */
export interface Pinching {
  readonly name: "pinching";
  readonly fingers: readonly [Finger, Finger];
}

export interface Finger {
  readonly pointer: number;
  readonly at: Pixel;
  readonly ground: Ground;
}

/** What the hand is doing. */
export type HandState =
  | Idle
  | Pressing
  | DraggingJoint
  | DraggingCorner
  | DraggingDrinkers
  | DrawingRun
  | Panning
  | Pinching;

/** What comes of an event: the next state, and what is asked of the element. */
export interface Turn<State = HandState> {
  readonly state: State;
  readonly wishes: readonly Wish[];
}

export const IDLE: Idle = { name: "idle" };

/** Nothing changes. */
export const stay = (state: HandState): Turn => ({ state, wishes: [] });
export const next = (state: HandState, ...wishes: Wish[]): Turn => ({ state, wishes });

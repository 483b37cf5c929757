import type { ProfileLayout } from "../../kernels/profile-layout.js";
import type { ProfileRequest, Spot } from "../../kernels/profile-request.js";
import type { Selected } from "../../kernels/selected.js";
import type { AlongWindow } from "../../kernels/side/along-window.js";
import type { PlacedHandle } from "../../kernels/side/place-handles.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { PlanChange } from "../../store/plan-change.js";

/** The drawing the hands lie over, as it is now. */
export interface DrawnLine {
  readonly layout: ProfileLayout;
  readonly request: ProfileRequest;
  readonly system: UnitSystem;
}

/** What the states of the hand ask of the element they serve. */
export interface HandsHost {
  readonly drawn: DrawnLine | undefined;
  readonly placed: readonly PlacedHandle[];
  readonly selected: Selected | undefined;
  /** The stretch last asked for; the drawing may not show it yet. */
  readonly stretch: AlongWindow;
  /** Length of the whole path [m]. */
  readonly pathLength: number;
  /** Asks for an edit; those with one gesture are one step to undo. */
  want(change: PlanChange, gesture?: string): void;
  giveUp(gesture: string): void;
  /** Keeps the scale of heights as it is while a handle is in the hand. */
  holdScale(isHeld: boolean): void;
  look(window: AlongWindow): void;
  choose(part: Selected | undefined): void;
  /** Moves the focus to a handle. */
  focusHandle(key: string): void;
  /** A press without a drag. */
  tapped(spot: Spot, isTwice: boolean): void;
  requestUpdate(): void;
}

import type { Plan } from "@headfall/hydraulics";
import type { AboveLayout } from "../../kernels/above/lay-above.js";
import type { PlacedDrinker } from "../../kernels/above/place-drinkers.js";
import type { Ground } from "../../kernels/above/spot.js";
import type { Pixel, Viewport } from "../../kernels/above/viewport.js";
import type { Selected } from "../../kernels/selected.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { PlanChange } from "../../store/plan-change.js";

/** What a press on the drawing does. */
export type AboveTool = "hand" | "run" | "drinkers";

/** What the hand does, as the states see it. `gesture` names the drag that a press may become. */
export type HandEvent =
  | {
      readonly kind: "down";
      readonly pointer: number;
      readonly type: string;
      readonly at: Pixel;
      /** When [ms]. */
      readonly time: number;
      readonly gesture: string;
    }
  | { readonly kind: "move"; readonly pointer: number; readonly at: Pixel }
  | { readonly kind: "up"; readonly pointer: number; readonly at: Pixel; readonly time: number }
  /** A press has been held still for a while. */
  | { readonly kind: "hold"; readonly pointer: number }
  /** The system took the pointer away, or Escape was pressed: what was begun is taken back. */
  | { readonly kind: "giveUp" };

/** What a state may look at: the plan as drawn, and how. */
export interface Surroundings {
  readonly plan: Plan;
  readonly layout: AboveLayout;
  readonly drinkers: readonly PlacedDrinker[];
  readonly view: Viewport;
  readonly tool: AboveTool;
  readonly system: UnitSystem;
  readonly selected: Selected | undefined;
  /** Half the width of each source as drawn [m]. */
  readonly vesselReach: readonly number[];
}

/** What a state asks of the element. */
export type Wish =
  | { readonly kind: "edit"; readonly change: PlanChange; readonly gesture?: string }
  | { readonly kind: "giveUp"; readonly gesture: string }
  | { readonly kind: "choose"; readonly part: Selected | undefined }
  | { readonly kind: "view"; readonly view: Viewport }
  | { readonly kind: "fit" };

/** What is drawn over the plan while the hand is at it. */
export interface Ghost {
  /** A way that is being drawn. */
  readonly way?: readonly Ground[];
  /** A straight that a place was snapped to. */
  readonly guide?: readonly [Ground, Ground];
  /** A joint or a place on a run that will be met. */
  readonly meets?: Ground;
  /** Said beside the hand: a length, what was snapped to. */
  readonly words?: string;
  readonly at?: Ground;
}

/** How far a press may wander and still be a tap [px]. */
export const TAP_REACH = 6;

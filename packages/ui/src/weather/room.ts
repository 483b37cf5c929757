import type { Frost, Heat, Plan } from "@headfall/hydraulics";
import type { TypingController } from "../fields/typing-controller.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What every view of this room is made from. */
export interface WeatherRoom {
  readonly plan: Plan;
  readonly frost: Frost;
  readonly heat: Heat;
  readonly system: UnitSystem;
  readonly typing: TypingController;
  /** The part whose curve is drawn, by its place among those of the hot day. */
  readonly chosen: number;
  readonly isWide: boolean;
  readonly choose: (part: number) => void;
}

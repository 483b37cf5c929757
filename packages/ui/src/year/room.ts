import type { Plan, YearOfPlan } from "@headfall/hydraulics";
import type { TypingController } from "../fields/typing-controller.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What every view of this room is made from. */
export interface YearRoom {
  readonly plan: Plan;
  readonly year: YearOfPlan;
  readonly system: UnitSystem;
  readonly typing: TypingController;
  readonly isWide: boolean;
}

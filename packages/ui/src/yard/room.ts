import type { Plan, YardOfPlan } from "@headfall/hydraulics";
import type { TypingController } from "../fields/typing-controller.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What every view of this room is made from. */
export interface YardRoom {
  readonly plan: Plan;
  /** Of the plan that was reckoned last, perhaps an older one. */
  readonly yard: YardOfPlan | undefined;
  readonly system: UnitSystem;
  readonly typing: TypingController;
  readonly isWide: boolean;
}

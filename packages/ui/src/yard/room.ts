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
  readonly isAllOpen: boolean;
  /** The waterer that was put in last: it stands open, for nothing is typed of it yet. */
  readonly added: WatererSpot | undefined;
  readonly acts: YardActs;
}

/** Which waterer of which pen. */
export interface WatererSpot {
  readonly pen: number;
  readonly at: number;
}

/** What may be done in the room but for edits. */
export interface YardActs {
  readonly openAll: (isOpen: boolean) => void;
  readonly opened: (added: WatererSpot) => void;
}

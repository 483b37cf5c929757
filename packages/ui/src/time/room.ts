import type { Checked, Plan } from "@headfall/hydraulics";
import type { TypingController } from "../fields/typing-controller.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import type { TimeAnswer } from "../worker/room-protocol.js";

/** What every view of this room is made from. */
export interface TimeRoom {
  readonly plan: Plan;
  readonly checked: Checked | undefined;
  readonly answer: TimeAnswer;
  readonly system: UnitSystem;
  readonly typing: TypingController;
  readonly daysAway: number;
  /** The day it is; undefined on a page that does not tell. */
  readonly today: string | undefined;
  /** The source looked at: of the level's picture and the daily mark. */
  readonly source: number;
  readonly isWide: boolean;
  readonly acts: {
    readonly goAway: (days: number) => void;
    readonly lookAt: (source: number) => void;
    readonly printStrip: () => void;
  };
}

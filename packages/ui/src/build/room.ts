import type { BuildSheet, Plan } from "@headfall/hydraulics";
import type { TypingController } from "../fields/typing-controller.js";
import type { PaperName } from "../kernels/sheet/paper.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What every view of this room is made from. */
export interface BuildRoom {
  readonly sheet: BuildSheet;
  readonly name: string;
  readonly system: UnitSystem;
}

/** What the fields of this room are made from. */
export interface BuildFields {
  readonly plan: Plan;
  readonly system: UnitSystem;
  readonly typing: TypingController;
}

/** What its user can do besides editing the plan. */
export interface BuildActs {
  readonly choosePaper: (paper: PaperName) => void;
  readonly print: () => void;
  readonly saveParts: () => void;
}

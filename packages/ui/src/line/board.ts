import type { Checked, MomentName, Plan } from "@headfall/hydraulics";
import type { Waiting } from "../controllers/drag-pace.js";
import type { HowSubject } from "../kernels/how-got/subject.js";
import type { ProfilePath } from "../kernels/profile-path.js";
import type { Selected } from "../kernels/selected.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import type { PlanChange } from "../store/plan-change.js";
import type { PlanStore } from "../store/plan-store.js";
import type { Shown } from "./moments-view.js";

/** Which view of the plan is shown where there is room for one only. */
export type BoardView = "above" | "side" | "table";

/** What the hand does on the drawing from above. */
export type Tool = "hand" | "run" | "drinkers";

/** Why the last edit could not be made, and which view it came from: there it is told. */
export interface Refusal {
  readonly by: string;
  readonly because: string;
}

/** What is told to a view of its own refused edit. */
export const refusalFor = ({ refusal }: Board, view: string): string =>
  refusal?.by === view ? refusal.because : "";

/** What every view around the drawing is made from. */
export interface Board {
  readonly store: PlanStore;
  readonly plan: Plan;
  readonly checked: Checked;
  /** The plan that was checked, which the newest may be ahead of. */
  readonly checkedPlan: Plan | undefined;
  readonly system: UnitSystem;
  /** Today, where the page tells it; counts where the plan names no day. */
  readonly day: string | undefined;
  readonly shown: Shown;
  readonly moment: MomentName;
  readonly view: BoardView;
  /** Whether there is room for the drawings side by side with all else. */
  readonly isWide: boolean;
  readonly tool: Tool;
  readonly part: Selected | undefined;
  readonly refusal: Refusal | undefined;
  /** The drinker looked at, by index into `checked.line.drinkers`; -1 when there is none. */
  readonly lookedAt: number;
  readonly path: ProfilePath | undefined;
  readonly showsAll: boolean;
  /** Whether this is left as it is for now, since a hand drags. */
  readonly isWaiting: (what: Waiting) => boolean;
  /** The number whose making is told of. */
  readonly how: HowSubject | undefined;
  readonly acts: BoardActs;
}

/** All of a board that is written out beside and below the drawings: where none of it has changed, nothing there has. */
export const shownOn = (board: Board): unknown[] => {
  const {
    plan,
    checked,
    checkedPlan,
    system,
    day,
    shown,
    moment,
    isWide,
    part,
    refusal,
    lookedAt,
    showsAll,
  } = board;
  return [plan, checked, checkedPlan, system, day, shown, moment, isWide, part, refusal, lookedAt, showsAll];
};

/** What the views ask of the element around them. */
export interface BoardActs {
  readonly edit: (change: PlanChange, gesture?: string) => void;
  readonly choose: (part: Selected | undefined) => void;
  readonly look: (drinker: number) => void;
  readonly lookClosely: (drinker: number) => void;
  readonly show: (shown: Shown) => void;
  readonly turnTo: (view: BoardView) => void;
  readonly take: (tool: Tool) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly showAll: () => void;
  readonly closeHow: () => void;
}

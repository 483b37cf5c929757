import type { Checked, Plan } from "@headfall/hydraulics";
import type { UnitSystem } from "../typed-quantity.js";
import type { PaperName } from "./paper.js";

export type SheetDrawing = "above" | "side";

/** What is to be printed, and how. */
export interface SheetRequest {
  readonly plan: Plan;
  /** What the check came to; may be of an older plan, or missing. */
  readonly checked: Checked | undefined;
  readonly system: UnitSystem;
  readonly drawing: SheetDrawing;
  readonly paper: PaperName;
  readonly isLying: boolean;
  /** How many times smaller; undefined is the largest that fits. */
  readonly scale: number | undefined;
  /** The same for heights from the side. */
  readonly heightScale: number | undefined;
  /** From the side: the run whose way is drawn, by index; undefined is every branch. */
  readonly run: number | undefined;
  /** As it is to be printed; empty leaves a line to write it on. */
  readonly date: string;
}

import type { Checked, Mishaps } from "@headfall/hydraulics";
import type { MishapFamily } from "../kernels/mishaps/mishap-families.js";
import type { StruckDrawing } from "../kernels/mishaps/mishap-place.js";
import type { ProfileLayout } from "../kernels/profile-layout.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What every view of this room is made from. */
export interface MishapsRoom {
  readonly mishaps: Mishaps;
  /** Of the same plan; undefined while what was found is of the plan before. */
  readonly checked: Checked | undefined;
  readonly system: UnitSystem;
  readonly family: MishapFamily | undefined;
  /** The row whose mishap is drawn, by its place among all. */
  readonly chosen: number | undefined;
  /** What is drawn of it; undefined where no pipe leads there. */
  readonly struck: StruckDrawing | undefined;
  readonly layout: ProfileLayout | undefined;
  readonly isWide: boolean;
  /** Whether all rows were opened at once. */
  readonly isAllOpen: boolean;
  readonly acts: MishapsActs;
}

export interface MishapsActs {
  /** Show mishaps of one family only, or of all. */
  readonly choose: (family: MishapFamily | undefined) => void;
  /** Open every row, or shut it. */
  readonly openAll: (isOpen: boolean) => void;
  /** Draw one, or none. */
  readonly draw: (row: number | undefined) => void;
  readonly drawn: (layout: ProfileLayout | undefined) => void;
}

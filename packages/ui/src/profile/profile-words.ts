import type { Checked, MomentName } from "@headfall/hydraulics";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What the words on the drawing are written from. */
export interface ProfileWords {
  readonly checked: Checked;
  readonly drinker: number;
  readonly system: UnitSystem;
  readonly unitSign: string;
  readonly moment: MomentName;
}

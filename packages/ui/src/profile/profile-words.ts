import type { Checked, MomentName } from "@headfall/hydraulics";
import type { Spot } from "../kernels/profile-request.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What the words on the drawing are written from. */
export interface ProfileWords {
  readonly checked: Checked;
  readonly drinker: number;
  readonly system: UnitSystem;
  readonly unitSign: string;
  readonly moment: MomentName;
}

/** Spots as the `d` of an SVG path, to a hundredth of a pixel. */
export const pathOf = (spots: readonly Spot[]): string =>
  spots.map(({ x, y }, i) => `${i === 0 ? "M" : "L"}${hundredths(x)} ${hundredths(y)}`).join("");

const hundredths = (pixels: number): number => Math.round(pixels * 100) / 100;

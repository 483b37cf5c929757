import type { Checked, MomentName } from "@headfall/hydraulics";
import type { ProfilePath } from "./profile-path.js";

/** A place on the drawing [px], x to the right and y down. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** What a drawing of the line from the side is made from. */
export interface ProfileRequest {
  readonly checked: Checked;
  readonly path: ProfilePath;
  readonly moment: MomentName;
  /** Drinker looked at, by index into `line.drinkers`. */
  readonly drinker: number;
  readonly width: number;
  readonly height: number;
  /** Length of the unit on the axes [m]: 1 for metres, 0.3048 for feet. */
  readonly tickUnit: number;
  /** Stretch of the path that is drawn, from and to [m]; all of it when left out. */
  readonly window?: readonly [number, number] | undefined;
  /** Lowest and highest metre to keep on the drawing, so that its scale does not jump under a hand. */
  readonly heldHeights?: readonly [number, number] | undefined;
}

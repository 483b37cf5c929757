import type { Checked, Plan } from "@headfall/hydraulics";
import type { UnitSystem } from "../typed-quantity.js";
import type { SheetScale } from "./scales.js";
import type { Box, Shape } from "./shapes.js";
import type { Way, Ways } from "./side-ways.js";

/** A drawing to scale, as large as it comes; it is cut to pages afterwards. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  /** Words that found no room in it; where they belong to a spot, that spot has their number. */
  readonly notes: readonly string[];
  /** Stretches from top to bottom that had better stay on one page; none where any cut is as good. */
  readonly strips: readonly Pick<Box, "top" | "bottom">[];
}

export interface AboveRequest {
  readonly plan: Plan;
  /** May be of an older plan, or missing: then the drawing has places and lengths alone. */
  readonly checked: Checked | undefined;
  readonly system: UnitSystem;
}

export interface SideRequest {
  readonly checked: Checked;
  readonly ways: Ways;
  readonly system: UnitSystem;
}

/** One way from the side. */
export interface StripRequest {
  readonly checked: Checked;
  readonly way: Way;
  readonly system: UnitSystem;
  readonly scale: SheetScale;
  readonly heightScale: SheetScale;
}

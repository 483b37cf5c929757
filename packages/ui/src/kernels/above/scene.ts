import type { Checked, MomentName, Plan } from "@headfall/hydraulics";
import type { Selected } from "../selected.js";
import type { UnitSystem } from "../typed-quantity.js";
import type { FlowArrow } from "./flow-arrows.js";
import type { GatheredMark } from "./gather-marks.js";
import type { AboveJoint, AboveLayout, AboveRun } from "./lay-above.js";
import type { PlacedDrinker } from "./place-drinkers.js";
import type { Box, PlacedText } from "./place-texts.js";
import type { RunFigures } from "./run-figures.js";
import type { VesselOutline } from "./vessel-outline.js";
import type { Pixel } from "./viewport.js";

export interface SceneRequest {
  readonly plan: Plan;
  readonly checked: Checked | undefined;
  readonly selected: Selected | undefined;
  readonly moment: MomentName;
  readonly system: UnitSystem;
  /** Pixels a metre. */
  readonly scale: number;
  /** The part of the scene that is seen, for labels. */
  readonly seen: Box;
}

export interface SceneRun {
  readonly run: AboveRun;
  readonly pixels: readonly Pixel[];
  readonly stroke: number;
  readonly figures: RunFigures | undefined;
  readonly arrows: readonly FlowArrow[];
  /** Where a run that is not drawn to scale is broken, and how its pipe lies there [degrees]. */
  readonly cut: FlowArrow | undefined;
}

export interface SceneJoint {
  readonly joint: AboveJoint;
  readonly at: Pixel;
  /** How many runs meet there. */
  readonly meeting: number;
  /** Set for a source: what stands there, and half its width as drawn [px]. */
  readonly vessel: { readonly outline: VesselOutline; readonly half: number } | undefined;
}

export interface SceneMark extends GatheredMark {
  readonly pixel: Pixel;
}

export interface SceneGroup {
  readonly run: number;
  readonly group: number;
  readonly name: string;
  readonly kind: string;
  readonly drinkers: readonly PlacedDrinker[];
  readonly marks: readonly SceneMark[];
}

/** Water that a float valve lets from a point of the line into a header tank; no run of the plan. */
export interface SceneFeed {
  readonly from: Pixel;
  readonly to: Pixel;
}

/**
 * All that is drawn, in pixels from the ground's own (0, 0), y down: moving the view moves it as a whole, and only
 * another scale lays it out anew.
 */
export interface Scene {
  readonly layout: AboveLayout;
  readonly drinkers: readonly PlacedDrinker[];
  readonly runs: readonly SceneRun[];
  readonly joints: readonly SceneJoint[];
  readonly groups: readonly SceneGroup[];
  readonly feeds: readonly SceneFeed[];
  readonly texts: readonly PlacedText[];
}

/** The scene before its labels are placed. */
export type BareScene = Omit<Scene, "texts">;

/** Half the width of each source as drawn [m], by its place in the plan. */
export function vesselReachOf({ joints }: Scene, scale: number): number[] {
  const reach: number[] = [];
  for (const { joint, vessel } of joints) if (vessel !== undefined) reach[joint.source] = vessel.half / scale;
  return reach;
}

/** The part of the plan that a joint on the drawing stands for. */
export const partOfJoint = ({ source, name }: AboveJoint): Selected =>
  source >= 0 ? { kind: "source", source } : { kind: "joint", joint: name };

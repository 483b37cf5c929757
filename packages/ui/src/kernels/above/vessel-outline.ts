import { findVessel, kindFound, type Plan, vesselById } from "@headfall/hydraulics";
import { metresOf } from "../typed-metres.js";

/** A vessel seen from above [m]: round ones by their width, others by length and width. */
export type VesselOutline =
  | { readonly kind: "round"; readonly diameter: number }
  | { readonly kind: "box"; readonly length: number; readonly width: number };

type Vessel = Plan["sources"][number]["vessel"];

/** Drawn when the plan does not say how wide a vessel is: one known by levels and volumes alone. */
const UNKNOWN: VesselOutline = { kind: "round", diameter: 0.6 };

/** What a vessel looks like from above, brim included. */
export function vesselOutline(vessel: Vessel): VesselOutline {
  if (typeof vessel === "string") return outlineOfKnown(vessel);
  switch (vessel.shape) {
    case "upright":
      return { kind: "round", diameter: metresOf(vessel.diameter) };
    case "tapered":
      return {
        kind: "round",
        diameter: Math.max(metresOf(vessel.topDiameter), metresOf(vessel.bottomDiameter)),
      };
    case "lying":
      return { kind: "box", length: metresOf(vessel.length), width: metresOf(vessel.diameter) };
    case "box":
      return { kind: "box", length: metresOf(vessel.length), width: metresOf(vessel.width) };
    case "table":
      return UNKNOWN;
  }
}

/** Looking a vessel up by its words takes a millisecond, too long for every frame of a drag. */
const KNOWN = new Map<string, VesselOutline>();
const MOST_KNOWN = 200;

function outlineOfKnown(typed: string): VesselOutline {
  const known = KNOWN.get(typed);
  if (known !== undefined) return known;
  const outline = lookUp(typed);
  if (KNOWN.size >= MOST_KNOWN) KNOWN.clear();
  KNOWN.set(typed, outline);
  return outline;
}

function lookUp(typed: string): VesselOutline {
  const known = vesselById(typed) ?? kindOf(typed);
  if (known === undefined) return UNKNOWN;
  const { shape } = known;
  switch (shape.kind) {
    case "upright":
      return { kind: "round", diameter: shape.diameter };
    case "tapered":
      return { kind: "round", diameter: Math.max(shape.topDiameter, shape.bottomDiameter) };
    case "lying":
      return { kind: "box", length: shape.length, width: shape.diameter };
    case "box":
      return { kind: "box", length: shape.length, width: shape.width };
    case "table":
      return UNKNOWN;
  }
}

const kindOf = (words: string) => kindFound(findVessel(words));

/** Half of the larger width across [m]. */
export const halfWidthOf = (outline: VesselOutline): number =>
  (outline.kind === "round" ? outline.diameter : Math.max(outline.length, outline.width)) / 2;

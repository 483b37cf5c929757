import type { VesselShape } from "../physics/vessel.js";
import type { Water } from "../physics/water.js";

/**
 * The line as the solver sees it: plain SI data, typed arrays by index, ids beside them.
 *
 * Heights are metres above the plan's datum (the ground at the first source, unless the plan says otherwise).
 * Nothing here is ever changed after `buildLine` made it: a mishap, a tolerance sample or another pipe size is a
 * new `Line` that shares every array it did not need to alter.
 */
export interface Line {
  readonly name: string;
  readonly water: Water;
  readonly points: Points;
  readonly segments: Segments;
  readonly runs: readonly Run[];
  readonly drinkers: Drinkers;
  readonly sources: readonly Source[];
  /** Ends that pour out: a joint apart, a cap off. Left out where there are none. */
  readonly leaks?: readonly Leak[];
}

/** An opening at a point of the line that should not be there: q = coefficient * head^0.5 over its height. */
export interface Leak {
  readonly point: number;
  /** Height at which the water comes out [m above datum]. */
  readonly height: number;
  /** Flow at 1 m of head [m3/s]. */
  readonly coefficient: number;
}

/** Places in the line: ends of runs, drinker positions, surveyed humps and sags. */
export interface Points {
  readonly count: number;
  /** Name in the plan, or one made from the run and the distance along it. */
  readonly id: readonly string[];
  /** Height of the pipe's axis [m]. */
  readonly height: Float64Array;
  /** Height of the ground below the point [m]; equal to `height` where the plan does not say. */
  readonly ground: Float64Array;
  /** 1 where air can leave (a bleed or riser vent), else 0. */
  readonly bleed: Uint8Array;
  /** 1 where the height was measured (ends of runs, surveyed places), 0 where it lies on a straight between those. */
  readonly measured: Uint8Array;
}

/** What a segment does besides losing head to friction. */
export const SEGMENT_KIND = { pipe: 0, oneWay: 1, regulator: 2 } as const;

/** Pieces of pipe between neighbouring points, and devices (which have no length). */
export interface Segments {
  readonly count: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Index into `runs`. */
  readonly run: Int32Array;
  readonly kind: Uint8Array;
  /** 1 where a tap is shut. */
  readonly shut: Uint8Array;
  /** Along the pipe [m]; 0 for a device. */
  readonly length: Float64Array;
  /** Inside diameter [m]. */
  readonly bore: Float64Array;
  /** Hazen-Williams C [-]. */
  readonly hazenWilliams: Float64Array;
  /** Absolute roughness [m]. */
  readonly roughness: Float64Array;
  /** Sum of the fittings' laminar constants K1 [-]: each adds K1/Re velocity heads. */
  readonly k1: Float64Array;
  /** Sum of the fittings' turbulent loss coefficients at this bore [-]. */
  readonly kInfinity: Float64Array;
  /** One-way valve: head at which it opens [m]. Regulator: head it holds at its outlet [m]. Else 0. */
  readonly setting: Float64Array;
}

/** A length of one pipe, as the plan wrote it; its segments are consecutive, from its start to its end. */
export interface Run {
  readonly id: string;
  /** Position in the plan's list of runs. */
  readonly index: number;
  readonly pipeId: string;
  readonly pipeName: string;
  readonly length: number;
  readonly bore: number;
  readonly boreLow: number;
  readonly boreHigh: number;
  readonly firstSegment: number;
  readonly segmentCount: number;
  /** Points from start to end, with their distance along the run [m]. */
  readonly points: Int32Array;
  readonly along: Float64Array;
}

/** Drinkers in the order of the plan: by run, by group, by distance. */
export interface Drinkers {
  readonly count: number;
  readonly id: readonly string[];
  /** Index into `groups`. */
  readonly group: Int32Array;
  readonly groups: readonly DrinkerGroup[];
  readonly run: Int32Array;
  readonly point: Int32Array;
  /** Distance from the start of the run [m]. */
  readonly along: Float64Array;
  /** Height of the drinker's own valve [m]. */
  readonly height: Float64Array;
  /** k: flow at 1 m of head above opening [m3/s]. */
  readonly coefficient: Float64Array;
  /** x [-]. */
  readonly exponent: Float64Array;
  /** Head at which it begins to pass water [m]. */
  readonly openingHead: Float64Array;
  /** Flow it must give while worked [m3/s]. */
  readonly need: Float64Array;
  /** Whether it passes water though nobody works it, or none at all (`STUCK`). Left out where all work as they should. */
  readonly stuck?: Uint8Array;
}

export const STUCK = { not: 0, open: 1, shut: 2 } as const;

/** What the drinkers of one entry in the plan share. */
export interface DrinkerGroup {
  readonly id: string;
  readonly run: number;
  readonly kindId: string;
  readonly kindName: string;
  readonly workedBy: "trigger" | "float";
  readonly first: number;
  readonly count: number;
  /** Drinkers at work in the busiest minutes, and in an ordinary hour. */
  readonly busiest: number;
  readonly ordinary: number;
  /** Least head at which it seals, and head above which it drips [m]. */
  readonly sealsFrom: number;
  readonly holdsUpTo: number;
  readonly need: number;
  /** Flow factor range from one drinker to the next: (low, high) as multiples of the stated flow. */
  readonly flowLow: number;
  readonly flowHigh: number;
}

/** How air gets into a vessel. Diameters and heights [m]. */
export type Vent =
  | { readonly kind: "open"; readonly diameter: number | undefined }
  | { readonly kind: "airTube"; readonly foot: number; readonly diameter: number | undefined }
  | { readonly kind: "sealed" };

/** A vessel that stands somewhere and feeds the line from its outlet. */
export interface Source {
  readonly id: string;
  /** Position in the plan's list of sources. */
  readonly index: number;
  /** Point of the outlet. */
  readonly point: number;
  readonly vesselName: string;
  readonly shape: VesselShape;
  readonly emptyMass: number;
  readonly ground: number;
  readonly stand: number;
  /** Height of the inside bottom [m above datum]. */
  readonly base: number;
  /** Height of the outlet's axis above the inside bottom [m]. */
  readonly outlet: number;
  /** Narrowest inside diameter of the outlet [m]; as wide as the pipe that starts there where left out. */
  readonly outletBore?: number;
  /** Water levels above the inside bottom [m]. */
  readonly levels: { readonly full: number; readonly lowest: number; readonly ordinary: number };
  readonly vent: Vent;
  /** Set for a header tank that another part of the line fills through a float valve. */
  readonly feed: Feed | undefined;
}

/** A float valve that lets water from a point of the line into a header tank. */
export interface Feed {
  readonly point: number;
  /** Height at which the water comes out [m above datum]. */
  readonly height: number;
  /** Law of the wide-open valve: q = coefficient * head^0.5 [m3/s at 1 m]. */
  readonly coefficient: number;
  /** Set where the valve never shuts: what the tank's own drinkers do not take runs over its brim. */
  readonly isStuckOpen?: boolean;
}

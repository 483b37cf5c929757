import type { VesselShape } from "../physics/vessel.js";
import type { Citation } from "./citation.js";

/** One size of pipe, tube or hose. Lengths [m]. */
export interface PipeSize {
  readonly id: string;
  readonly name: string;
  /** Pipes of one make-up that differ only in size. */
  readonly family: string;
  /** Size as sold: inches as a fraction, or millimetres in the metric families. */
  readonly nominal: string;
  readonly material: string;
  /** Outside diameter; hoses have none in any standard. */
  readonly outside?: number;
  readonly wall?: number;
  /** Inside diameter used for hydraulics. */
  readonly bore: number;
  readonly boreLow: number;
  readonly boreHigh: number;
  /** Hazen-Williams coefficient. */
  readonly hazenWilliams: number;
  readonly roughness: number;
  /** Place in the family, small to large, from 1. */
  readonly order: number;
  readonly citation: Citation;
}

/**
 * Sizes of a family that share everything but their figures, as the compiled table holds them: each is id, name,
 * nominal, outside, wall (both 0 where there is none), bore, least and greatest bore, order.
 */
export interface PipeGroup {
  readonly family: string;
  readonly material: string;
  readonly hazenWilliams: number;
  readonly roughness: number;
  readonly citation: Citation;
  readonly sizes: readonly (readonly [
    string,
    string,
    string,
    number,
    number,
    number,
    number,
    number,
    number,
  ])[];
}

/** One kind of fitting: K = k1 / Re + kInfinity (1 + sizeCorrection / bore), on the velocity head in the run. */
export interface FittingKind {
  readonly id: string;
  readonly name: string;
  readonly k1: number;
  readonly kInfinity: number;
  /** Length in the size correction [m]; 0 where the source has none. */
  readonly sizeCorrection: number;
  /** Least and greatest K to expect, as factors on K. */
  readonly low: number;
  readonly high: number;
  /** Other words people use for it. */
  readonly also: readonly string[];
  readonly citation: Citation;
}

/** One generic kind of drinker: flow (head / its head) ^ exponent above the opening head. Heads [m], flows [m³/s]. */
export interface DrinkerKind {
  readonly id: string;
  readonly name: string;
  readonly kind: "nipple" | "cup" | "bell" | "trough";
  /** A trigger passes water only while worked; a float fills to a level and shuts. */
  readonly workedBy: "trigger" | "float";
  /** Head at which the flow is stated. */
  readonly head: number;
  readonly flow: number;
  readonly flowLow: number;
  readonly flowHigh: number;
  readonly exponent: number;
  /** Head below which nothing passes. */
  readonly openingHead: number;
  /** Least head at which it seals; 0 where a low head never makes it leak. */
  readonly sealsFrom: number;
  /** Head above which it drips. */
  readonly holdsUpTo: number;
  /** Flow needed while worked, as a default. */
  readonly need: number;
  /** Water it holds [m³]. */
  readonly held: number;
  /** Birds the kind suits, in words. */
  readonly birds: string;
  readonly also: readonly string[];
  readonly citation: Citation;
}

/** How many drinkers of a kind are asked for or advised. */
export interface Allowance {
  readonly id: string;
  /** Where it counts, as plans name regions; "all": anywhere. */
  readonly regions: readonly string[];
  /** Kinds of bird it is for, and the source's own words for them. */
  readonly birds: readonly string[];
  readonly of: string;
  readonly fromDays: number;
  readonly toDays: number;
  readonly devices: readonly string[];
  /** birds: a drinker for so many; edge: so much edge a bird [m]; least: at least so many drinkers. */
  readonly counts: "birds" | "edge" | "least";
  readonly figure: number;
  /** Smallest flock that a rule in force binds; 0: advice, a code or a scheme, which binds none. */
  readonly bindsFrom: number;
  /** Advice meant for so many birds; a larger flock takes it for the first so many. */
  readonly toBirds?: number;
  readonly status: string;
  readonly citation: Citation;
}

/** What a roof is covered with. */
export interface RoofKind {
  readonly id: string;
  readonly name: string;
  /** Share of the rain that runs off, with its range. */
  readonly runoff: number;
  readonly runoffLow: number;
  readonly runoffHigh: number;
  /** Rain that only wets it on a wet day [m]; half a millimetre where the table has none. */
  readonly wetting: number;
  readonly also: readonly string[];
  readonly citation: Citation;
}

/** A roof as the compiled table holds it: id, name, runoff with its range, wetting [m], source, place, how known. */
export type RoofRow = readonly [string, string, number, number, number, number, string, string, string];

/** Water spilled at a kind of drinker, over what is drunk there. */
export interface SpilledShare {
  readonly id: string;
  readonly device: string;
  readonly spilled: number;
  readonly spilledLow: number;
  readonly spilledHigh: number;
  readonly citation: Citation;
}

/** One kind of vessel, inside sizes [m]. */
export interface VesselKind {
  readonly id: string;
  readonly name: string;
  readonly shape: VesselShape;
  /** Outlet above the lowest inside point, as commonly fitted. */
  readonly outletHeight: number;
  /** [kg] */
  readonly emptyMass: number;
  /** Volume it is sold as [m³]. */
  readonly nominalVolume: number;
  readonly also: readonly string[];
  readonly citation: Citation;
}

/** A book, paper, standard or page that a figure was read in. */
export interface Source {
  readonly key: string;
  readonly title: string;
  readonly authors?: string;
  readonly publisher?: string;
  readonly year?: string;
  readonly edition?: string;
  readonly link?: string;
  /** Day it was opened, or "from memory". */
  readonly opened: string;
}

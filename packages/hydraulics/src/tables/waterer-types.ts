import type { Citation } from "./citation.js";

/** Names a waterer can be called by in a plan: id, name, other words. */
export type WatererName = readonly [id: string, name: string, also: readonly string[]];

/** What every kind of loose waterer has. Lengths [m], volumes [m³]. */
export interface AnyWaterer {
  readonly id: string;
  readonly name: string;
  /** What it stands on, across; of a trough its length. */
  readonly base: number;
  /** Water too shallow to be drunk, or below its nipples. */
  readonly left: number;
  /** Mass when empty [kg]. */
  readonly empty: number;
  readonly fills: "top" | "turned over";
  /** What must be airtight for it to work; vented: it must let air in; none: it is open. */
  readonly seal: "jar" | "cap" | "lid" | "vented" | "none";
  /** Which heights of birds it hangs by: its pins, or its lip as that of a cup. */
  readonly heightAs: "nipple" | "cup";
  readonly species: readonly string[];
  /** Youngest and oldest age it suits [days]; where no oldest is given, however old. */
  readonly fromDays: number;
  readonly toDays?: number;
  /** Whether it hangs, and so stays plumb on any slope. */
  readonly hangs: boolean;
  /** Whether it carries a roof of its own. */
  readonly hasShade: boolean;
  readonly also: readonly string[];
  readonly citation: Citation;
}

/** Water held up in a closed vessel by the air shut in with it; it stands in a ring or in spouts around. */
export interface VacuumFount extends AnyWaterer {
  readonly works: "vacuum";
  readonly lip: "ring" | "spouts";
  /** Radius of the lip, outside radius of the jar, distance of the air holes from the middle. */
  readonly rim: number;
  readonly jar: number;
  readonly hole: number;
  /** Air holes, evenly round. */
  readonly holes: number;
  /** Depth of the pool when level, floor to the top of the air hole. */
  readonly pool: number;
  readonly lipOverHole: number;
  /** Water above the pool when full. */
  readonly reservoir: number;
  readonly places?: number;
}

/** A bucket with nipples. */
export interface NippleBucket extends AnyWaterer {
  readonly works: "nipples";
  /** Ids in the tables of vessels and drinkers. */
  readonly vessel: string;
  readonly drinker: string;
  readonly places: number;
}

/** A round bowl that a float keeps full from a vessel above it. */
export interface FedBowl extends AnyWaterer {
  readonly works: "bell";
  readonly lip: "ring";
  readonly rim: number;
  readonly jar: number;
  readonly pool: number;
  /** Lip above the float's level. */
  readonly lipOverHole: number;
  readonly vessel: string;
  readonly drinker: string;
}

/** Open water in a round pan. */
export interface OpenPan extends AnyWaterer {
  readonly works: "pan";
  readonly lip: "ring";
  readonly rim: number;
  /** Radius of the floor. */
  readonly floor: number;
  readonly depth: number;
}

/** Open water in a box. */
export interface OpenTrough extends AnyWaterer {
  readonly works: "trough";
  readonly lip: "sides";
  readonly length: number;
  readonly width: number;
  readonly depth: number;
}

/** One kind of loose waterer. */
export type WatererKind = VacuumFount | NippleBucket | FedBowl | OpenPan | OpenTrough;

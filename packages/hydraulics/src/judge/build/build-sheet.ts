import type { Problem } from "../../document/problem.js";
import type { FillingFinding, VerdictName } from "../check-result.js";
import type { Mark } from "../time/daily-mark.js";
import type { HoleToDrill, Part, PipeToCut } from "./part-list.js";

/** What stands at a height that is marked. */
export const MARK_KINDS = ["standTop", "outlet", "end", "survey", "drinker"] as const;

/** A height to mark before anything is put up. */
export interface HeightMark {
  readonly kind: (typeof MARK_KINDS)[number];
  readonly name: string;
  readonly run: string | undefined;
  readonly along: number | undefined;
  /** [m above datum], and above the ground there. */
  readonly height: number;
  readonly aboveGround: number;
}

/** One thing to do, in its order. */
export type BuildStep =
  | { readonly code: "setStand"; readonly source: string; readonly stand: number; readonly feet: number }
  | {
      readonly code: "drillVessel";
      readonly source: string;
      readonly outlet: number;
      readonly outlets: number;
    }
  | {
      readonly code: "layRun";
      readonly run: string;
      readonly from: string;
      readonly to: string;
      readonly pipe: string;
      readonly length: number;
      readonly pieces: number;
      readonly devices: readonly ("tap" | "oneWay" | "regulator")[];
      readonly fittings: readonly { readonly name: string; readonly count: number }[];
    }
  | { readonly code: "setDrinkers"; readonly run: string; readonly group: string; readonly count: number }
  | { readonly code: "closeRing"; readonly run: string }
  | { readonly code: "rinse"; readonly ends: readonly string[] }
  | { readonly code: "fill"; readonly sources: readonly string[] }
  | {
      readonly code: "bleed";
      readonly point: string;
      readonly hasBleed: boolean;
      readonly finding: FillingFinding["code"] | undefined;
    }
  | { readonly code: "leakTest"; readonly volume: number }
  | { readonly code: "jugTest"; readonly drinkers: readonly string[] }
  | { readonly code: "letBirdsIn" };

/** What jug and watch should give at one drinker held open, alone, with the source full. */
export interface JugTest {
  readonly drinker: string;
  readonly roles: readonly ("first" | "last" | "worst")[];
  readonly verdict: VerdictName;
  /** [s] */
  readonly seconds: number;
  /** In that time [m³]: as the plan has it, the band of nine plans in ten, and what its need comes to. */
  readonly volume: number;
  readonly low: number;
  readonly high: number;
  readonly needed: number;
  readonly samples: number;
}

/** How a source stands: load, soil, tilt, wind. */
export interface StandLoad {
  readonly source: string;
  readonly index: number;
  readonly stand: number;
  /** [kg] */
  readonly water: number;
  readonly vessel: number | undefined;
  readonly standMass: number | undefined;
  readonly full: number;
  readonly feet: number;
  /** What carries it: pads, bare feet, or the vessel's own bottom. */
  readonly on: "pads" | "feet" | "bottom";
  /** [m²]; undefined where the vessel's bottom is not known. */
  readonly area: number | undefined;
  /** [Pa] */
  readonly pressure: number | undefined;
  readonly soil: {
    readonly id: string;
    readonly name: string;
    readonly presumed: number;
    readonly isTyped: boolean;
  };
  /** Side of a square pad under each foot that brings the pressure down to half of what is presumed [m]. */
  readonly padSide: number;
  /** Middle of the mass above the ground, full [m], and the tilt at which the whole falls over [rad]. */
  readonly centre: number | undefined;
  readonly tilt: number | undefined;
  readonly isTied: boolean;
  /** Wind [m/s] that tips the empty vessel, and that lets it stand by the rule; undefined where its mass or shape is not known. */
  readonly wind:
    | {
        readonly empty: number;
        readonly emptyAllowed: number;
        readonly lowest: number;
        readonly full: number;
        /** Stand and vessel as one, over the stand's edge, empty. */
        readonly withStand: number | undefined;
        /** Water that lets it stand in a gust of `GUST` by the rule [m³]; undefined where full is not enough. */
        readonly keep: number | undefined;
      }
    | undefined;
  /** Roof water in a downpour; undefined where no roof runs into it [m³/s, m]. */
  readonly downpour:
    | {
        readonly flow: number;
        readonly passes: number;
        readonly overflow: number;
        readonly needed: number;
        readonly isTyped: boolean;
      }
    | undefined;
  /** Hose taken to fill it [m], and the air gap that two rules want [m]. */
  readonly airGap: { readonly bore: number; readonly us: number; readonly uk: number };
  /** Vent that does, bare and with a mosquito screen [m]; undefined where it is sealed or draws nothing. */
  readonly vent:
    | { readonly bare: number; readonly screened: number; readonly now: number | undefined }
    | undefined;
}

/** What hangs in the coop. */
export interface CoopSheet {
  readonly marks: readonly Mark[];
  /** Hung runs: where their drinkers should hang, a week apart from the plan's day [m above the ground]. */
  readonly heights: readonly {
    readonly run: string;
    readonly weeks: readonly {
      readonly week: number;
      readonly height: number | undefined;
      readonly raise: number;
      readonly low: number;
      readonly high: number;
    }[];
  }[];
  readonly contacts: readonly {
    readonly who: string;
    readonly phone?: string | undefined;
    readonly note?: string | undefined;
  }[];
}

/** Everything needed to build a plan. Numbers are SI; the words are written in report/. */
export interface BuildSheet {
  readonly parts: readonly Part[];
  readonly pipes: readonly PipeToCut[];
  readonly holes: readonly HoleToDrill[];
  readonly heights: readonly HeightMark[];
  readonly steps: readonly BuildStep[];
  readonly jugs: readonly JugTest[];
  readonly loads: readonly StandLoad[];
  readonly coop: CoopSheet;
  /** Of all that has one; how many parts and pipes have none. */
  readonly price: { readonly sum: number; readonly unpriced: number; readonly money: string | undefined };
  /** Prices in the plan that no part of it is called by. */
  readonly strayPrices: readonly string[];
  readonly openWater: readonly string[];
  /** Loose waterers in which young birds of their pen may drown: depth of the open water [m], until which age. */
  readonly deepWater: readonly {
    readonly pen: string;
    readonly waterer: string;
    readonly depth: number;
    readonly birds: string;
    readonly untilDays: number;
  }[];
  readonly hasRoof: boolean;
  readonly kerf: number;
  readonly day: number | undefined;
}

/** How to build a plan, or what in it contradicts itself. */
export type BuildAnswer =
  | { readonly ok: true; readonly sheet: BuildSheet }
  | { readonly ok: false; readonly problems: readonly Problem[] };

import type { Problem } from "../../document/problem.js";
import type { Weather } from "../../model/flock.js";
import type { FlockIntake } from "../../model/flock-intake.js";
import type { LooseWaterer } from "../../model/yard.js";
import type { Allowance } from "../../tables/allowances.js";
import type { Region } from "../birds/drinkers-needed.js";
import type { HangRange } from "../birds/hang-range.js";
import type { YardFinding } from "./yard-finding.js";

/** What the loose waterers of a plan come to. Lengths [m], volumes [m³], masses [kg], slopes as tan. */
export interface YardOfPlan {
  readonly day: number | undefined;
  readonly region: Region;
  readonly weather: Weather;
  /** The hot day [°C]: the plan's hot spell, or one taken because it names none. */
  readonly hotDay: { readonly high: number; readonly low: number; readonly isTaken: boolean };
  /** Every pen of the plan, those without loose waterers too. */
  readonly pens: readonly PenYard[];
}

/** The loose waterers of every pen, or what in the plan contradicts itself. */
export type YardAnswer =
  | { readonly ok: true; readonly yard: YardOfPlan }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** One pen and its loose waterers. */
export interface PenYard {
  readonly pen: string;
  readonly index: number;
  readonly slope: number;
  readonly birds: number;
  readonly batches: readonly {
    readonly kind: string;
    readonly kindName: string;
    readonly count: number;
    readonly ageDays: number;
  }[];
  /** Places to drink at the line, and at all loose ones that give water. */
  readonly linePlaces: number;
  readonly loosePlaces: number;
  /** Of what the birds drink, the share taken from the loose ones: as the places to drink. */
  readonly looseShare: number;
  /** Share of what rules and advice ask that the loose ones and the line offer together; 1 is enough. */
  readonly covered: number;
  readonly coveredByLine: number;
  readonly waterers: readonly WatererReport[];
  readonly changeOvers: readonly ChangeOver[];
  readonly findings: readonly YardFinding[];
}

/** One entry of a pen's waterers. Figures are of each of its `count`, but for those that say otherwise. */
export interface WatererReport {
  readonly id: string;
  readonly index: number;
  /** As it was built, for drawing. */
  readonly waterer: LooseWaterer;
  readonly tilt: Tilt;
  /** When level, on its slope, and of that what birds can drink. */
  readonly holds: number;
  readonly stays: number;
  readonly gives: number;
  /** Empty, and full as it is carried or lifted. */
  readonly emptyMass: number;
  readonly fullMass: number;
  /** To fill one: how many trips with what is carried in each, and what such a trip weighs. */
  readonly fill: { readonly trips: number; readonly massPerTrip: number };
  readonly reach: Reach;
  /** The plan's day first, then a week apart. */
  readonly weeks: readonly WatererWeek[];
  readonly suits: readonly Suit[];
  readonly depth: WaterDepth;
  /** Lip or pins over what it stands on when not hung or raised; undefined for what only hangs. */
  readonly ownHeight: number | undefined;
  /** Open water, and what it loses in a day now and on the hot day. */
  readonly open: { readonly area: number; readonly now: number; readonly hot: number };
  /** What warming air pushes out on the hot day, at worst; of vacuum founts. */
  readonly warming: Warmed | undefined;
  readonly openings: readonly Opening[];
}

/** How far off level it may stand. */
export type Tilt =
  | {
      readonly works: "vacuum";
      readonly slope: number;
      readonly isDraining: boolean;
      /** Slope at which it drains as it stands, and with the hole turned each way; undefined: none does. */
      readonly drainsAt: number | undefined;
      readonly byHole: Readonly<Record<"uphill" | "sideways" | "downhill", number | undefined>>;
      /** Share of the lip, or of the spouts, where birds find water. */
      readonly wetShare: number;
      readonly shims: Shims;
    }
  | {
      readonly works: "bell";
      readonly slope: number;
      readonly isDraining: boolean;
      readonly drainsAt: number;
      /** How far aside it may be held when it hangs; undefined when it stands. */
      readonly swing: number | undefined;
      readonly shims: Shims;
    }
  | {
      readonly works: "pan" | "trough";
      readonly slope: number;
      /** Of a full one, the share that stays on the slope; of a trough also when it lies across it. */
      readonly share: number;
      readonly shareAcross: number | undefined;
      /** Slope on which half of a full one stays, as it lies. */
      readonly halfAt: number;
      readonly shims: Shims;
    }
  | { readonly works: "nipples"; readonly slope: number };

/** Under the lower edge: to make it level, and to leave half of what it may stand [m]. */
export interface Shims {
  readonly level: number;
  readonly enough: number;
}

/** How many birds it serves. */
export interface Reach {
  /** Edge that holds water [m]; 0 at nipples and spouts. */
  readonly edge: number;
  /** Birds that find room at once, at one. */
  readonly atOnce: number;
  /** Edge one bird takes [m]; undefined at nipples and spouts. */
  readonly room: number | undefined;
  /** Of what the strictest rules and advice ask of the pen, the share all of this entry offer; undefined: none speaks. */
  readonly covers: number | undefined;
  readonly rules: readonly Allowance[];
}

/** One week of one waterer. */
export interface WatererWeek {
  readonly week: number;
  readonly day: number | undefined;
  /** Taken from one in a day, spills and air counted. */
  readonly draw: FlockIntake;
  readonly hotDraw: FlockIntake;
  /** Refills of one in a day, on the figure to size on; undefined where it gives nothing. */
  readonly refills: number | undefined;
  readonly hotRefills: number | undefined;
  /** Where its lip or its pins belong for the smallest birds; undefined where no table says. */
  readonly hang: HangRange | undefined;
}

/** Whether it suits one batch, and from when till when. Ages [days]. */
export interface Suit {
  readonly kind: string;
  readonly kindName: string;
  readonly ageDays: number;
  readonly verdict: "suits" | "tooYoung" | "tooOld" | "notForThem";
  readonly fromDays: number;
  readonly toDays: number | undefined;
}

/** Water that stands open at it, and for whom it is too deep. */
export interface WaterDepth {
  /** [m]; 0 where no water stands open. */
  readonly depth: number;
  readonly mayDrown: readonly {
    readonly kindName: string;
    readonly ageDays: number;
    readonly untilDays: number;
  }[];
}

/** Water pushed out as air warms, at the fullness at which most is. */
export interface Warmed {
  readonly from: number;
  readonly to: number;
  /** Whether the plan's hot day has no cool night, so that a swing is taken. */
  readonly isTaken: boolean;
  readonly pushed: number;
  /** What the ring has room for, and what runs over. */
  readonly room: number;
  readonly lost: number;
  /** Of its reservoir, the share that is air then. */
  readonly airShare: number;
}

/** What happens when what should be shut is open, or the other way round. */
export type Opening =
  | { readonly code: "capOff" | "lidLoose" | "jarCracked"; readonly lost: number }
  | { readonly code: "filledOpen"; readonly lost: number }
  | { readonly code: "ventShut"; readonly gives: number; readonly stays: number };

/** From one waterer to the next, for one kind of bird: both stay for some days. Ages [days]. */
export interface ChangeOver {
  readonly kind: string;
  readonly kindName: string;
  readonly from: string;
  readonly to: string | undefined;
  /** Both are there from this age, until the first is taken away. */
  readonly bothFromDays: number;
  readonly untilDays: number;
  readonly bothFromDay: number | undefined;
  readonly untilDay: number | undefined;
}

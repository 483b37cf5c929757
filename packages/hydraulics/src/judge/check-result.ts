import type { Line } from "../model/line.js";
import type { MomentName } from "../model/moment.js";
import type { DefaultUsed } from "../model/typed-values.js";
import type { FrictionLaw, LineSolution } from "../solve/solution.js";
import type { FlockReport } from "./birds/flock-report.js";
import type { DoubtedInput } from "./sureness/doubted-inputs.js";

/** Worst last. */
export const VERDICTS = ["good", "drips", "starves", "dry"] as const;
/** One of the four verdicts. */
export type VerdictName = (typeof VERDICTS)[number];

/** Heads and flow of one drinker at one moment, in SI. */
export interface DrinkerReading {
  /** Height of the water that feeds it above the drinker: the head if nothing flowed anywhere [m]. */
  readonly staticHead: number;
  /** Head at the drinker's inlet [m]. While worked, if the moment has it worked; else as it stands. */
  readonly flowingHead: number;
  /** Flow while worked [m3/s]; 0 when idle. */
  readonly flow: number;
}

/** Why a drinker has its verdict: a code with the numbers its sentence needs, all SI. */
export type Reason =
  | {
      readonly code: "flowsEnough";
      readonly flow: number;
      readonly need: number;
      readonly head: number;
      readonly idleHead: number;
      readonly holdsUpTo: number;
    }
  | {
      readonly code: "flowTooLow";
      readonly flow: number;
      readonly need: number;
      readonly head: number;
      readonly headNeeded: number;
      readonly lostOnTheWay: number;
      readonly airHead: number;
      readonly staticHead: number;
    }
  | { readonly code: "tooHigh"; readonly staticHead: number; readonly openingHead: number }
  | {
      readonly code: "frictionTakesAll";
      readonly staticHead: number;
      readonly head: number;
      readonly openingHead: number;
    }
  | { readonly code: "humpAboveWater"; readonly hump: string; readonly above: number }
  | {
      readonly code: "airLocked";
      readonly hump: string;
      readonly airHead: number;
      readonly staticHead: number;
    }
  | { readonly code: "sourceStalls"; readonly source: string; readonly litres: number }
  | { readonly code: "shutOff"; readonly at: string }
  | { readonly code: "blocked" }
  | { readonly code: "idleHeadTooHigh"; readonly head: number; readonly holdsUpTo: number }
  | { readonly code: "idleHeadTooLow"; readonly head: number; readonly sealsFrom: number }
  | { readonly code: "notSolved"; readonly outcome: string };

/** One trouble (or its absence) of one drinker, taken with one friction law at one moment. */
export interface Judgement {
  readonly verdict: VerdictName;
  /** Head to spare, negative when short [m]. */
  readonly margin: number;
  readonly moment: MomentName;
  readonly friction: FrictionLaw;
  readonly because: Reason;
}

/** How many of the plans that fit the measurements as well agree with a verdict. */
export interface Agreement {
  readonly share: number;
  /** Plans tried until it was decided, or until there were no more. */
  readonly samples: number;
  /** Whether so many agree, or so few, as would happen by chance in hardly one of a hundred on the other side of the line. */
  readonly isDecided: boolean;
}

/** How sure a verdict is under the doubt of what was measured. */
export type Certainty =
  | ({ readonly kind: "sure" } & Agreement)
  | ({
      readonly kind: "closeCall";
      /** What decides most among the things that can be measured; undefined where it is in none of these. */
      readonly measureAgain: DoubtedInput | undefined;
      readonly otherwise: VerdictName;
    } & Agreement)
  | { readonly kind: "notSampled" };

/** The verdict on one drinker: the worst of all moments and both friction laws. */
export interface DrinkerVerdict extends Judgement {
  readonly drinker: string;
  /** Position in `line.drinkers`. */
  readonly index: number;
  /** Other troubles of the same drinker (it may drip when full and starve when low). */
  readonly also: readonly Judgement[];
  /** Whether both friction laws give the same verdict; where they differ the worse one stands. */
  readonly lawsAgree: boolean;
  readonly certainty: Certainty;
  /** What each law gives at each moment. */
  readonly moments: Readonly<Record<MomentName, Readonly<Record<FrictionLaw, DrinkerReading>>>>;
}

/** How one run fares at one moment with one law. */
export interface RunReading {
  /** Largest flow along the run [m3/s], at its busiest end; signed from start to end. */
  readonly flow: number;
  readonly velocity: number;
  readonly reynolds: number;
  readonly regime: "still" | "laminar" | "critical" | "turbulent";
  /** Head lost along the run, friction and fittings [m]. */
  readonly loss: Readonly<Record<FrictionLaw, number>>;
  readonly hazenWilliamsInRange: boolean;
}

/** What one run holds and carries. */
export interface RunReport {
  readonly run: string;
  readonly index: number;
  readonly pipe: string;
  readonly length: number;
  readonly bore: number;
  /** Water standing in the run [m3]. */
  readonly volume: number;
  /** Full and busiest, the moment of greatest flow. */
  readonly busiest: RunReading;
}

/** What one source holds, gives and weighs. Volumes [m³], masses [kg]. */
export interface SourceReport {
  readonly source: string;
  readonly index: number;
  /** Water the vessel holds when full, between full and lowest, and below lowest (dead) [m3]. */
  readonly volumeFull: number;
  readonly volumeUsable: number;
  readonly volumeDead: number;
  /** Draw at the busiest minutes [m3/s]. */
  readonly drawBusiest: number;
  /** Mass on the stand when full, vessel and water [kg]. */
  readonly massFull: number;
  /** Height of the water's surface above the datum at each moment [m]. */
  readonly surface: Readonly<Record<MomentName, number>>;
  /** Sealed vessels: water given before the line stalls [m3]. */
  readonly volumeBeforeStall: number | undefined;
  /** Least vent diameter that costs no more than a hundredth of the head [m]; undefined when sealed. */
  readonly ventDiameterNeeded: number | undefined;
  readonly ventDiameter: number | undefined;
  /** Header tanks: what the float valve can let in while the supply is at its lowest [m3/s]. */
  readonly feedFlow: number | undefined;
  readonly feedKeepsUp: boolean | undefined;
}

/** What happens when the line is filled from empty. */
export type FillingFinding =
  | {
      readonly code: "humpTrapsAir";
      readonly point: string;
      readonly pointIndex: number;
      readonly airHead: number;
      readonly flowToClear: number;
      readonly flowThere: number;
      readonly locks: boolean;
    }
  | {
      readonly code: "humpAboveWater";
      readonly point: string;
      readonly pointIndex: number;
      readonly above: number;
    }
  | {
      readonly code: "endHoldsAir";
      readonly point: string;
      readonly pointIndex: number;
      readonly rise: number;
    }
  | {
      readonly code: "suction";
      readonly point: string;
      readonly pointIndex: number;
      readonly head: number;
      readonly moment: MomentName;
      readonly breaks: boolean;
    };

/** A caution shown where it applies. Numbers are SI; the words are written in report/. */
export type Caution =
  | {
      readonly code: "weightOnStand";
      readonly source: string;
      readonly mass: number;
      readonly height: number;
    }
  | { readonly code: "foodGrade"; readonly source: string }
  | { readonly code: "backflow"; readonly source: string }
  | { readonly code: "sealedVessel"; readonly source: string }
  | {
      readonly code: "ventTooSmall";
      readonly source: string;
      readonly diameter: number;
      readonly needed: number;
    }
  | {
      readonly code: "feedFallsBehind";
      readonly source: string;
      readonly feedFlow: number;
      readonly draw: number;
    }
  | { readonly code: "openWater"; readonly group: string }
  | { readonly code: "criticalZone"; readonly run: string; readonly reynolds: number }
  | { readonly code: "outsideHazenWilliams"; readonly runs: number }
  | { readonly code: "lookAtTheBirds" };

/** Everything a check found out, in memory: the terminal, the page and `--json` all print this one object. */
export interface Checked {
  readonly line: Line;
  /** The plan's own friction law; verdicts are taken with both. */
  readonly friction: FrictionLaw;
  readonly verdict: VerdictName;
  readonly counts: Readonly<Record<VerdictName, number>>;
  readonly drinkers: readonly DrinkerVerdict[];
  readonly runs: readonly RunReport[];
  readonly sources: readonly SourceReport[];
  readonly filling: readonly FillingFinding[];
  readonly cautions: readonly Caution[];
  readonly defaults: readonly DefaultUsed[];
  /** Set when the plan has pens. */
  readonly flock?: FlockReport;
  readonly solutions: Readonly<Record<MomentName, Readonly<Record<FrictionLaw, LineSolution>>>>;
  readonly madeFrom: {
    readonly planDigest: string;
    readonly version: string;
    readonly seed: number;
    readonly samples: number;
  };
}

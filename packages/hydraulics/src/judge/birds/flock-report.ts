import type { PenDrinkers, Region } from "./drinkers-needed.js";

/** One batch of a pen, on the day asked about. Volumes are a bird's. */
export interface BatchReport {
  readonly kind: string;
  readonly kindName: string;
  /** Position in the pen's list of birds. */
  readonly index: number;
  readonly count: number;
  /** Below 0 they have not come yet: they drink nothing and every figure of drinking is 0. */
  readonly ageDays: number;
  /** What one drinks in the day [m3]: to size on, and to expect. */
  readonly intakeSize: number;
  readonly intakeExpect: number;
  /** Bouts of drinking a day, and water drunk in one [m3]. */
  readonly bouts: number;
  readonly boutVolume: number;
  /** How long one lasts at the drinkers of the pen [s]; undefined where nothing flows. */
  readonly boutSeconds: number | undefined;
  /** What one takes in while it drinks there [m3/s]. */
  readonly rate: number;
  /** Least flow a worked drinker should give birds of that age [m3/s]. */
  readonly flowNeed: number;
}

/** How one pen and its drinkers get on at its busiest hour, water at the lowest usable level. */
export interface PenReport {
  readonly pen: string;
  /** Position in the plan's list of pens. */
  readonly index: number;
  /** Birds that are there on the day and drink from the line. */
  readonly birds: number;
  /** Its birds drink from loose waterers: none counts here. */
  readonly isElsewhere?: true;
  readonly batches: readonly BatchReport[];
  /** Drinkers they reach; those of them that give water; birds these hold at once. */
  readonly drinkers: number;
  readonly giving: number;
  readonly places: number;
  /** Water the pen takes in the day, with what it spills [m3]: to size on, and to expect. */
  readonly intakeSize: number;
  readonly intakeExpect: number;
  /** Start of the hour [s after midnight] and its share of the day's drinking; undefined when no bird is there. */
  readonly busiestHour: { readonly from: number; readonly share: number } | undefined;
  /** Drunk in that hour, and what birds could take in at most with every place taken [m3/s]. */
  readonly demand: number;
  readonly capacity: number;
  /** Mean over the birds: water in a bout [m3], how long it lasts [s]. */
  readonly boutVolume: number;
  readonly boutSeconds: number | undefined;
  /** Birds drinking at once on average over the hour, if none had to wait [erlang]; undefined where nothing flows. */
  readonly load: number | undefined;
  /** Birds at drinkers at once that only one moment in a hundred exceeds: each for itself, and as they follow one another. */
  readonly atOnceAlone: number;
  readonly atOnce: number;
  /** Drinkers taken as at work in the busiest minutes and in an ordinary hour, where the plan does not say. */
  readonly busiest: number;
  readonly ordinary: number;
  /** Chance that a bird finds every place taken; mean wait of all birds [s]. Undefined when the crowd never clears. */
  readonly chanceAllTaken: number | undefined;
  readonly meanWait: number | undefined;
  /** Whether more is wanted in the hour than can be drunk in it, and the share of it that is left wanting. */
  readonly saturates: boolean;
  readonly short: number;
  /** Rounds of crowd and line until neither changed the other. */
  readonly rounds: number;
}

/** Where a group's figure came from: the plan, the birds that reach it, or the default. */
export type CrowdOrigin = "typed" | "birds" | "default";

/** One group of drinkers: what it was judged with. */
export interface GroupCrowd {
  readonly group: string;
  /** Position in `line.drinkers.groups`. */
  readonly index: number;
  /** Pen that reaches it, by position; undefined when none does. */
  readonly pen: number | undefined;
  readonly busiest: { readonly count: number; readonly from: CrowdOrigin };
  readonly ordinary: { readonly count: number; readonly from: CrowdOrigin };
  readonly need: { readonly flow: number; readonly from: CrowdOrigin };
  /** Mean height of its valves above the ground [m]; undefined where the plan says too little of the ground. */
  readonly height: number | undefined;
  /** What birds of the pen can reach with ease [m]; undefined where no table has it, or no pen reaches it. */
  readonly hangAt:
    | { readonly low: number; readonly height: number; readonly high: number; readonly ageDays: number }
    | undefined;
}

/** A group whose valves hang at a height that does not suit the smallest birds that reach it [m]. */
export interface HangingWrong {
  readonly pen: string;
  readonly group: string;
  readonly height: number;
  readonly low: number;
  readonly high: number;
  readonly ageDays: number;
}

/** What is worth saying of birds and drinkers: a code with the numbers its sentence needs, all SI. */
export type BirdFinding =
  | { readonly code: "noDrinkers"; readonly pen: string; readonly birds: number }
  | { readonly code: "notYetCome"; readonly pen: string; readonly kind: string; readonly days: number }
  | {
      readonly code: "tooFewDrinkers";
      readonly pen: string;
      readonly birds: number;
      readonly drinkers: number;
      readonly needed: number;
      readonly device: string;
      /** Id of the allowance that asks the most of them, how it counts, its figure (m of edge where it counts edge). */
      readonly rule: string;
      readonly counts: "birds" | "edge" | "least";
      readonly figure: number;
      readonly source: string;
      /** Law, or advice. */
      readonly binding: boolean;
    }
  | { readonly code: "oneInReach"; readonly pen: string; readonly birds: number }
  | {
      readonly code: "crowdSaturates";
      readonly pen: string;
      readonly demand: number;
      readonly capacity: number;
      readonly short: number;
    }
  | ({ readonly code: "hangsTooHigh" } & HangingWrong)
  | ({ readonly code: "hangsTooLow" } & HangingWrong)
  | {
      readonly code: "flowUnderNeed";
      readonly pen: string;
      readonly group: string;
      readonly drinker: string;
      readonly flow: number;
      readonly need: number;
      readonly ageDays: number;
    }
  | {
      readonly code: "flowAboveBenefit";
      readonly pen: string;
      readonly group: string;
      readonly drinker: string;
      readonly flow: number;
      readonly most: number;
    }
  | {
      readonly code: "lowFlowInHeat";
      readonly pen: string;
      readonly group: string;
      readonly drinker: string;
      readonly flow: number;
      /** Highest air of the plan's hottest days [°C]. */
      readonly high: number;
      /** The two flows a trial in heat compared [m3/s]. */
      readonly triedLow: number;
      readonly triedHigh: number;
    }
  | {
      readonly code: "mayDrown";
      readonly pen: string;
      readonly group: string;
      readonly kind: string;
      readonly ageDays: number;
      readonly untilDays: number;
    };

/** The birds of a plan and what they mean to its line; part of `Checked` when the plan has pens. */
export interface FlockReport {
  /** Days since 1970-01-01; undefined when the plan names no day and none was asked for. */
  readonly day: number | undefined;
  readonly pens: readonly PenReport[];
  readonly groups: readonly GroupCrowd[];
  readonly findings: readonly BirdFinding[];
  /** Whose rules on drinkers count; and by pen, how many drinkers it needs, and why. */
  readonly region: Region;
  readonly needed: readonly PenDrinkers[];
  /** All pens, with what they spill [m3/day]: to size on, and to expect. */
  readonly intakeSize: number;
  readonly intakeExpect: number;
}

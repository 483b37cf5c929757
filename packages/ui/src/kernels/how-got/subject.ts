import type { FrictionLaw, LastingCaseName, MomentName } from "@headfall/hydraulics";

/** Anything on the page that can be asked how it was got. Parts are named by their place in `checked`. */
export type HowSubject =
  | {
      readonly of: "verdict" | "drinkerMargin" | "drinkerCertainty" | "drinkerHeight";
      readonly drinker: number;
    }
  | {
      readonly of: "drinkerStaticHead" | "drinkerHead" | "drinkerFlow";
      readonly drinker: number;
      readonly moment: MomentName;
    }
  | { readonly of: "drinkerNeed"; readonly drinker: number }
  | { readonly of: "runLength" | "runFall" | "runBore" | "runVolume"; readonly run: number }
  | {
      readonly of: "runFlow" | "runVelocity" | "runReynolds";
      readonly run: number;
      /** The busiest with the source full where it is left out, as the table of runs shows. */
      readonly moment?: MomentName;
    }
  | { readonly of: "runLoss"; readonly run: number; readonly law: FrictionLaw; readonly moment?: MomentName }
  | { readonly of: "sourceVolume"; readonly source: number; readonly which: "full" | "usable" | "dead" }
  | { readonly of: "sourceDraw" | "sourceSurface"; readonly source: number; readonly moment: MomentName }
  | { readonly of: "sourceMass" | "sourceVent" | "sourceStall" | "sourceFeed"; readonly source: number }
  | { readonly of: "pointHeight"; readonly point: number }
  | { readonly of: "pointHead"; readonly point: number; readonly moment: MomentName }
  | { readonly of: "filling"; readonly finding: number }
  | { readonly of: "default"; readonly used: number }
  | ({ readonly of: "flockIntake"; readonly which: IntakeFigure } & IntakeDay)
  | ({
      readonly of: "batchIntake";
      readonly pen: number;
      readonly batch: number;
      readonly which: IntakeFigure;
    } & IntakeDay)
  | {
      readonly of: "penBout" | "penBoutSeconds" | "penLoad" | "penBusiest" | "penAllTaken" | "penWait";
      readonly pen: number;
    }
  /** `device` by its place among those of the pen. */
  | { readonly of: "drinkersNeeded"; readonly pen: number; readonly device: number }
  /** Of what the room had judged: a group, or a hung run among those raised, by its place. */
  | { readonly of: "weekHang"; readonly week: number; readonly group: number }
  | { readonly of: "weekRaise"; readonly week: number; readonly raised: number }
  | { readonly of: "weekHead"; readonly week: number; readonly which: "idle" | "flowing" }
  | { readonly of: "weekVerdict"; readonly week: number; readonly hot?: boolean }
  /** Of the day the room had run: pens, batches and drinkers by their place in it. */
  | { readonly of: "dayPen"; readonly inPen: number; readonly what: DayPenFigure }
  | { readonly of: "dayShort"; readonly inPen: number; readonly inBatch: number }
  | {
      readonly of: "dayDrinker";
      readonly at: number;
      readonly what: "bouts" | "drawn" | "busy" | "leastFlow";
    }
  | { readonly of: "lasts"; readonly what: LastingWhat; readonly which: LastingCaseName }
  | { readonly of: "dailyFall"; readonly source: number }
  /** Of so many days on which nobody comes. */
  | { readonly of: "away"; readonly what: "needed" | "usable"; readonly days: number }
  /** Of the record of rain that was reckoned through; `way` is how, by its place, the first where it is left out. */
  | { readonly of: "rain"; readonly what: RainFigure; readonly way?: number }
  /** Of the mishaps the room had run, by place among its rows; a guard by its place among those of the row. */
  | { readonly of: "mishap"; readonly row: number; readonly what: MishapFigure }
  | { readonly of: "mishapGuard"; readonly row: number; readonly guard: number }
  /** The same of a loose waterer. */
  | { readonly of: "mishapWaterer"; readonly row: number }
  /** Of the night of frost and the hot day that the room had reckoned: a part by its place. */
  | { readonly of: "frostTime"; readonly part: number; readonly what: "cold" | "blocked" | "solid" }
  | { readonly of: "heatPeak"; readonly part: number; readonly side: "hottest" | "expected" }
  /** Of the year the room had reckoned: a pen and a period by their places. */
  | { readonly of: "yearDraw" | "yearMet"; readonly pen: number; readonly period: number }
  | { readonly of: "yearNeeded"; readonly pen: number; readonly period: number; readonly device: number }
  /** Of the yard the room had reckoned: a pen and a waterer by their places. */
  | { readonly of: "waterer"; readonly pen: number; readonly waterer: number; readonly what: WatererFigure }
  /** Of the likely causes the room had ranked, by place. */
  | { readonly of: "troubleShare"; readonly cause: number };

/** What of a loose waterer is asked. */
export type WatererFigure =
  | ("holds" | "gives" | "drainsAt" | "share")
  | ("atOnce" | "refills" | "hotRefills" | "weight");

/** What of a mishap is asked. */
export type MishapFigure = "harm" | "lost" | "empty" | "pours" | "night";

/** What of a record of rain is asked. */
export type RainFigure =
  | ("shortDays" | "inTime" | "inVolume" | "cameIn" | "balance" | "drunk")
  | ("neverFails" | "neverFailsDrawnFirst" | "roofNeeded")
  | ("downpour" | "passes" | "overflowNeeded" | "wettestOver");

/** What of a pen's simulated day is asked. */
export type DayPenFigure =
  | ("meanWait" | "wait95" | "longestWait")
  | ("allTaken" | "mostAtOnce" | "gaveUp" | "foundDry");

/** What of how long the water lasts is asked. */
export type LastingWhat = "firstWithout" | "firstDry" | "halfDry" | "empty" | "firstDay";

/** What birds drink: to size on, or to expect. */
export type IntakeFigure = "size" | "expect";

/** The day what they drink is for: so many weeks on, in the plan's weather or in that of its hot spell. */
export interface IntakeDay {
  /** This week where it is left out. */
  readonly week?: number;
  readonly hot?: boolean;
  /** The hot day of the room Weather, of every bird wherever it drinks. */
  readonly heat?: boolean;
}

/** Every kind of subject, for lists and for tests that leave none out. */
export const HOW_SUBJECTS = [
  ...["verdict", "drinkerStaticHead", "drinkerHead", "drinkerFlow", "drinkerNeed", "drinkerMargin"],
  ...["drinkerCertainty", "drinkerHeight"],
  ...["runLength", "runFall", "runBore", "runVolume", "runFlow", "runVelocity", "runReynolds", "runLoss"],
  ...["sourceVolume", "sourceDraw", "sourceSurface", "sourceMass", "sourceVent", "sourceStall", "sourceFeed"],
  ...["pointHeight", "pointHead", "filling", "default"],
  ...["flockIntake", "batchIntake"],
  ...["weekHang", "weekRaise", "weekHead", "weekVerdict", "dayPen", "dayShort", "dayDrinker"],
  ...["drinkersNeeded", "lasts", "away", "dailyFall", "rain", "mishap", "mishapGuard", "mishapWaterer"],
  ...["troubleShare"],
  ...["frostTime", "heatPeak"],
  ...["yearDraw", "yearMet", "yearNeeded", "waterer"],
  ...["penBout", "penBoutSeconds", "penLoad", "penBusiest", "penAllTaken", "penWait"],
] as const satisfies readonly HowSubject["of"][];

/** One text for each subject: an attribute that only changes when the subject does. */
export function keyOfSubject(subject: HowSubject): string {
  return JSON.stringify(subject);
}

/** The subject of such a text; only what `keyOfSubject` wrote is ever read. */
export function subjectOfKey(key: string): HowSubject {
  return JSON.parse(key) as HowSubject;
}

/** Whether two subjects ask for the same number. */
export function isSameSubject(one: HowSubject | undefined, other: HowSubject | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  return keyOfSubject(one) === keyOfSubject(other);
}

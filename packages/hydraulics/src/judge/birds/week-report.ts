import type { Problem } from "../../document/problem.js";
import type { DrinkerVerdict, VerdictName } from "../check-result.js";
import type { FlockReport } from "./flock-report.js";

/** How far one hung run is raised in a week. */
export interface RunRaise {
  readonly run: string;
  /** Position in `line.runs`. */
  readonly index: number;
  /** From where the plan has it [m]; negative where it comes down. */
  readonly raise: number;
  /** Where its valves then hang above the ground [m]; undefined where the plan says too little of the ground. */
  readonly height: number | undefined;
  readonly low: number;
  readonly high: number;
}

/** One week from now on: the line as it then hangs, judged with the birds as old as they then are. */
export interface WeekReport extends FlockReport {
  /** 0: the plan's day. */
  readonly week: number;
  /** Whether it is judged in the air of the plan's hot spell. */
  readonly hot: boolean;
  readonly raised: readonly RunRaise[];
  /** Over all drinkers: least and greatest head when idle and full; and flowing, lowest usable and busiest [m]. */
  readonly idleHead: { readonly least: number; readonly most: number };
  readonly flowingHead: { readonly least: number; readonly most: number };
  readonly verdict: VerdictName;
  readonly counts: Readonly<Record<VerdictName, number>>;
  /** The drinker with the worst verdict and the least margin; undefined on a line without drinkers. */
  readonly worst: DrinkerVerdict | undefined;
}

/** This week and each that comes, or what in the plan contradicts itself. */
export type WeeksJudging =
  | {
      readonly ok: true;
      /** From the plan's day on, a week apart. */
      readonly weeks: readonly WeekReport[];
      /** The same weeks on a day of the plan's hot spell; none where the plan names no spell. */
      readonly hotWeeks: readonly WeekReport[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

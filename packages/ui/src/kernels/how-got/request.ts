import type {
  Checked,
  DayResult,
  Frost,
  Heat,
  Mishaps,
  Plan,
  RainSupply,
  Trouble,
  WeekReport,
  YardOfPlan,
  YearOfPlan,
} from "@headfall/hydraulics";
import type { UnitSystem } from "../typed-quantity.js";
import { type Figures, figuresIn } from "./figures.js";

/** What a room had reckoned of the plan, for the figures it shows. */
export interface RoomTold {
  readonly day?: DayResult | undefined;
  readonly weeks?: readonly WeekReport[];
  readonly hotWeeks?: readonly WeekReport[];
  /** What a record of rain came to. */
  readonly rain?: RainSupply | undefined;
  readonly mishaps?: Mishaps | undefined;
  readonly trouble?: Trouble | undefined;
  readonly frost?: Frost;
  readonly heat?: Heat;
  readonly year?: YearOfPlan | undefined;
  readonly yard?: YardOfPlan;
}

/** What every explanation is made from. */
export interface HowRequest {
  readonly checked: Checked;
  /** The plan as typed; it may be newer or older than what was checked, and may be left out. */
  readonly plan: Plan | undefined;
  readonly figures: Figures;
  readonly room: RoomTold;
}

export const requestOf = (
  checked: Checked,
  plan: Plan | undefined,
  system: UnitSystem,
  room: RoomTold = {},
): HowRequest => ({ checked, plan, figures: figuresIn(system), room });

/** A name of the user's, set apart from the words around it. */
export const quoted = (name: string): string => `“${name}”`;

/** A place of the line by the name a person would give it: "feed, 1.2 m along", not the plan's own label. */
export function placeName({ checked: { line }, figures }: HowRequest, point: number): string {
  const source = line.sources.find((candidate) => candidate.point === point);
  if (source !== undefined) return `the outlet of ${quoted(source.id)}`;
  for (const run of line.runs) {
    const at = run.points.indexOf(point, 1);
    if (at > 0 && at < run.points.length - 1)
      return `${quoted(run.id)}, ${figures.length(run.along[at]!)} along`;
  }
  return quoted(line.points.id[point] ?? "");
}

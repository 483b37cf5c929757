import type { Plan } from "../document/plan-schema.js";
import type { Joints } from "./joints.js";
import type { DrinkerGroup, Run } from "./line.js";
import type { DrinkerPart, PointList, SegmentPart } from "./line-parts.js";
import type { TypedValues } from "./typed-values.js";

/** What is gathered while the runs are laid one after another. */
export interface Laying {
  readonly plan: Plan;
  readonly joints: Joints;
  /** By source, how wide its outlet is [m]; undefined: as its pipe. */
  readonly outletBores: readonly (number | undefined)[];
  readonly height: Float64Array;
  readonly ground: Float64Array;
  readonly values: TypedValues;
  readonly points: PointList;
  readonly segments: SegmentPart[];
  readonly drinkers: DrinkerPart[];
  readonly groups: DrinkerGroup[];
  readonly runs: Run[];
  readonly openWater: string[];
}

import { type Plan, runEnds, runNames } from "@headfall/hydraulics";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { Edited, PlanChange } from "../plan-change.js";
import { mergeJoints } from "./merge-joints.js";
import { GONE, jointNames, refuse } from "./plan-parts.js";
import { splitAt } from "./split-run.js";

/** Lays a joint upon the middle of a run: the run is cut in two there, and the joint's own runs meet it at its height. */
export function landJoint(
  plan: Plan,
  { joint, run, along }: Extract<PlanChange, { kind: "landJoint" }>,
  system: UnitSystem,
): Edited {
  const ends = runEnds(plan)[run];
  if (ends === undefined || !jointNames(plan).has(joint)) return refuse(GONE);
  if (ends.from === joint || ends.to === joint) return refuse("A joint cannot be laid upon its own run.");
  const split = splitAt(plan, run, along, system);
  if (!split.ok) return split;
  const merged = mergeJoints(split.plan, joint, split.joint, system);
  return merged.ok ? { ...merged, words: `${joint} laid upon ${runNames(plan)[run]}` } : merged;
}

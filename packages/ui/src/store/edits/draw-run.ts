import { type Plan, type PlanRun, runEnds, sourceNames } from "@headfall/hydraulics";
import { type AboveLayout, groundOf, layAbove, lengthOf } from "../../kernels/above/lay-above.js";
import type { Ground } from "../../kernels/above/spot.js";
import { metresOf } from "../../kernels/typed-metres.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { Edited, PlanChange, RunEndChoice } from "../plan-change.js";
import { heightsOf, type PlanHeights } from "../plan-heights.js";
import { exactLength, roundLength } from "../typed-length.js";
import { keepHeights, movedJoints } from "./keep-heights.js";
import { tidyRun } from "./part-keys.js";
import { pinPlaces } from "./pin-places.js";
import {
  freePointName,
  freeRunName,
  GONE,
  jointNames,
  refuse,
  typedPlace,
  withEnds,
  withPoint,
} from "./plan-parts.js";
import { joinedToSources } from "./reach-parts.js";
import { lengthAtLeast } from "./run-length.js";
import { contradictionsIn } from "./settle-edit.js";
import { splitAt } from "./split-run.js";

type DrawnRun = Extract<PlanChange, { readonly kind: "drawRun" }>;
type Refusal = { readonly ok: false; readonly because: string };
/** One end of the new run: a joint of the plan as it has become by then. */
interface Ended {
  readonly ok: true;
  readonly plan: Plan;
  readonly joint: string;
}

/** A run is cut no nearer than this to its end; the end itself is taken [m]. */
const AT_END = 0.01;

/**
 * Lays a new run between two ends. It starts where the water comes from, whichever way it was drawn. A run between two
 * joints that have water already makes a ring: no pipe moves for it, and its fall is told where it would be open.
 */
export function drawRun(plan: Plan, change: DrawnRun, system: UnitSystem): Edited {
  if (change.to.kind === "onRun" && change.from.kind === "onRun" && change.from.run === change.to.run)
    return drawOnOneRun(plan, change, change.from, change.to, system);
  const from = endAt(plan, change.from, system);
  if (!from.ok) return from;
  const to = endAt(from.plan, change.to, system);
  if (!to.ok) return to;
  return layRun(plan, to.plan, [from.joint, to.joint], change, system);
}

/** Both ends on the same run: the one farther along is cut first, so that the nearer keeps its distance. */
function drawOnOneRun(
  plan: Plan,
  change: DrawnRun,
  from: Extract<RunEndChoice, { readonly kind: "onRun" }>,
  to: Extract<RunEndChoice, { readonly kind: "onRun" }>,
  system: UnitSystem,
): Edited {
  const [near, far] = from.along <= to.along ? [from, to] : [to, from];
  const beyond = endAt(plan, far, system);
  if (!beyond.ok) return beyond;
  const before = endAt(beyond.plan, near, system);
  if (!before.ok) return before;
  const joints = near === from ? [before.joint, beyond.joint] : [beyond.joint, before.joint];
  return layRun(plan, before.plan, joints as [string, string], change, system);
}

/** The joint a run is to end at; made where there is none yet. */
function endAt(plan: Plan, end: RunEndChoice, system: UnitSystem): Ended | Refusal {
  if (end.kind === "joint")
    return jointNames(plan).has(end.joint) ? { ok: true, plan, joint: end.joint } : refuse(GONE);
  if (end.kind === "place") {
    const joint = freePointName(plan);
    const pinned = pinPlaces(plan, system);
    return { ok: true, plan: withPoint(pinned, joint, { place: typedPlace(end.place, system) }), joint };
  }
  const run = plan.runs[end.run];
  if (run === undefined) return refuse(GONE);
  const { from, to } = runEnds(plan)[end.run]!;
  if (end.along <= AT_END) return { ok: true, plan, joint: from };
  if (end.along >= metresOf(run.length) - AT_END) return { ok: true, plan, joint: to };
  return splitAt(plan, end.run, end.along, system);
}

function layRun(
  old: Plan,
  plan: Plan,
  [from, to]: readonly [string, string],
  change: DrawnRun,
  system: UnitSystem,
): Edited {
  if (from === to) return refuse("A run leads from one place to another.");
  const reached = joinedToSources(plan);
  if (!reached.has(from) && !reached.has(to))
    return refuse("No water comes here: start at a source, a joint or another run.");
  const isTurned = !reached.has(from);
  const ends = isTurned ? { from: to, to: from } : { from, to };
  const corners = isTurned ? [...change.corners].reverse() : change.corners;
  const open = withEnds(plan);
  const heights = heightsOf(open);
  const length = lengthOfNew(open, heights, ends, corners, change.length, system);
  const id = freeRunName(open);
  const places = corners.map((corner) => typedPlace(corner, system));
  const run = tidyRun({
    id,
    ...ends,
    length,
    corners: places.length === 0 ? undefined : places,
    pipe: change.pipe,
  });
  const laid = withoutMoving(old, open, run, heights, system);
  const selected = { kind: "run", run: laid.runs.length - 1 } as const;
  return { ok: true, plan: laid, words: `${id} drawn, ${length}`, selected };
}

/** As typed, or as long as it is drawn; never shorter than its ends are known to be apart in height. */
function lengthOfNew(
  plan: Plan,
  { joints }: PlanHeights,
  { from, to }: { readonly from: string; readonly to: string },
  corners: readonly Ground[],
  given: number | undefined,
  system: UnitSystem,
): string {
  if (given !== undefined) return roundLength(given, system);
  const drawn = layAbove(plan);
  const spots = [spotOf(plan, drawn, from), ...corners, spotOf(plan, drawn, to)];
  const [start, end] = [joints.get(from)?.height, joints.get(to)?.height];
  const apart = start === undefined || end === undefined ? 0 : Math.abs(start - end);
  return lengthAtLeast(lengthOf(spots), apart, system);
}

/** A new place has no run yet and is on no drawing, but it is written down. */
function spotOf(plan: Plan, drawn: AboveLayout, name: string): Ground {
  const place = plan.points?.find(({ id }) => id === name)?.place;
  return drawn.jointByName.get(name) ?? groundOf(place ?? { x: "0 m", y: "0 m" });
}

/** The plan with the run, its fall told if it must be, and no other pipe higher or lower than before. */
function withoutMoving(old: Plan, plan: Plan, run: PlanRun, heights: PlanHeights, system: UnitSystem): Plan {
  const laid = { ...plan, runs: [...plan.runs, run] };
  const isClosed = heights.joints.has(run.from!) && heights.joints.has(run.to!);
  if (!isClosed) return keepHeights(heights, laid, system);
  const isSound = contradictionsIn(old).length > 0 || contradictionsIn(laid).length === 0;
  if (isSound && movedJoints(heights, heightsOf(laid)).length === 0) return laid;
  const told = tidyRun({ ...run, fall: fallBetween(plan, run, heights, system) });
  return keepHeights(heights, { ...plan, runs: [...plan.runs, told] }, system);
}

function fallBetween(plan: Plan, { from, to }: PlanRun, { joints }: PlanHeights, system: UnitSystem): string {
  const source = sourceNames(plan).indexOf(from!);
  const start = source < 0 ? joints.get(from!)!.height : metresOf(plan.sources[source]!.ground);
  return exactLength(start - joints.get(to!)!.height, system);
}

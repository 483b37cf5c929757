import type { Hit } from "../../kernels/above/hit.js";
import type { AboveJoint } from "../../kernels/above/lay-above.js";
import type { Ground } from "../../kernels/above/spot.js";
import { type Pixel, toGround } from "../../kernels/above/viewport.js";
import { distanceOf, nearestOnWay } from "../../kernels/above/ways.js";
import type { RunEndChoice } from "../../store/plan-change.js";
import type { Surroundings } from "./hand.js";
import type { DrawingRun } from "./hand-state.js";
import { isLooseEnd } from "./loose-end.js";

/** A run begins at what was pressed; on empty ground it begins at the nearest loose end, or at the source. */
export function startRun(
  pointer: number,
  start: Pixel,
  hit: Hit | undefined,
  around: Surroundings,
): DrawingRun {
  const pressed = toGround(around.view, start);
  const { from, place } = startOf(hit, pressed, around);
  return { name: "drawing-run", pointer, from, start, hit, stroke: [place, pressed] };
}

/** A run held still gets a tee: what the finger draws from there on is a new run. */
export function startTee(pointer: number, start: Pixel, hit: Hit, around: Surroundings): DrawingRun {
  const begun = startRun(pointer, start, hit, around);
  const place = begun.stroke[0]!;
  return { ...begun, ghost: { meets: place, at: place, words: "draw a run from here" } };
}

function startOf(
  hit: Hit | undefined,
  pressed: Ground,
  { layout }: Surroundings,
): { from: RunEndChoice; place: Ground } {
  switch (hit?.kind) {
    case "joint":
      return fromJoint(hit.joint);
    case "run":
      return { from: { kind: "onRun", run: hit.run, along: hit.along }, place: hit.place };
    case "corner": {
      const { run, place } = hit;
      const { spots, length } = layout.runs[run]!;
      return { from: { kind: "onRun", run, along: nearestOnWay(spots, place).share * length }, place };
    }
    case "drinkers": {
      const { run, along, at } = hit.drinker;
      return { from: { kind: "onRun", run, along }, place: at };
    }
  }
  const end = nearestLooseEnd(layout.joints, layout.runs, pressed);
  return end === undefined ? { from: { kind: "place", place: pressed }, place: pressed } : fromJoint(end);
}

const fromJoint = ({ name, x, y }: AboveJoint): { from: RunEndChoice; place: Ground } => ({
  from: { kind: "joint", joint: name },
  place: { x, y },
});

/** Sources, and joints where only one run ends. */
function nearestLooseEnd(
  joints: readonly AboveJoint[],
  runs: Surroundings["layout"]["runs"],
  at: Ground,
): AboveJoint | undefined {
  const loose = joints.filter((joint) => joint.source >= 0 || isLooseEnd(joint, runs));
  return loose.reduce<AboveJoint | undefined>(
    (best, joint) => (best === undefined || distanceOf(joint, at) < distanceOf(best, at) ? joint : best),
    undefined,
  );
}

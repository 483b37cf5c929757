import { type AboveJoint, type AboveLayout, spotAt } from "../../kernels/above/lay-above.js";
import type { Ground } from "../../kernels/above/spot.js";
import type { Selected } from "../../kernels/selected.js";
import type { RunEndChoice } from "../../store/plan-change.js";

/** Where a run drawn by a key begins, and which way it goes at first (a length of 1). */
export interface RunStart {
  readonly from: RunEndChoice;
  readonly place: Ground;
  readonly heading: Ground;
}

/** From a chosen joint straight on, from the middle of a chosen run square to it; from drinkers nothing begins. */
export function startOfRun(selected: Selected | undefined, layout: AboveLayout): RunStart | undefined {
  switch (selected?.kind) {
    case "source":
      return fromJoint(layout, ({ source }) => source === selected.source);
    case "joint":
      return fromJoint(layout, ({ name }) => name === selected.joint);
    case "run":
      return fromMiddle(layout, selected.run);
    default:
      return undefined;
  }
}

function fromJoint(layout: AboveLayout, isMeant: (joint: AboveJoint) => boolean): RunStart | undefined {
  const joint = layout.joints.find(isMeant);
  if (joint === undefined) return undefined;
  const { name, x, y } = joint;
  return { from: { kind: "joint", joint: name }, place: { x, y }, heading: freeHeading(layout, joint) };
}

/** Straight on from the run that leads there, unless another leaves that way already: then a quarter turn aside. */
function freeHeading({ runs }: AboveLayout, { name, x, y }: AboveJoint): Ground {
  const neighbours = runs.flatMap(({ from, to, spots }) => [
    ...(to === name ? [spots[spots.length - 2]!] : []),
    ...(from === name ? [spots[1]!] : []),
  ]);
  const taken = neighbours.map((spot) => headingOf({ x, y }, spot));
  const first = taken[0];
  const on = first === undefined ? { x: 1, y: 0 } : { x: -first.x, y: -first.y };
  const tried = [on, { x: on.y, y: -on.x }, { x: -on.y, y: on.x }];
  return tried.find((way) => taken.every((other) => way.x * other.x + way.y * other.y < 0.9)) ?? on;
}

function fromMiddle({ runs }: AboveLayout, index: number): RunStart | undefined {
  const run = runs[index];
  if (run === undefined) return undefined;
  const [before, place, after] = [0.49, 0.5, 0.51].map((share) => spotAt(run.spots, share));
  const along = headingOf(before!, after!);
  return {
    from: { kind: "onRun", run: index, along: run.length / 2 },
    place: place!,
    heading: { x: along.y, y: -along.x },
  };
}

function headingOf(from: Ground, to: Ground): Ground {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return length === 0 ? { x: 1, y: 0 } : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

import type { Line } from "@headfall/hydraulics";
import { cutTo, isWithin } from "../cut-to.js";
import type { ProfileLayout } from "../profile-layout.js";
import type { ProfilePath } from "../profile-path.js";
import type { Spot } from "../profile-request.js";
import type { Selected } from "../selected.js";
import { placeInRun } from "./drop-handles.js";
import { jointsOn, stretchesOf } from "./path-stretches.js";
import { scalesOf } from "./side-scales.js";

/** What is drawn round the chosen part: a way along the pipe, rings, or a box. */
export type PartOutline =
  | { readonly kind: "way"; readonly spots: readonly Spot[] }
  | { readonly kind: "rings"; readonly spots: readonly Spot[] }
  | {
      readonly kind: "box";
      readonly left: number;
      readonly right: number;
      readonly top: number;
      readonly bottom: number;
    };

/** More drinkers than this are ringed together, by one way along them. */
const MOST_RINGS = 40;

/** The outline of a chosen part on the drawing; undefined when it is not on it, or nothing is chosen. */
export function partOutline(
  layout: ProfileLayout,
  line: Line,
  path: ProfilePath,
  selected: Selected | undefined,
): PartOutline | undefined {
  switch (selected?.kind) {
    case "source":
      return line.sources[path.source]?.index === selected.source ? vesselBox(layout) : undefined;
    case "run":
      return runWay(layout, line, path, selected.run);
    case "joint":
      return jointRing(layout, line, path, selected.joint);
    case "drinkers":
      return drinkerRings(layout, line, selected);
    case undefined:
      return undefined;
  }
}

const vesselBox = ({ vessel }: ProfileLayout): PartOutline => ({
  kind: "box",
  left: vessel.left - 4,
  right: vessel.right + 4,
  top: vessel.top - 4,
  bottom: Math.max(vessel.bottom, vessel.ground) + 4,
});

function runWay(layout: ProfileLayout, line: Line, path: ProfilePath, run: number): PartOutline | undefined {
  const stretch = stretchesOf(line, path).find((candidate) => line.runs[candidate.run]!.index === run);
  if (stretch === undefined) return undefined;
  const { x, y } = scalesOf(layout);
  const spots = path.points
    .map((point, i) => ({ x: x(path.along[i]!), y: y(line.points.height[point]!) }))
    .slice(stretch.first, stretch.last + 1);
  const drawn = cutTo(spots, [layout.plot.left, layout.plot.right]);
  return drawn.length === 0 ? undefined : { kind: "way", spots: drawn };
}

function jointRing(
  layout: ProfileLayout,
  line: Line,
  path: ProfilePath,
  name: string,
): PartOutline | undefined {
  const joints = jointsOn(line, stretchesOf(line, path));
  const i = path.points.findIndex((point) => joints.get(point) === name);
  if (i < 0) return undefined;
  const { x, y } = scalesOf(layout);
  const spot = { x: x(path.along[i]!), y: y(line.points.height[path.points[i]!]!) };
  return isWithin(spot, [layout.plot.left, layout.plot.right]) ? { kind: "rings", spots: [spot] } : undefined;
}

function drinkerRings(
  layout: ProfileLayout,
  { drinkers, runs }: Line,
  chosen: Selected & { kind: "drinkers" },
): PartOutline | undefined {
  const group = drinkers.groups.findIndex(
    ({ run }, index) =>
      runs[run]!.index === chosen.run && placeInRun(drinkers.groups, index) === chosen.group,
  );
  const first = drinkers.groups[group]?.first ?? 0;
  const spots = layout.drinkers.filter(
    ({ index }) =>
      drinkers.group[index] === group && (chosen.number === undefined || index - first === chosen.number),
  );
  if (spots.length === 0) return undefined;
  return { kind: spots.length > MOST_RINGS ? "way" : "rings", spots };
}

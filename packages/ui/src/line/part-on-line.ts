import type { Line } from "@headfall/hydraulics";
import type { Selected } from "../kernels/selected.js";

/**
 * The point of the line a part of the plan ends at: the way there is what the drawing from the side shows. The line may
 * be older than the choice; undefined when the part is not on it.
 */
export function chosenPoint(line: Line, part: Selected | undefined): number | undefined {
  switch (part?.kind) {
    case "source": {
      // The way from a source is worth more than the source alone: where it has drinkers, theirs is shown.
      const point = line.sources[part.source]?.point;
      return part.source > 0 ? point : undefined;
    }
    case "joint": {
      const point = line.points.id.indexOf(part.joint);
      return point < 0 ? undefined : point;
    }
    case "run":
      return line.runs[part.run]?.points.at(-1);
    case "drinkers": {
      const drinker = drinkerOf(line, part);
      return drinker === undefined ? line.runs[part.run]?.points.at(-1) : line.drinkers.point[drinker];
    }
    default:
      return undefined;
  }
}

/** The one drinker that is chosen, by index into the line's drinkers; undefined when none or a whole group is. */
export function drinkerOf(line: Line, part: Selected | undefined): number | undefined {
  if (part?.kind !== "drinkers" || part.number === undefined) return undefined;
  const group = line.drinkers.groups.filter(({ run }) => run === part.run)[part.group];
  if (group === undefined || part.number >= group.count) return undefined;
  return group.first + part.number;
}

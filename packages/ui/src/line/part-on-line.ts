import type { Line } from "@headfall/hydraulics";
import { type ProfilePath, pathTo, pathToDrinker } from "../kernels/profile-path.js";
import type { Selected } from "../kernels/selected.js";

/**
 * The way through the line that the drawing from the side shows: through the chosen part and on to drinkers, those of
 * the one looked at where they lie that way.
 *
 * @param lookedAt  the drinker looked at, by index into the line's drinkers; -1 when there is none
 */
export function pathFor(line: Line, part: Selected | undefined, lookedAt: number): ProfilePath | undefined {
  const usual = lookedAt < 0 ? undefined : pathToDrinker(line, lookedAt);
  const chosen = chosenPoint(line, part);
  if (chosen === undefined || usual?.points.includes(chosen)) {
    // A yard of loose waterers alone has no source.
    const [first] = line.sources;
    return usual ?? (first === undefined ? undefined : pathTo(line, first.point));
  }
  return pathBeyond(line, chosen) ?? pathTo(line, chosen) ?? usual;
}

/** Groups whose ways are tried, one after the other; of a larger yard the first ones. */
const MOST_TRIED = 50;

/** The way to the first drinkers that lie beyond a point. */
function pathBeyond(line: Line, point: number): ProfilePath | undefined {
  for (const { first, count } of line.drinkers.groups.slice(0, MOST_TRIED)) {
    const path = pathToDrinker(line, first + count - 1);
    if (path?.points.includes(point)) return path;
  }
  return undefined;
}

/** The point of the line a part ends at; the line may be older than the choice: undefined when it is not on it. */
function chosenPoint(line: Line, part: Selected | undefined): number | undefined {
  switch (part?.kind) {
    case "source":
      return line.sources[part.source]?.point;
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

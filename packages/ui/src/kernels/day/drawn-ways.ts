import type { Line, PenDay } from "@headfall/hydraulics";
import { type ProfilePath, pathToDrinker } from "../profile-path.js";
import type { DayIndex } from "./day-index.js";

/** One way through the line that is drawn from the side, named by the run it ends on. */
export interface DrawnWay {
  readonly name: string;
  readonly path: ProfilePath;
}

/** As few ways as show every drinker that a pipe leads to, the one with the most drinkers first. */
export function drawnWays(line: Line): readonly DrawnWay[] {
  const left = new Set(Array.from({ length: line.drinkers.count }, (_, drinker) => drinker));
  const ways: DrawnWay[] = [];
  // From the last on: those far out have the others on their way.
  for (let drinker = line.drinkers.count - 1; drinker >= 0; drinker -= 1) {
    if (!left.has(drinker)) continue;
    const path = pathToDrinker(line, drinker);
    left.delete(drinker);
    if (path === undefined) continue;
    for (const passed of path.drinkers) left.delete(passed);
    ways.push({ name: line.runs[line.drinkers.run[drinker]!]?.id ?? "", path });
  }
  return ways.sort((a, b) => b.path.drinkers.length - a.path.drinkers.length);
}

/** The way past most drinkers of the pen in which most birds drink at once; the first where there is none. */
export function wayOfBusiest(
  ways: readonly DrawnWay[],
  {
    index,
    result,
  }: {
    readonly index: Pick<DayIndex, "drinkersOfPen">;
    readonly result: { readonly pens: readonly PenDay[] };
  },
): number {
  const most = Math.max(...result.pens.map(({ mostAtOnce }) => mostAtOnce));
  const busiest = index.drinkersOfPen[result.pens.findIndex(({ mostAtOnce }) => mostAtOnce === most)] ?? [];
  const shown = ways.map(({ path }) => path.drinkers.filter((d) => busiest.includes(d)).length);
  return Math.max(0, shown.indexOf(Math.max(...shown)));
}

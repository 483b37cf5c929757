import type { VerdictName } from "@headfall/hydraulics";
import { isWorse } from "../verdict-marks.js";
import type { PlacedDrinker } from "./place-drinkers.js";
import type { Ground } from "./spot.js";
import { distanceOf } from "./ways.js";

/** One mark on a run: a drinker, or neighbours too close to be told apart, then with the worst of their verdicts. */
export interface GatheredMark {
  readonly run: number;
  readonly group: number;
  readonly at: Ground;
  readonly verdict: VerdictName | undefined;
  readonly drinkers: readonly PlacedDrinker[];
}

/** Gathers neighbours of one group that are closer than `room` [m] on the drawing. */
export function gatherMarks(drinkers: readonly PlacedDrinker[], room: number): readonly GatheredMark[] {
  const marks: GatheredMark[] = [];
  let together: PlacedDrinker[] = [];
  const close = () => {
    if (together.length > 0) marks.push(markOf(together));
  };
  for (const drinker of drinkers) {
    const first = together[0];
    const isNear =
      first !== undefined &&
      first.run === drinker.run &&
      first.group === drinker.group &&
      distanceOf(first.at, drinker.at) < room * (1 - 1e-9);
    if (isNear) together.push(drinker);
    else {
      close();
      together = [drinker];
    }
  }
  close();
  return marks;
}

function markOf(drinkers: readonly PlacedDrinker[]): GatheredMark {
  // At the first of them, so that marks keep their distance.
  const { run, group, at } = drinkers[0]!;
  const verdict = drinkers.reduce<VerdictName | undefined>(
    (worst, each) =>
      each.verdict !== undefined && (worst === undefined || isWorse(each.verdict, worst))
        ? each.verdict
        : worst,
    undefined,
  );
  return { run, group, at, verdict, drinkers };
}

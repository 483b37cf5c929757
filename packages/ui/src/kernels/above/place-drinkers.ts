import { type Checked, drinkerGroupsOf, type Plan, type VerdictName } from "@headfall/hydraulics";
import { drinkersAlong } from "./drinkers-along.js";
import { type AboveLayout, type AboveRun, spotAt } from "./lay-above.js";
import type { Ground } from "./spot.js";

/** A drinker on the drawing. */
export interface PlacedDrinker {
  readonly run: number;
  readonly group: number;
  /** Its number in the group, from 0. */
  readonly number: number;
  /** From the start of the run, along the pipe [m]. */
  readonly along: number;
  readonly at: Ground;
  /** Unknown while the check is older than the plan. */
  readonly verdict: VerdictName | undefined;
}

/**
 * Where each drinker is on its run, in the order of the plan, with the verdict on it as far as the check still speaks
 * of the same drinkers.
 */
export function placeDrinkers(
  plan: Plan,
  layout: AboveLayout,
  checked: Checked | undefined,
): readonly PlacedDrinker[] {
  const verdicts = verdictsOf(checked);
  return layout.runs.flatMap((run) =>
    drinkerGroupsOf(plan.runs[run.index]!).flatMap((drinkers, group) => {
      const places = drinkersAlong(drinkers, run.length);
      const known = verdicts.get(`${run.name} ${group}`);
      const isKnown = known?.length === places.length;
      return places.map((along, number) => ({
        run: run.index,
        group,
        number,
        along,
        at: placeAlong(run, along),
        verdict: isKnown ? known[number] : undefined,
      }));
    }),
  );
}

/** The place on the drawing of a distance along the pipe; a run not drawn to scale is stretched or squeezed. */
export function placeAlong({ spots, length }: AboveRun, along: number): Ground {
  return spotAt(spots, length > 0 ? along / length : 0);
}

/** Verdicts by the name of the run and the place of the group on it. */
function verdictsOf(checked: Checked | undefined): ReadonlyMap<string, readonly VerdictName[]> {
  const found = new Map<string, readonly VerdictName[]>();
  if (checked === undefined) return found;
  const groupsSeen = new Map<number, number>();
  for (const { run, first, count } of checked.line.drinkers.groups) {
    const group = groupsSeen.get(run) ?? 0;
    groupsSeen.set(run, group + 1);
    const name = checked.line.runs[run]?.id;
    const verdicts = checked.drinkers.slice(first, first + count).map(({ verdict }) => verdict);
    if (name !== undefined && verdicts.length === count) found.set(`${name} ${group}`, verdicts);
  }
  return found;
}

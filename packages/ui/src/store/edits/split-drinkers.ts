import { buildLine, buildMoments, DEFAULTS, type Plan, type PlanDrinkerGroup } from "@headfall/hydraulics";
import { drinkerNames } from "../../kernels/group-names.js";
import { metresOf } from "../../kernels/typed-metres.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import { placesOf, rowOf, withRow } from "../drinker-places.js";
import { tidyGroup } from "./part-keys.js";
import { freeName, groupsOf } from "./plan-parts.js";

/** Which drinkers of a group are at work in the busiest minutes and in an ordinary hour. */
interface AtWork {
  readonly busiest: readonly boolean[];
  readonly ordinary: readonly boolean[];
}

/** A drinker this little beyond the cut hangs at it [m]. */
const SAME_PLACE = 1e-6;

/** The groups of a run shared out between what lies before a cut and what lies beyond it. */
export function splitGroups(
  plan: Plan,
  index: number,
  { along, rest }: { readonly along: number; readonly rest: number },
  system: UnitSystem,
): { readonly before: readonly PlanDrinkerGroup[]; readonly beyond: readonly PlanDrinkerGroup[] } {
  const run = plan.runs[index]!;
  const length = metresOf(run.length);
  const groups = groupsOf(run);
  const names = new Set(drinkerNames(plan));
  const before: PlanDrinkerGroup[] = [];
  const beyond: PlanDrinkerGroup[] = [];
  groups.forEach((group, g) => {
    const places = placesOf(group, length);
    const row = rowOf(group, length);
    const here = places.filter((place) => place <= along + SAME_PLACE).length;
    const there = places.length - here;
    const isCut = here > 0 && there > 0;
    const isByBirds = plan.pens !== undefined;
    const [one, other] = isCut ? shared(group, atWorkOf(plan, index, g), here, isByBirds) : [group, group];
    if (here > 0) before.push(withRow(one, { ...row, count: here }, along, system));
    if (there === 0) return;
    const first = Math.max(0, Math.min(rest, places[here]! - along));
    const id = isCut && group.id !== undefined ? freeName(group.id, 2, names) : group.id;
    if (id !== undefined) names.add(id);
    const named = tidyGroup({ ...other, id });
    beyond.push(withRow(named, { ...row, count: there, first }, rest, system));
  });
  return { before, beyond };
}

/** A group told twice, each with the numbers at work in its own part; those that birds decide stay open. */
function shared(group: PlanDrinkerGroup, { busiest, ordinary }: AtWork, here: number, isByBirds: boolean) {
  const working = (flags: readonly boolean[]) => flags.filter(Boolean).length;
  const isOpen = (key: "busiest" | "ordinary") => isByBirds && group[key] === undefined;
  const part = (start: number, end?: number) => ({
    ...group,
    ...(isOpen("busiest") ? {} : { busiest: working(busiest.slice(start, end)) }),
    ...(isOpen("ordinary") ? {} : { ordinary: working(ordinary.slice(start, end)) }),
  });
  return [part(0, here), part(here)] as const;
}

/** Who is at work, by the library's own rule: the farthest at the busiest, evenly spread in an ordinary hour. */
export function atWorkOf(plan: Plan, run: number, group: number): AtWork {
  const building = buildLine(plan);
  if (!building.ok) return supposed(groupsOf(plan.runs[run])[group]!);
  const { named } = buildMoments(building.line);
  const found = building.line.drinkers.groups.filter((each) => each.run === run)[group]!;
  const flagsOf = (list: Uint8Array) =>
    Array.from(list.subarray(found.first, found.first + found.count), (flag) => flag === 1);
  return { busiest: flagsOf(named.fullBusiest.atWork), ordinary: flagsOf(named.ordinary.atWork) };
}

/** While the line cannot be built, the far end of the run is taken to be the far end of the line. */
function supposed(group: PlanDrinkerGroup): AtWork {
  const count = group.count ?? 1;
  const numberOf = (typed: number | string) =>
    typeof typed === "number" ? Math.min(typed, count) : Math.ceil((Number.parseFloat(typed) / 100) * count);
  const last = (typed: number | string) =>
    Array.from({ length: count }, (_, i) => i >= count - numberOf(typed));
  return {
    busiest: last(group.busiest ?? DEFAULTS.busiest.typed),
    ordinary: last(group.ordinary ?? DEFAULTS.ordinary.typed),
  };
}

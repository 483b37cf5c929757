import type { Plan } from "../../document/plan-schema.js";
import { type Flock, isThere, type Pen } from "../../model/flock.js";
import type { DrinkerGroup, Line } from "../../model/line.js";
import { type Crowd, crowdOf, type PenCrowd } from "../../simulate/crowd.js";
import { countByGroup, shareOrdinary } from "../../simulate/crowd-numbers.js";
import { placesOf } from "../../simulate/crowd-want.js";
import { needAtAge } from "./bird-needs.js";
import type { CrowdOrigin } from "./flock-report.js";
import { type StatedNumbers, statedNumbers } from "./stated-numbers.js";

/** A line with the numbers its birds give it. */
export interface MannedLine {
  readonly line: Line;
  readonly flock: Flock;
  /** Whose rules on drinkers count. */
  readonly region: NonNullable<Plan["region"]>;
  readonly crowd: Crowd;
  readonly stated: readonly StatedNumbers[];
  /** By group, where its numbers came from. */
  readonly origins: readonly {
    readonly pen: number | undefined;
    readonly busiest: CrowdOrigin;
    readonly ordinary: CrowdOrigin;
    readonly need: CrowdOrigin;
  }[];
  /** Paths of the defaults the birds took the place of. */
  readonly replaced: ReadonlySet<string>;
}

/**
 * Puts the birds of a plan to its line: each group that a pen reaches takes how many are at work, and the flow it
 * needs, from the birds, where the plan does not state them. Everything else stays as it is.
 */
export function manLine(plan: Plan, line: Line, flock: Flock): MannedLine {
  const stated = statedNumbers(plan);
  const fixed = new Set(stated.flatMap(({ busiest }, g) => (busiest ? [g] : [])));
  const crowd = crowdOf(line, flock, fixed);
  const penOf = line.drinkers.groups.map(({ first }) =>
    crowd.pens.find(({ pen }) => pen.drinkers.includes(first)),
  );
  const busiest = countByGroup(line, crowd.atWork);
  const ordinary = line.drinkers.groups.map((group) => group.ordinary);
  for (const pen of crowd.pens) shareOrdinary(line, pen, ordinary);
  const originOf = (g: number, isStated: boolean): CrowdOrigin =>
    isStated ? "typed" : penOf[g] === undefined ? "default" : "birds";
  const needFrom = (g: number): CrowdOrigin =>
    !stated[g].need && penOf[g]?.want.birds === 0 ? "default" : originOf(g, stated[g].need);
  const origins = stated.map((one, g) => ({
    pen: penOf[g]?.pen.index,
    busiest: originOf(g, one.busiest),
    ordinary: originOf(g, one.ordinary),
    need: needFrom(g),
  }));
  const groups = line.drinkers.groups.map((group, g): DrinkerGroup => {
    const pen = penOf[g];
    return {
      ...group,
      busiest: origins[g].busiest === "birds" ? busiest[g] : group.busiest,
      ordinary: origins[g].ordinary === "birds" ? ordinary[g] : group.ordinary,
      need: pen !== undefined && origins[g].need === "birds" ? needOfGroup(group, pen) : group.need,
    };
  });
  return {
    line: { ...line, drinkers: { ...line.drinkers, groups, need: needOfEach(line, groups) } },
    flock,
    region: plan.region ?? "EU",
    crowd,
    stated,
    origins,
    replaced: new Set(
      origins.flatMap((origin, g) => [
        ...(origin.busiest === "birds" ? [`${stated[g].path}.busiest`] : []),
        ...(origin.ordinary === "birds" ? [`${stated[g].path}.ordinary`] : []),
      ]),
    ),
  };
}

function needOfEach({ drinkers }: Line, groups: readonly DrinkerGroup[]): Float64Array {
  return drinkers.need.map((_, d) => groups[drinkers.group[d]].need);
}

/** What a worked drinker should give the birds of its pen: that of one bird, at open water that of all that meet there. */
function needOfGroup(group: DrinkerGroup, { pen, load, giving }: PenCrowd): number {
  const together = giving.length === 0 ? 1 : Math.max(1, Math.ceil(load.atOnce / giving.length - 1e-9));
  return Math.min(placesOf(group), together) * needOfBirds(pen);
}

/** The greatest need of the batches that are there [m3/s]. */
export function needOfBirds(pen: Pen): number {
  return pen.batches
    .filter(isThere)
    .reduce((most, { kind, ageDays }) => Math.max(most, needAtAge(kind, ageDays)), 0);
}

import { DEFAULTS } from "../../document/defaults.js";
import type { Plan } from "../../document/plan-schema.js";
import { runEnds, sourceNames } from "../../document/run-ends.js";
import { buildLine } from "../../model/build-line.js";
import { NO_COST } from "../cost.js";
import { STAND_MOST } from "../cure-options.js";
import { typedLength } from "../cure-space.js";
import { type Ailing, freshName, type Remedy, withJointAt } from "./remedy.js";

/** At most so many places are tried. */
const MOST_PLACES = 4;
/** Pipe beyond the height of the stand that leads down to the joint [m]; common practice, no source. */
const BESIDES = 0.5;

/**
 * The source put at another joint of its line, the higher ground first. The run that led from it has no drinkers and
 * goes; a piece of it leads down to the joint instead. All other pipe stays where it lies.
 */
export function moveSource(ailing: Ailing): Remedy[] {
  const { plan, line } = ailing;
  if (plan.sources.length !== 1) return [];
  const [source] = sourceNames(plan);
  const ends = runEnds(plan);
  const leads = ends.flatMap(({ from }, r) => (from === source ? [r] : []));
  const [lead] = leads;
  if (leads.length !== 1 || plan.runs.length < 2 || plan.runs[lead].drinkers !== undefined) return [];
  const joints = [...new Set(ends.map(({ to }) => to))]
    .map((name) => ({ name, ...placeOfJoint(ailing, name) }))
    .sort((a, b) => b.ground - a.ground || b.height - a.height)
    .slice(0, MOST_PLACES);
  return joints.flatMap(({ name, ground }): Remedy[] => {
    const changed = movedTo(ailing, { source, lead, joint: name, ground });
    if (line.runs[lead].length < STAND_MOST || !buildLine(changed).ok) return [];
    return [
      {
        kind: "moveSource",
        plan: changed,
        changes: [{ code: "moveSource", source, to: name }],
        spent: { ...NO_COST, runs: 1 },
      },
    ];
  });
}

function placeOfJoint(
  { plan, line }: Ailing,
  name: string,
): { readonly height: number; readonly ground: number } {
  const run = runEnds(plan).findIndex(({ to }) => to === name);
  const { points } = line.runs[run];
  const point = points[points.length - 1];
  return { height: line.points.height[point], ground: line.points.ground[point] };
}

function movedTo(
  ailing: Ailing,
  to: { readonly source: string; readonly lead: number; readonly joint: string; readonly ground: number },
): Plan {
  const { plan, system } = ailing;
  const ends = runEnds(plan);
  const told = [...new Set(ends.map((end) => end.to))].reduce(
    (so, name) => withJointAt(so, { name, ...placeOfJoint(ailing, name) }, system),
    plan,
  );
  const kept = told.runs.flatMap((run, r) => {
    if (r === to.lead) return [];
    const { fall: _, ...rest } = run;
    return [{ ...rest, ...ends[r] }];
  });
  const down = {
    id: freshName(plan, "down pipe"),
    from: to.source,
    to: to.joint,
    length: typedLength(STAND_MOST + BESIDES, system),
    pipe: plan.runs[to.lead].pipe ?? DEFAULTS.pipe.typed,
  };
  const [source] = told.sources;
  return {
    ...told,
    sources: [{ ...source, ground: typedLength(to.ground, system) }],
    runs: [down, ...kept],
  };
}

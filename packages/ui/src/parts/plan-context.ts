import {
  type Checked,
  runEnds as endsOfRuns,
  type Line,
  runNames as namesOfRuns,
  sourceNames as namesOfSources,
  type Plan,
} from "@headfall/hydraulics";
import { layAbove } from "../kernels/above/lay-above.js";
import { metresOf } from "../kernels/typed-metres.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** A plan, what was found out about it (perhaps about an older one), and the units it is shown in. */
export interface PlanContext {
  readonly plan: Plan;
  readonly checked: Checked | undefined;
  readonly system: UnitSystem;
}

/** The source as it was last worked out; undefined while that was another plan. */
export function workedOutSource(
  { plan, checked }: PlanContext,
  index: number,
): Line["sources"][number] | undefined {
  const source = checked?.line.sources[index];
  return source?.id === sourceNames(plan)[index] ? source : undefined;
}

/** Length of a run [m]; 0 when it cannot be read. */
export const lengthOfRun = (plan: Plan, run: number): number => metresOf(plan.runs[run]?.length);

/** The plan in hand, and the one that was checked last while that is still an older one. */
const MOST_KNOWN = 2;

/**
 * What is found out of the plans asked about last is kept: a table asks for it once for each of its cells. Not for as
 * long as a plan lives: undo holds a thousand of them.
 */
function onceAPlan<Answer>(find: (plan: Plan) => Answer): (plan: Plan) => Answer {
  let known: readonly { readonly plan: Plan; readonly answer: Answer }[] = [];
  return (plan) => {
    const found = known.find((one) => one.plan === plan) ?? { plan, answer: find(plan) };
    if (found !== known[0]) known = [found, ...known.filter((one) => one !== found)].slice(0, MOST_KNOWN);
    return found.answer;
  };
}

export const runNames = onceAPlan(namesOfRuns);
export const sourceNames = onceAPlan(namesOfSources);
export const runEnds = onceAPlan(endsOfRuns);
/** The plan from above. */
export const layoutOf = onceAPlan(layAbove);
/** Places where runs meet or end, and points that no run has come to yet; sources are not among them. */
export const jointNames = onceAPlan((plan): readonly string[] => [
  ...new Set([
    ...layoutOf(plan)
      .joints.filter(({ source }) => source < 0)
      .map(({ name }) => name),
    ...(plan.points ?? []).map(({ id }) => id),
  ]),
]);

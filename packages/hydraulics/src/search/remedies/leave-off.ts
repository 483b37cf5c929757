import { drinkerGroupsOf } from "../../document/plan-lists.js";
import type { Plan, PlanDrinkerGroup } from "../../document/plan-schema.js";
import { drinkersOfPens } from "../../judge/birds/drinkers-for-plan.js";
import { manLine } from "../../judge/birds/man-line.js";
import { statedNumbers } from "../../judge/birds/stated-numbers.js";
import { buildLine } from "../../model/build-line.js";
import type { Line } from "../../model/line.js";
import { deviceOf } from "../../simulate/crowd-want.js";
import type { Change } from "../cure-answer.js";
import { judgeScene, type Requirement, requirementFor, type Scene } from "../requirement.js";
import { type Ailing, bought, type Remedy } from "./remedy.js";
import { type TypedPlaces, typedPlaces } from "./typed-places.js";

/** Groups that fail are tried, so many of them. */
const MOST_GROUPS = 3;

/**
 * Drinkers left off at the end of a group where they fail, as few as do, each with a plug in its place. Only where the
 * number at work comes from the birds of a pen, who then meet at those that stay, and where these are still enough by
 * every rule, by advice, in reach, and for the crowd.
 */
export function leaveOff(ailing: Ailing): Remedy[] {
  const { plan, line, judged } = ailing;
  const stated = statedNumbers(plan);
  const failing = line.drinkers.groups.flatMap(({ count }, g) =>
    count > 1 &&
    !stated[g].busiest &&
    judged.drinkers.some(({ verdict }, d) => verdict !== "good" && line.drinkers.group[d] === g)
      ? [g]
      : [],
  );
  return failing.slice(0, MOST_GROUPS).flatMap((g) => fewestOff(ailing, g) ?? []);
}

/** With as few left off as do by themselves; undefined where no number does that leaves enough. */
function fewestOff(ailing: Ailing, g: number): Remedy | undefined {
  const { plan, line, requirement, scene } = ailing;
  const { count } = line.drinkers.groups[g];
  const end = failingEnd(ailing, g);
  const at = requirement.scenes.indexOf(scene);
  for (let off = 1; off < count; off += 1) {
    const fewer = withFewer(ailing, g, { off, end });
    const built = buildLine(fewer);
    if (!built.ok) return undefined;
    const own = requirementFor(requirement, fewer, built.line);
    const left = placesLeft(own, built.line, g, own.scenes[at]);
    if (left === undefined || !left.isEnough) return undefined;
    if (!judgeScene(own, built.line, own.scenes[at]).meets) continue;
    if (!own.scenes.every((one) => placesLeft(own, built.line, g, one)?.isEnough)) return undefined;
    if (!own.scenes.every((one) => judgeScene(own, built.line, one).meets)) continue;
    const { id } = line.drinkers.groups[g];
    const { pen, birds, has, needed } = left;
    const change: Change = { code: "leaveOff", group: id, off, of: count, end, pen, birds, has, needed };
    return { kind: "fewerDrinkers", plan: fewer, changes: [change], spent: bought(off, plan.prices?.plug) };
  }
  return undefined;
}

/** What the birds of the pen that reaches a group then have; undefined where none does. */
function placesLeft({ plan }: Requirement, line: Line, g: number, { flock }: Scene) {
  const manned = manLine(plan, line, flock);
  const { first } = line.drinkers.groups[g];
  const index = manned.crowd.pens.findIndex(({ pen }) => pen.drinkers.includes(first));
  if (index < 0) return undefined;
  const { pen, devices, covered } = drinkersOfPens(manned)[index];
  const device = devices.find((one) => one.device === deviceOf(line.drinkers.groups[g]));
  if (device === undefined) return undefined;
  const { birds, has, needed } = device;
  return { pen, birds, has, needed, isEnough: covered >= 1 - 1e-9 };
}

/** At which end of its run those that fail lie, on the whole. */
function failingEnd({ line, judged }: Ailing, g: number): "near" | "far" {
  const { first, count } = line.drinkers.groups[g];
  const middle = first + (count - 1) / 2;
  let beyond = 0;
  for (let d = first; d < first + count; d += 1)
    if (judged.drinkers[d].verdict !== "good") beyond += d - middle;
  return beyond < 0 ? "near" : "far";
}

/** The plan with drinkers of one group gone, the others where they hang. */
function withFewer(
  { plan, line, system }: Ailing,
  g: number,
  { off, end }: { readonly off: number; readonly end: "near" | "far" },
): Plan {
  const { first, count } = line.drinkers.groups[g];
  const from = end === "near" ? first + off : first;
  const left = count - off;
  const along = Array.from({ length: left }, (_, k) => line.drinkers.along[from + k]);
  const runEnd = line.runs[line.drinkers.run[first]].length;
  const fewer = (group: PlanDrinkerGroup): PlanDrinkerGroup => {
    const { every, ordinary, ...kept } = group;
    const told: TypedPlaces = {
      ...(end === "far" && group.first !== undefined ? { first: group.first } : {}),
      ...(every === undefined ? {} : { every }),
    };
    const most = typeof ordinary === "number" ? Math.min(ordinary, left) : ordinary;
    return {
      ...kept,
      count: left,
      ...typedPlaces({ along, end: runEnd, kept: told }, system),
      ...(most === undefined ? {} : { ordinary: most }),
    };
  };
  let next = 0;
  return {
    ...plan,
    runs: plan.runs.map((run) => {
      if (run.drinkers === undefined) return run;
      const groups = drinkerGroupsOf(run).map((group) => (next++ === g ? fewer(group) : group));
      return { ...run, drinkers: Array.isArray(run.drinkers) ? groups : groups[0] };
    }),
  };
}

import { DEFAULTS } from "../document/defaults.js";
import { drinkerGroupsOf } from "../document/plan-lists.js";
import { readShare } from "../document/read-share.js";
import { behaviourOf, type DrinkerBehaviour } from "./drinker-kind.js";
import type { Laying } from "./laying.js";
import type { TypedValues } from "./typed-values.js";

/** Hangs the drinkers of one run at its stations, group by group. */
export function hangDrinkers(
  laying: Laying,
  index: number,
  places: readonly (readonly number[])[],
  runPoints: readonly number[],
  along: readonly number[],
): void {
  const { plan, joints, points, drinkers, groups, values } = laying;
  drinkerGroupsOf(plan.runs[index]).forEach((group, g) => {
    const list = drinkerGroupsOf(plan.runs[index]);
    const path = Array.isArray(plan.runs[index].drinkers)
      ? `runs[${index}].drinkers[${g}]`
      : `runs[${index}].drinkers`;
    const kind = behaviourOf(plan, group.kind, values);
    const id =
      group.id ?? (list.length === 1 ? joints.runId[index] : `${joints.runId[index]} group ${g + 1}`);
    const need = group.need === undefined ? kind.need : values.si(group.need, "flow");
    const drop = values.siOr(group.drop, "length", "drop", `${path}.drop`);
    const count = places[g].length;
    if (kind.isOpenWater) laying.openWater.push(id);
    groups.push({
      ...groupOf(kind),
      id,
      run: index,
      first: drinkers.length,
      count,
      need,
      busiest: atWork(group.busiest, count, "busiest", `${path}.busiest`, values),
      ordinary: atWork(group.ordinary, count, "ordinary", `${path}.ordinary`, values),
    });
    places[g].forEach((place, k) => {
      const at = nearestIndex(along, place);
      const pipeHeight = points.heightOf(runPoints[at]);
      drinkers.push({
        id: count === 1 ? id : `${id} ${k + 1}`,
        group: groups.length - 1,
        run: index,
        point: runPoints[at],
        along: place,
        height: pipeHeight - drop,
        coefficient: kind.law.coefficient,
        exponent: kind.law.exponent,
        openingHead: kind.law.openingHead,
        need,
      });
    });
  });
}

function groupOf(kind: DrinkerBehaviour) {
  const { kindId, kindName, workedBy, sealsFrom, holdsUpTo, flowLow, flowHigh } = kind;
  return { kindId, kindName, workedBy, sealsFrom, holdsUpTo, flowLow, flowHigh };
}

/** A count, or a share rounded up, so that a group with drinkers has at least one at work unless it says none. */
function atWork(
  typed: number | string | undefined,
  count: number,
  name: "busiest" | "ordinary",
  path: string,
  values: TypedValues,
): number {
  if (typed === undefined) values.note(name, path);
  const given = typed ?? DEFAULTS[name].typed;
  if (typeof given === "number") return Math.min(given, count);
  return Math.min(count, Math.max(0, Math.ceil((readShare(given) ?? 1) * count - 1e-9)));
}

function nearestIndex(along: readonly number[], place: number): number {
  let low = 0;
  let high = along.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (along[middle] <= place) low = middle;
    else high = middle;
  }
  return place - along[low] <= along[high] - place ? low : high;
}

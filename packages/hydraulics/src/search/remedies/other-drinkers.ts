import { batchesOf, drinkerGroupsOf } from "../../document/plan-lists.js";
import type { Plan, PlanDrinkerGroup } from "../../document/plan-schema.js";
import type { DrinkerGroup } from "../../model/line.js";
import { isOpen, placesOf } from "../../simulate/crowd-want.js";
import { allDrinkers, drinkerById } from "../../tables/drinkers.js";
import { addCosts, NO_COST } from "../cost.js";
import type { Change } from "../cure-answer.js";
import { type Ailing, bought, type Remedy } from "./remedy.js";

/** Another kind of drinker in the groups that fail: in all of them the same, and in each alone. */
export function changeDrinkers({ plan, line, judged }: Ailing): Remedy[] {
  const failing = line.drinkers.groups.flatMap((_, g) =>
    judged.drinkers.some(({ verdict }, d) => verdict !== "good" && line.drinkers.group[d] === g) ? [g] : [],
  );
  const sets = failing.length > 1 ? [failing, ...failing.slice(0, 4).map((g) => [g])] : [failing];
  return kindsOf(plan).flatMap((kind) =>
    sets.flatMap((set): Remedy[] => {
      const changed = set.filter((g) => maySwap(plan, line.drinkers.groups[g], kind));
      if (changed.length === 0 || changed.length < set.length) return [];
      const changes = changed.map((g): Change => {
        const { id, count, kindId } = line.drinkers.groups[g];
        return { code: "drinkers", group: id, count, from: kindId, to: kind };
      });
      const spent = changed.reduce(
        (sum, g) => addCosts(sum, bought(line.drinkers.groups[g].count, plan.prices?.drinker)),
        NO_COST,
      );
      return [{ kind: "drinkers", plan: withKind(plan, new Set(changed), kind), changes, spent }];
    }),
  );
}

/** The kinds of the table, and those the user measured. */
const kindsOf = (plan: Plan): string[] => [
  ...allDrinkers.map(({ id }) => id),
  ...Object.keys(plan.ownDrinkers ?? {}),
];

/** Below this age [days] birds count as chicks: what does not say it suits them is not proposed. */
const CHICKS_UNTIL = 28;

/**
 * Whether a kind may stand in for another: it suits some of the birds that the other suits, and chicks where chicks
 * drink, lets as many drink at once, and sets no open water where there was none (chicks and quail drown in it). A kind of the user's own is taken to suit.
 */
function maySwap(plan: Plan, group: DrinkerGroup, kind: string): boolean {
  if (kind === group.kindId) return false;
  const [present, other] = [drinkerById(group.kindId), drinkerById(kind)];
  const swapped = { ...group, kindId: kind };
  if (placesOf(swapped) < placesOf(group) || (isOpen(swapped) && !isOpen(group))) return false;
  if (other === undefined || present === undefined) return true;
  if (hasChicks(plan) && !other.birds.includes("chicks")) return false;
  const suits = (birds: string) => birds.split("; ").map((words) => words.replace(/ from .*/, ""));
  const those = new Set(suits(present.birds));
  return suits(other.birds).some((birds) => those.has(birds));
}

const hasChicks = (plan: Plan): boolean =>
  (plan.pens ?? []).some((pen) =>
    batchesOf(pen).some(({ age, hatched }) => {
      const days = age === undefined ? undefined : /^\s*([\d.]+)\s*(day|d\b|week|w\b)/i.exec(age);
      if (days === undefined || days === null) return hatched !== undefined;
      return Number(days[1]) * (/^w/i.test(days[2]) ? 7 : 1) < CHICKS_UNTIL;
    }),
  );

/** The plan with another kind in some of its groups, by position over all runs. */
function withKind(plan: Plan, groups: ReadonlySet<number>, kind: string): Plan {
  let next = 0;
  const change = (group: PlanDrinkerGroup) => (groups.has(next++) ? { ...group, kind } : group);
  return {
    ...plan,
    runs: plan.runs.map((run) => {
      if (run.drinkers === undefined) return run;
      const changed = drinkerGroupsOf(run).map(change);
      return { ...run, drinkers: Array.isArray(run.drinkers) ? changed : changed[0] };
    }),
  };
}

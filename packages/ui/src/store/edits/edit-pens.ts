import { batchesOf, type Plan, type PlanBirds, type PlanPen } from "@headfall/hydraulics";
import { groupsReached, namedGroups } from "../../kernels/group-names.js";
import { namesOfPens } from "../../kernels/pen-names.js";
import type { Edited, PlanChange } from "../plan-change.js";
import { tidyPen, tidyPlan } from "./part-keys.js";
import { freeName, GONE, refuse } from "./plan-parts.js";

/** What a new pen or batch holds until it is told otherwise: a few grown hens. */
const FEW_HENS: PlanBirds = { kind: "hen", count: 6 };

/**
 * One more pen. Where one reaches all the drinkers that no other names, it is told so by name first: its last group is
 * the new pen's if it has several, else the new one has none yet.
 */
export function addPen(plan: Plan): Edited {
  const pens = plan.pens ?? [];
  const reached = groupsReached(plan).map((groups) => [...new Set(groups.map(({ name }) => name))]);
  const open = pens.findIndex(({ drinkers }) => drinkers === undefined);
  const shared = open < 0 ? [] : reached[open]!;
  const given = shared.length > 1 ? shared.slice(-1) : undefined;
  const kept = given === undefined ? shared : shared.slice(0, -1);
  const id = freeName("pen", pens.length + 1, new Set(namesOfPens(plan)));
  const told = pens.map((pen, p) =>
    p === open && kept.length > 0 ? tidyPen({ ...pen, drinkers: kept }) : pen,
  );
  if (open >= 0 && kept.length === 0)
    return refuse("One pen has no drinkers yet: put drinkers on the line first, or delete that pen.");
  const isClosed = given !== undefined;
  const added = tidyPen({ id, birds: FEW_HENS, drinkers: isClosed ? given : undefined });
  return { ok: true, plan: withPens(plan, [...told, added]), words: `${id} added` };
}

export function deletePen(plan: Plan, pen: number): Edited {
  const name = namesOfPens(plan)[pen];
  if (name === undefined) return refuse(GONE);
  // Pens behind it keep the names they had by their number.
  const names = namesOfPens(plan);
  const left = plan.pens!.flatMap((each, p) => {
    if (p === pen) return [];
    const named = each.id === undefined && p > pen ? tidyPen({ ...each, id: names[p]! }) : each;
    return [withoutMovesTo(named, name)];
  });
  return { ok: true, plan: withPens(plan, left), words: `${name} deleted` };
}

/** Birds that would have moved into a pen that is gone stay where they are then. */
function withoutMovesTo(pen: PlanPen, gone: string): PlanPen {
  if (!batchesOf(pen).some(({ moves }) => moves?.some(({ to }) => to === gone))) return pen;
  const birds = batchesOf(pen).map((batch): PlanBirds => {
    const { moves = [], ...rest } = batch;
    const first = moves.findIndex(({ to }) => to === gone);
    if (first < 0) return batch;
    return first === 0 ? rest : { ...rest, moves: moves.slice(0, first) };
  });
  return tidyPen({ ...pen, birds: Array.isArray(pen.birds) ? birds : birds[0]! });
}

export function addBirds(plan: Plan, pen: number): Edited {
  const into = plan.pens?.[pen];
  if (into === undefined) return refuse(GONE);
  const birds = [...batchesOf(into), FEW_HENS];
  return {
    ok: true,
    plan: withPen(plan, pen, { ...into, birds }),
    words: `birds added to ${namesOfPens(plan)[pen]}`,
  };
}

export function deleteBirds(plan: Plan, pen: number, batch: number): Edited {
  const of = plan.pens?.[pen];
  if (of === undefined || batchesOf(of)[batch] === undefined) return refuse(GONE);
  const left = batchesOf(of).filter((_, k) => k !== batch);
  if (left.length === 0) return deletePen(plan, pen);
  const birds = left.length === 1 ? left[0]! : left;
  return {
    ok: true,
    plan: withPen(plan, pen, { ...of, birds }),
    words: `birds of ${namesOfPens(plan)[pen]} deleted`,
  };
}

/** A group goes from the pen that had it to another; the last one of a pen is not taken without something in its place. */
export function reachDrinkers(
  plan: Plan,
  { pen, drinkers: name, reaches }: Extract<PlanChange, { kind: "reachDrinkers" }>,
): Edited {
  const pens = plan.pens ?? [];
  if (pens[pen] === undefined || !namedGroups(plan).some((group) => group.name === name)) return refuse(GONE);
  const reached = groupsReached(plan);
  const told = pens.map((each, p): PlanPen | undefined => {
    const names = [...new Set(reached[p]!.map((group) => group.name))];
    const has = names.includes(name);
    if (has === (p === pen && reaches)) return each;
    // A pen that reaches all that is left has this too, as soon as no other names it.
    if (!has && each.drinkers === undefined) return each;
    const list = has ? names.filter((one) => one !== name) : [...names, name];
    // Birds with loose waterers may do without the line.
    const mayBeNone = (each.waterers ?? []).length > 0;
    return list.length === 0 && !mayBeNone ? undefined : tidyPen({ ...each, drinkers: list });
  });
  const dry = told.indexOf(undefined);
  if (dry >= 0)
    return refuse(
      `${namesOfPens(plan)[dry]} would have no drinkers left. Give it others first, or delete the pen.`,
    );
  const verb = reaches ? "given to" : "taken from";
  return {
    ok: true,
    plan: withPens(plan, told as PlanPen[]),
    words: `${name} ${verb} ${namesOfPens(plan)[pen]}`,
  };
}

function withPen(plan: Plan, index: number, pen: PlanPen): Plan {
  return withPens(
    plan,
    plan.pens!.map((each, p) => (p === index ? tidyPen(pen) : each)),
  );
}

export const withPens = (plan: Plan, pens: readonly PlanPen[]): Plan =>
  tidyPlan({ ...plan, pens: pens.length === 0 ? undefined : [...pens] });

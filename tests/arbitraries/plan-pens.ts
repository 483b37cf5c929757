import { batchesOf, type Plan, type PlanBirds, type PlanPen } from "@headfall/hydraulics";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { allBirds } from "../../packages/hydraulics/src/tables/birds.js";
import { dayNumber, writeDay } from "../../packages/hydraulics/src/units/day.js";
import { namedGroups } from "../../packages/ui/src/kernels/group-names.js";
import { type Chooser, chooserOf } from "./typed.js";

/** The day on which plans with pens are asked about, 2026-07-04; birds hatched before it, or somewhat after. */
export const DAY_OF_PENS = dayNumber(2026, 7, 4);

/** The plan with pens at its drinkers, by number: each group is one pen's, by its own name or by that of its run. */
export function withRandomPens(plan: Plan, seed: number): Plan {
  const choose = chooserOf(randomFrom(seed));
  const byRun = new Map<number, string[]>();
  for (const { run, name } of namedGroups(plan)) byRun.set(run, [...(byRun.get(run) ?? []), name]);
  const names = new Set(namedGroups(plan).map(({ name }) => name));
  const lists = Array.from({ length: choose.whole(1, 3) }, (): string[] => []);
  const whose = new Map<string, number>();
  for (const [run, groups] of byRun) {
    const runName = namedGroups(plan).find((group) => group.run === run)!.runName;
    // Names that mean drinkers in several places go to one pen, so that no two pens share any.
    const isShared = groups.some((name) => whose.has(name)) || whose.has(runName) || names.size < byRun.size;
    const pen = isShared ? 0 : choose.whole(0, lists.length - 1);
    for (const name of [runName, ...groups]) whose.set(name, pen);
    lists[pen]!.push(...(choose.chance(0.5) ? [runName] : groups));
  }
  const pens = lists.flatMap((drinkers, p): PlanPen[] =>
    drinkers.length === 0
      ? []
      : [{ id: `pen ${p + 1}`, birds: birds(choose), drinkers: [...new Set(drinkers)] }],
  );
  if (pens.length > 0 && choose.chance(0.3)) {
    const { drinkers, ...open } = pens.at(-1)!;
    pens[pens.length - 1] = open;
  }
  if (pens.length === 0) return plan;
  const staying = withStays(pens, choose);
  return { ...plan, ...dayFor(staying, choose), pens: staying };
}

/** Where birds hatch, come, move or leave on a known day, a day is needed; any plan may name one. */
function dayFor(pens: readonly PlanPen[], choose: Chooser): { day?: string } {
  const dated = pens.some((pen) =>
    batchesOf(pen).some(
      ({ hatched, arrives, leaves, moves }) => (hatched ?? arrives ?? leaves ?? moves) !== undefined,
    ),
  );
  return dated || choose.chance(0.3) ? { day: writeDay(DAY_OF_PENS) } : {};
}

function birds(choose: Chooser): PlanPen["birds"] {
  const batch = () => ({
    kind: choose.oneOf(allBirds).id,
    count: choose.whole(1, 60),
    ...ageOf(choose),
    ...(choose.chance(0.3) ? { lay: choose.share(choose.uniform(0, 1)) } : {}),
  });
  return choose.chance(0.6) ? batch() : Array.from({ length: choose.whole(1, 3) }, batch);
}

/**
 * Now and then birds come, move to another pen, or leave on a date; around the day on which plans are asked about.
 */
function withStays(pens: readonly PlanPen[], choose: Chooser): PlanPen[] {
  const names = pens.map(({ id }, p) => id ?? `pen ${p + 1}`);
  const day = (from: number, to: number) => writeDay(DAY_OF_PENS + choose.whole(from, to));
  return pens.map((pen, p) => {
    const others = names.filter((_, other) => other !== p);
    const stays = (birds: PlanBirds): PlanBirds => ({
      ...birds,
      ...(choose.chance(0.15) ? { arrives: day(21, 60) } : {}),
      ...(others.length > 0 && choose.chance(0.15)
        ? { moves: [{ on: day(61, 120), to: choose.oneOf(others) }] }
        : {}),
      ...(choose.chance(0.15) ? { leaves: day(121, 300) } : {}),
    });
    const { birds } = pen;
    return { ...pen, birds: Array.isArray(birds) ? birds.map(stays) : stays(birds) };
  });
}

/** An age, or the day they hatched: now and then one that is still to come. */
function ageOf(choose: Chooser): { age?: string; hatched?: string } {
  if (choose.chance(0.4)) return { age: `${choose.whole(0, 60)} weeks` };
  return choose.chance(0.4) ? { hatched: writeDay(DAY_OF_PENS + choose.whole(-400, 20)) } : {};
}

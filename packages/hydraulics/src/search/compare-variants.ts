import { type PlanDifference, planDifferences } from "../document/plan-differences.js";
import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { checkPlan } from "../judge/check-plan.js";
import type { Checked, DrinkerVerdict, VerdictName } from "../judge/check-result.js";
import { howLongItLasts, type Lasting } from "../judge/time/lasting.js";
import { shelfOf } from "./cure-space.js";

/** Plans that are compared at most at once: more do not stand beside each other. */
export const MOST_VARIANTS = 12;

/** What one variant comes to, all SI; figures that it has none of are undefined. */
export interface VariantFigures {
  readonly verdict: VerdictName;
  readonly drinkers: number;
  readonly counts: Readonly<Record<VerdictName, number>>;
  /** Drinkers whose verdict holds whatever the measurements leave open; undefined when that was not tried. */
  readonly sure: number | undefined;
  /** The drinker with least head to spare, and that head, negative when short [m]. */
  readonly worst: { readonly drinker: string; readonly margin: number } | undefined;
  /** Least flow of a drinker at the lowest usable level and busiest, by the lower of the two friction laws [m³/s]. */
  readonly leastFlow: number | undefined;
  /** Greatest head with nobody drinking at the full level [m]. */
  readonly idleHead: number | undefined;
  /** Highest stand [m], and greatest mass on one [kg]. */
  readonly stand: number;
  readonly mass: number;
  /** Water that can be drawn of all sources [m³]. */
  readonly usable: number;
  /** Pipe in the line [m], water standing in it [m³], and its price in the plan's own money where all has one. */
  readonly pipe: number;
  readonly standing: number;
  readonly price: number | undefined;
  /** Drawn on the first day, to size on [m³]; undefined where nobody drinks. */
  readonly draw: number | undefined;
  /** To the first drinker that is dry, to size on and in the heat [s]; undefined where it does not come to it. */
  readonly lasts: number | undefined;
  readonly lastsHot: number | undefined;
}

/** One of the plans compared: its figures, and where it differs from the first. */
export interface Variant {
  readonly name: string;
  readonly money: string | undefined;
  readonly figures: VariantFigures;
  /** What the plan says differently from the first. */
  readonly differences: readonly PlanDifference[];
}

/** Plans side by side, or what in one of them contradicts itself, and which one. */
export type ComparingVariants =
  | { readonly ok: true; readonly variants: readonly Variant[] }
  /** `variant`: which of the plans it is that contradicts itself. */
  | { readonly ok: false; readonly variant: number; readonly problems: readonly Problem[] };

/**
 * What two or more plans come to, side by side: each is checked, and followed until its water is gone.
 *
 * @param plans    from `readPlan` or `checkDocument`, at most `MOST_VARIANTS`; the first is the one others differ from
 * @param options  `samples`: plans tried for sure or close, 0 for none (200); `day`: the day asked about
 * @returns the variants in the same order, or the first plan that contradicts itself
 * @throws RangeError when there are no plans, or too many
 * @example compareVariants([small, { ...small, name: "warm", water: "20 degC" }], { samples: 0 }).variants[1].name   // "warm"
 */
export function compareVariants(
  plans: readonly Plan[],
  options: { readonly samples?: number; readonly day?: string | undefined } = {},
): ComparingVariants {
  if (plans.length === 0 || plans.length > MOST_VARIANTS)
    throw new RangeError(`compareVariants: 1 to ${MOST_VARIANTS} plans, not ${plans.length}`);
  const variants: Variant[] = [];
  for (const [variant, plan] of plans.entries()) {
    const checking = checkPlan(plan, options);
    if (!checking.ok) return { ...checking, variant };
    const lasting = howLongItLasts(plan, { day: options.day });
    if (!lasting.ok) return { ...lasting, variant };
    variants.push({
      name: plan.name ?? "",
      money: plan.money,
      figures: figuresOf(plan, checking.checked, lasting.lasting),
      differences: planDifferences(plans[0], plan),
    });
  }
  return { ok: true, variants };
}

function figuresOf(plan: Plan, checked: Checked, lasting: Lasting): VariantFigures {
  const { drinkers, runs, sources, line } = checked;
  const isTried = drinkers.some(({ certainty }) => certainty.kind !== "notSampled");
  const drinks = !lasting.leavesOut.includes("nobodyDrinks");
  const worst = leastOf(drinkers, ({ margin }) => margin);
  return {
    verdict: checked.verdict,
    drinkers: drinkers.length,
    counts: checked.counts,
    sure: isTried ? drinkers.filter(({ certainty }) => certainty.kind === "sure").length : undefined,
    worst: worst && { drinker: worst.drinker, margin: worst.margin },
    leastFlow: least(drinkers.map(flowAtWorst)),
    idleHead: greatest(drinkers.map(({ moments }) => moments.fullIdle.darcyWeisbach.staticHead)),
    stand: greatest(line.sources.map(({ stand }) => stand)) ?? 0,
    mass: greatest(sources.map(({ massFull }) => massFull)) ?? 0,
    usable: sum(lasting.sources.map(({ usable }) => usable)),
    pipe: sum(runs.map(({ length }) => length)),
    standing: sum(runs.map(({ volume }) => volume)),
    price: priceOf(plan, checked),
    draw: drinks ? lasting.cases.size.firstDay : undefined,
    lasts: lasting.cases.size.firstDry?.after,
    lastsHot: lasting.cases.hot.firstDry?.after,
  };
}

/** What a drinker gives while worked at the lowest usable level and busiest, by the law that gives less [m³/s]. */
const flowAtWorst = ({ moments: { lowestBusiest } }: DrinkerVerdict): number =>
  Math.min(lowestBusiest.hazenWilliams.flow, lowestBusiest.darcyWeisbach.flow);

/** Price of all pipe in the line; undefined where the plan's shelf has no price for some of it. */
function priceOf(plan: Plan, { line, runs }: Checked): number | undefined {
  const shelf = shelfOf(plan) ?? [];
  let total = 0;
  for (const [r, { length }] of runs.entries()) {
    const price = shelf.find(({ pipe }) => pipe === line.runs[r].pipeId)?.price;
    if (price === undefined) return undefined;
    total += price * length;
  }
  return runs.length === 0 ? undefined : total;
}

function leastOf<Item>(items: readonly Item[], by: (item: Item) => number): Item | undefined {
  return items.reduce<Item | undefined>(
    (found, item) => (found === undefined || by(item) < by(found) ? item : found),
    undefined,
  );
}

const least = (values: readonly number[]) => leastOf(values, (value) => value);
const greatest = (values: readonly number[]) => leastOf(values, (value) => -value);
const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);

import type { Checked, VerdictName } from "@headfall/hydraulics";
import type { ProfileLayout } from "../profile-layout.js";
import { showHead } from "../shown.js";
import type { UnitSystem } from "../typed-quantity.js";
import { isWorse } from "../verdict-marks.js";
import { scalesOf } from "./side-scales.js";

/** The heads one drinker sees between the extremes, drawn upright from its own height. */
export interface HeadBar {
  readonly drinker: number;
  readonly x: number;
  /** Its valve, and its head when lowest and busiest and when full and idle [px]. */
  readonly valve: number;
  readonly lowest: number;
  readonly highest: number;
  /** The head it needs while worked, and the head it holds without dripping [px]; undefined beyond the drawing. */
  readonly needs: number | undefined;
  readonly holds: number | undefined;
  /** Whether the bar leaves what it needs, or what it holds. */
  readonly isShort: boolean;
  readonly isOver: boolean;
}

/** Every drinker's bar, one for each mark of the rail: where a mark stands for several, the bar of the worst of them. */
export function headBars(checked: Checked, layout: ProfileLayout): HeadBar[] {
  const drawn = new Map(layout.drinkers.map((drinker) => [drinker.index, drinker]));
  return layout.rail.marks.flatMap(({ drinkers }) => {
    const worst = worstOf(checked, drinkers);
    const spot = worst === undefined ? undefined : drawn.get(worst);
    return worst === undefined || spot === undefined ? [] : [headBar(checked, layout, worst, spot.x)];
  });
}

/** The bar of one drinker at a place across the drawing. */
export function headBar(checked: Checked, layout: ProfileLayout, drinker: number, x: number): HeadBar {
  const { y } = scalesOf(layout);
  const valve = checked.line.drinkers.height[drinker]!;
  const { lowest, highest } = headsOf(checked, drinker);
  const { needs, holds } = boundsOf(checked, drinker);
  const drawnAt = (head: number) => {
    const at = y(valve + head);
    return at >= layout.plot.top - 12 && at <= layout.plot.bottom + 2 ? at : undefined;
  };
  return {
    drinker,
    x,
    valve: y(valve),
    lowest: y(valve + lowest),
    highest: y(valve + highest),
    needs: drawnAt(needs),
    holds: drawnAt(holds),
    isShort: lowest < needs,
    isOver: highest > holds,
  };
}

/** Heads of a drinker at the two extremes, by the law the plan shows first [m]. */
export function headsOf(checked: Checked, drinker: number): { lowest: number; highest: number } {
  const { moments } = checked.drinkers[drinker]!;
  return {
    lowest: moments.lowestBusiest[checked.friction].flowingHead,
    highest: moments.fullIdle[checked.friction].flowingHead,
  };
}

/** The head with which a drinker gives what it must, and the head above which it drips [m]. */
export function boundsOf({ line }: Checked, drinker: number): { needs: number; holds: number } {
  const { openingHead, coefficient, exponent, need, group, groups } = line.drinkers;
  const share = need[drinker]! / coefficient[drinker]!;
  return {
    needs: openingHead[drinker]! + share ** (1 / exponent[drinker]!),
    holds: groups[group[drinker]!]!.holdsUpTo,
  };
}

/** "34 to 88 cm": both heads, the unit once where it is the same. */
export function bandText(checked: Checked, drinker: number, system: UnitSystem): string {
  const { lowest, highest } = headsOf(checked, drinker);
  const [low, high] = [showHead(lowest, system), showHead(highest, system)];
  const unit = /[a-z]+$/.exec(high)?.[0];
  // Nought needs no unit of its own.
  const isShared = unit !== undefined && new RegExp(`^([-\\d.]+ ${unit}|0 [a-z]+)$`).test(low);
  return `${isShared ? low.split(" ")[0] : low} to ${high}`;
}

function worstOf({ drinkers }: Checked, among: readonly number[]): number | undefined {
  let worst: { index: number; verdict: VerdictName; margin: number } | undefined;
  for (const index of among) {
    const one = drinkers[index];
    if (one === undefined) continue;
    const isBehind = worst !== undefined && one.verdict === worst.verdict && one.margin < worst.margin;
    if (worst === undefined || isBehind || isWorse(one.verdict, worst.verdict))
      worst = { index, verdict: one.verdict, margin: one.margin };
  }
  return worst?.index;
}

import { flowOfDrinker } from "../model/drinker-flow.js";
import type { Drinkers, Line } from "../model/line.js";
import { buildLossTable, type LossTable, lossByTable } from "../solve/loss-table.js";
import { FRICTION_LAWS } from "../solve/solution.js";
import type { CureLines } from "./cure-lines.js";
import type { Asks } from "./demand-forest.js";

/**
 * What a part of a tree asks of the water above it: by friction law, one after another, head for those certainly at
 * work, head for one more bird at any other [m above datum], and flow [m3/s]. All laws at once, because a plan must
 * work by each: the cheapest by one law and the cheapest by the other need not be the same plan.
 */
export type Asked = readonly number[];

export const [NEED, PROBE, FLOW, FIGURES] = [0, 1, 2, 3];
const LENGTH = FIGURES * FRICTION_LAWS.length;

export const NOTHING_ASKED: Asked = FRICTION_LAWS.flatMap(() => [
  Number.NEGATIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  0,
]);

/** The greatest head that is asked by any law [m above datum]. */
export function headAsked(asked: Asked): number {
  let head = Number.NEGATIVE_INFINITY;
  for (let at = 0; at < LENGTH; at += FIGURES) head = Math.max(head, asked[at + NEED], asked[at + PROBE]);
  return head;
}

export function asksNoMore(a: Asked, b: Asked): boolean {
  for (let k = 0; k < LENGTH; k += 1) if (a[k] > b[k]) return false;
  return true;
}

/** What two parts that hang on one node ask together. */
export function askedByBoth(a: Asked, b: Asked): number[] {
  const both = [...a];
  for (let k = 0; k < LENGTH; k += 1) both[k] = k % FIGURES === FLOW ? a[k] + b[k] : Math.max(a[k], b[k]);
  return both;
}

/**
 * Adds the drinkers that hang at a node itself, by every law. Where one more bird must find its need, the head that
 * stands without it is no less; so flows are those at the greater of the two.
 */
export function serve(drinkers: Drinkers, asks: Asks, node: number, asked: number[]): void {
  const [working, idle] = [asks.atWork[node], asks.idle[node]];
  if (working.length + idle.length === 0) return;
  for (let at = 0; at < LENGTH; at += FIGURES) {
    let [need, probe] = [asked[at + NEED], asked[at + PROBE]];
    for (const { height, head } of idle) probe = Math.max(probe, height + head);
    need = Math.max(need, probe);
    for (const { height, head } of working) need = Math.max(need, height + head);
    for (const { drinker, height } of working)
      asked[at + FLOW] += flowOfDrinker(drinkers, drinker, need - height);
    asked[at + NEED] = need;
    asked[at + PROBE] = probe;
  }
}

/** Loss in a segment [m], by position of the law. */
export type LossOf = (law: number, segment: number, flow: number) => number;

/** What a run loses with one of its options. */
export function lossesOf(lines: CureLines): (run: number, option: number) => LossOf {
  const tables = new Map<Line, LossTable[]>();
  return (run, option) => {
    const line = lines.withOption(run, option);
    const byLaw = tables.get(line) ?? FRICTION_LAWS.map((law) => buildLossTable(line, law));
    tables.set(line, byLaw);
    return (law, segment, flow) => lossByTable(line, byLaw[law], segment, flow);
  };
}

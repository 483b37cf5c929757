import type { PlanDrinkerGroup } from "@headfall/hydraulics";
import { metresOf } from "../kernels/typed-metres.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { tidyGroup } from "./edits/part-keys.js";
import { exactLength, roundLength } from "./typed-length.js";

/** Where the drinkers of a regular group hang along their run [m]. */
export interface Row {
  readonly count: number;
  readonly first: number;
  readonly every: number;
}

/** How far the last drinker of a row may be off when the row is written in another way [m]. */
const SAME_PLACE = 5e-7;

/** The row of a group, as the library hangs it: spread evenly to the end of the run where the plan does not say. */
export function rowOf(group: PlanDrinkerGroup, runLength: number): Row {
  const count = group.count ?? 1;
  const typedFirst = group.first === undefined ? undefined : metresOf(group.first);
  const every = group.every === undefined ? spread(count, runLength, typedFirst) : metresOf(group.every);
  return { count, first: typedFirst ?? every, every };
}

function spread(count: number, runLength: number, first: number | undefined): number {
  if (first === undefined) return runLength / count;
  return count === 1 ? 0 : Math.max(0, runLength - first) / (count - 1);
}

/** Distances of the drinkers from the start of their run [m]. */
export function placesOf(group: PlanDrinkerGroup, runLength: number): number[] {
  const { count, first, every } = rowOf(group, runLength);
  return Array.from({ length: count }, (_, i) => Math.min(runLength, first + i * every));
}

/**
 * The group hung as a row tells, on a run of some length: as it was typed where that still says so, else with first
 * and spacing written out, or left to "spread evenly" where only that is exact in few figures.
 */
export function withRow(
  group: PlanDrinkerGroup,
  row: Row,
  runLength: number,
  system: UnitSystem,
): PlanDrinkerGroup {
  const count = row.count === 1 && group.count === undefined ? undefined : row.count;
  const write = (first: string | undefined, every: string | undefined) =>
    tidyGroup({ ...group, count, first, every: row.count === 1 ? undefined : every });
  const exact = (length: number) => exactLength(length, system, SAME_PLACE / (2 * row.count));
  const forms = [
    () => write(group.first, group.every),
    () => write(roundLength(row.first, system), roundLength(row.every, system)),
    () => write(undefined, undefined),
    () => write(exact(row.first), undefined),
    () => write(undefined, exact(row.every)),
  ];
  const fitting = forms.find((form) => isSameRow(rowOf(form(), runLength), row, runLength));
  return fitting?.() ?? write(exact(row.first), exact(row.every));
}

function isSameRow(written: Row, row: Row, runLength: number): boolean {
  const steps = row.count - 1;
  const last = written.first + steps * written.every;
  const isNear = Math.abs(written.first - row.first) <= SAME_PLACE && last <= runLength + SAME_PLACE;
  return isNear && Math.abs(written.every - row.every) * steps <= SAME_PLACE;
}

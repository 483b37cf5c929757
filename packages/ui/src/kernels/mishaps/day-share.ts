import { type MishapEnd, writeDuration } from "@headfall/hydraulics";

const DAY = 86_400;

/** How long something takes against a day: what a keeper who looks once a day has to go by. */
export interface DayBar {
  /** From 0 to 1; 1 too where it takes longer than a day. */
  readonly share: number;
  /** Longer than a day, or never. */
  readonly isOver: boolean;
}

/** @param after  until it happens [s]; undefined where it does not */
export function dayBarOf(after: number | undefined): DayBar {
  if (after === undefined || after > DAY) return { share: 1, isOver: true };
  return { share: Math.max(0, after / DAY), isOver: false };
}

/** What harm is: a bird without water, or half of the drinkers dry in a plan without birds [s]. */
export const harmAfter = ({ hasBirds, firstWithout, halfDry }: MishapEnd): number | undefined =>
  hasBirds ? firstWithout?.after : halfDry;

/** When harm comes, in words. */
export const writeHarmAfter = (after: number | undefined): string =>
  after === undefined ? "does not come" : after <= 0 ? "at once" : `after ${writeDuration(after)}`;

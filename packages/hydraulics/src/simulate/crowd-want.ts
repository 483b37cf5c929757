import type { DrinkerGroup, Line } from "../model/line.js";
import { drinkerById } from "../tables/drinkers.js";

/** Birds of one kind and age, as a crowd sees them: all figures a bird's. */
export interface BatchWant {
  readonly count: number;
  /** Drunk in the busiest hour [m3/s]. */
  readonly demand: number;
  /** The most it takes in while it drinks [m3/s]. */
  readonly fastest: number;
  /** Drunk in one bout [m3]. */
  readonly boutVolume: number;
}

/** A place to drink, as a crowd sees it. */
export interface DrinkerPlace {
  /** What it passes while worked, with the head it has [m3/s]. */
  readonly flow: number;
  readonly workedBy: "trigger" | "float";
  /** Birds that drink from it at once. */
  readonly places: number;
}

/**
 * Of what a worked trigger passes, the share a bird takes in: the pin is pecked, not held. Least and most are taken as
 * two standard deviations either way.
 *
 * @source common-practice, effective ingestion over static flow, from memory
 */
export const TAKEN_IN = { share: 0.5, least: 0.3, most: 0.8 } as const;

/**
 * Birds that drink at once from one drinker: one at a nipple or cup, five round a bell, ten along a trough, as the
 * needs of these kinds in the table of drinkers are made up.
 *
 * @source common-practice, five hens at a bell and ten at a trough, derived
 */
export const PLACES = { nipple: 1, cup: 1, bell: 5, trough: 10 } as const;

/**
 * What kind of device a group is; a measured one of the user's own is taken as a nipple, or as a cup where a float
 * works it.
 *
 * @example deviceOf(line.drinkers.groups[0])   // "nipple"
 */
export function deviceOf(group: DrinkerGroup): "nipple" | "cup" | "bell" | "trough" {
  return drinkerById(group.kindId)?.kind ?? (group.workedBy === "float" ? "cup" : "nipple");
}

/** Birds that drink at once from one drinker of a group. */
export const placesOf = (group: DrinkerGroup): number => PLACES[deviceOf(group)];

/** Whether birds drink there from water that stands open, and not from a valve they work or a small cup. */
export function isOpen(group: DrinkerGroup): boolean {
  const device = deviceOf(group);
  return device === "bell" || device === "trough";
}

export const groupOf = (line: Line, d: number): DrinkerGroup => line.drinkers.groups[line.drinkers.group[d]];

/**
 * What a bird takes in at one drinker [m3/s].
 *
 *   r = min(0.5 q, w) at a trigger, min(q, w) at a float                                                  (1)
 *
 * @param place    the drinker: its flow q
 * @param fastest  w, the most the bird takes in [m3/s]
 * @returns r [m3/s]
 * @valid any place; a float's water stands in its bowl, so one bird is held back only by what refills it
 * @source cautious-defaults, effective flow of the simultaneity model, derived
 * @example rateAt({ flow: 1e-6, workedBy: "trigger", places: 1 }, 2e-6)   // 5e-7
 */
export function rateAt(place: DrinkerPlace, fastest: number): number {
  return Math.min(place.workedBy === "trigger" ? TAKEN_IN.share * place.flow : place.flow, fastest);
}

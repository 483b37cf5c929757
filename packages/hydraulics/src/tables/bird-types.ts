import type { Citation } from "./citation.js";

/** What one bird drinks in a day on mild days, at an age. */
export interface IntakePoint {
  readonly ageDays: number;
  /** Eggs a day per hen (0 to 1) the figure is for; undefined where it does not matter. */
  readonly lay: number | undefined;
  /** Water drunk [m³/day]. */
  readonly intake: number;
  readonly confidence: "high" | "medium" | "low";
  readonly citation: Citation;
}

/** How high drinkers of one device hang for birds of an age [m above what they stand on]. */
export interface HangPoint {
  readonly device: "nipple" | "cup" | "bell" | "trough";
  readonly ageDays: number;
  readonly height: number;
  readonly low: number;
  readonly high: number;
  readonly citation: Citation;
}

/** One kind and class of bird, as a keeper would name it. */
export interface BirdKind {
  readonly id: string;
  readonly name: string;
  /** Several of them, as they are called within a sentence. */
  readonly many: string;
  readonly species: "chicken" | "turkey" | "duck" | "goose" | "quail" | "game";
  readonly also: readonly string[];
  /** Age taken where the plan gives none [days]. */
  readonly grownDays: number;
  /** Whether lay matters. */
  readonly lays: boolean;
  /** The cautious figure, to size on; by age, then by lay. */
  readonly size: readonly IntakePoint[];
  /** The figure to expect. */
  readonly expect: readonly IntakePoint[];
  /** Air temperature both are for [°C]. */
  readonly referenceTemperature: number;
  /** Bouts of drinking a day at drinkers that are worked or sipped from (nipples, cups), and at open water. */
  readonly boutsClosed: number;
  readonly boutsOpen: number;
  /** The most one bird takes in while it drinks [m³/s]. */
  readonly fastest: number;
  /** How the hours of light share the day's drinking. */
  readonly dayShape: "evening" | "even" | "morning-and-evening";
  /** Least flow of a worked drinker: at hatching, more a week, and of grown birds [m³/s]. */
  readonly flowNeed: { readonly atHatching: number; readonly perWeek: number; readonly most: number };
  /** Younger than this they drown in open water more than a few millimetres deep [days]. */
  readonly drownsUntilDays: number;
}

/** Source, place in it, how it is known. */
export type CitationRow = readonly [source: string, where: string, seen: string];

/** A kind of bird as the compiled table holds it: figures as rows, in mL and mL/min; citations by their place in a list. */
export interface BirdRow extends Omit<BirdKind, "size" | "expect" | "referenceTemperature"> {
  readonly size: readonly IntakeRow[];
  readonly expect: readonly IntakeRow[];
}

/** Age [days], lay (-1 where it does not matter), intake [mL/day], confidence by its first letter, citation. */
export type IntakeRow = readonly [number, number, number, string, number];
/** Device, age [days], height, low, high [m], citation. */
export type HangRow = readonly [string, number, number, number, number, number];

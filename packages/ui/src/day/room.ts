import type { Checked, DayResult, DaysSummary, Plan } from "@headfall/hydraulics";
import type { DayIndex, DayMoment } from "../kernels/day/day-index.js";
import type { DrawnWay } from "../kernels/day/drawn-ways.js";
import type { ProfileLayout } from "../kernels/profile-layout.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What every view of this room is made from. */
export interface DayRoom {
  readonly plan: Plan;
  readonly checked: Checked | undefined;
  readonly result: DayResult;
  readonly index: DayIndex;
  readonly system: UnitSystem;
  readonly seed: number;
  readonly figure: "expect" | "size";
  readonly hot: boolean;
  readonly isWide: boolean;
  readonly days: DaysSummary | undefined;
  readonly progress: number | undefined;
  readonly acts: DayActs;
}

/** The same, at the moment that is played. */
export interface PlayedRoom extends DayRoom {
  readonly moment: DayMoment;
  readonly isPlaying: boolean;
  readonly rate: number;
  readonly ways: readonly DrawnWay[];
  readonly way: number;
  /** Where everything is on the drawing; undefined until it has been drawn. */
  readonly layout: ProfileLayout | undefined;
}

export interface DayActs {
  readonly another: () => void;
  readonly firstDay: () => void;
  readonly drink: (figure: "expect" | "size") => void;
  readonly heat: (hot: boolean) => void;
  readonly playOrPause: () => void;
  readonly seek: (time: number) => void;
  readonly speed: (rate: number) => void;
  readonly lookAlong: (way: number | undefined) => void;
  readonly drawn: (layout: ProfileLayout | undefined) => void;
  readonly runMany: () => void;
  readonly cancelMany: () => void;
}

export const sumOf = (counts: Int32Array): number => counts.reduce((sum, count) => sum + count, 0);

export const birdsWord = (count: number): string => (count === 1 ? "1 bird" : `${count} birds`);

/** Whether the line fills a source: then it counts as full all day, as long as that gives. */
export const isFed = ({ sources }: Plan, source: number): boolean => sources[source]?.feed !== undefined;

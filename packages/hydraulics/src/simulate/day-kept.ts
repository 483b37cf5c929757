import type { DaySetting } from "./day-setting.js";
import type { DayWater } from "./day-water.js";

/** What is counted of a pen while its day runs. */
export interface PenTally {
  comers: number;
  readonly waits: number[];
  atOnce: number;
  mostAtOnce: number;
  mostAt: number;
  allTaken: number;
  dry: number;
  dryFrom: number | undefined;
}

/** Events as they come, a list for each thing told of them. */
export interface EventLists {
  readonly time: number[];
  readonly kind: number[];
  readonly bird: number[];
  readonly drinker: number[];
}

/** What is kept of a day while it runs; by drinker, by pen, and in all. */
export interface DayKept {
  readonly bouts: Int32Array;
  /** Drunk and spilled [m³]. */
  readonly drawn: Float64Array;
  /** With birds at it [s]. */
  readonly busy: Float64Array;
  /** Least flow while worked [m³/s]; infinite while it was not. */
  readonly least: Float64Array;
  readonly tallies: readonly PenTally[];
  readonly sums: { drunk: number; spilled: number };
  /** Undefined where they are not kept. */
  readonly events: EventLists | undefined;
  readonly levels: { readonly time: number[]; readonly volumes: number[][] };
  /** What each source held at midnight [m³]. */
  readonly start: readonly number[];
}

/** Nothing has happened yet. */
export function keepDay({ line, pens }: DaySetting, water: DayWater, record: boolean): DayKept {
  const { count } = line.drinkers;
  return {
    bouts: new Int32Array(count),
    drawn: new Float64Array(count),
    busy: new Float64Array(count),
    least: new Float64Array(count).fill(Number.POSITIVE_INFINITY),
    tallies: pens.map(emptyTally),
    sums: { drunk: 0, spilled: 0 },
    events: record ? { time: [], kind: [], bird: [], drinker: [] } : undefined,
    levels: { time: [], volumes: [] },
    start: water.volumes(),
  };
}

const emptyTally = (): PenTally => ({
  comers: 0,
  waits: [],
  atOnce: 0,
  mostAtOnce: 0,
  mostAt: 0,
  allTaken: 0,
  dry: 0,
  dryFrom: undefined,
});

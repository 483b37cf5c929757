import type { Flock } from "../../model/flock.js";
import type { Line } from "../../model/line.js";
import type { Moment } from "../../model/moment.js";
import { groupOf, TAKEN_IN } from "../../simulate/crowd-want.js";
import { drawOfPen } from "../../simulate/pen-draw.js";
import { wantOfPen } from "../../simulate/pen-want.js";
import { type PreparedLine, prepareLine } from "../../solve/prepare-line.js";
import type { AskedPlan } from "../asked-plan.js";
import { poolsOf } from "../time/give-out.js";

const DAY = 86_400;

/** How long a line without birds is taken to be drawn on as in its ordinary hour each day [s]; common practice, no source. */
const WORKED_A_DAY = 1.5 * 3600;

/** What every supposed state of a plan is tried with. */
export interface Bench {
  readonly asked: AskedPlan;
  readonly line: Line;
  /** Where the water of each source is thought to stand [m above its inside bottom]. */
  readonly levels: readonly number[];
  readonly atWork: Uint8Array;
  readonly nobody: Uint8Array;
  /** Hours of dark in a day [s]. */
  readonly dark: number;
  /** By source: the pens that draw on it, each with the share of its draw that comes from there. */
  readonly drawnBy: readonly (readonly PenShare[])[];
  /** Losses by Darcy-Weisbach; shared by states that differ from the plan only in figures. */
  readonly prepared: PreparedLine;
}

export interface PenShare {
  readonly pen: number;
  readonly share: number;
}

export function benchOf(asked: AskedPlan, levels: readonly number[]): Bench {
  const { line, moments } = asked.judged;
  return {
    asked,
    line,
    levels,
    atWork: moments.named.ordinary.atWork,
    nobody: moments.named.fullIdle.atWork,
    dark: DAY - asked.flock.weather.light,
    drawnBy: drawnByPens(asked),
    prepared: prepareLine(line, "darcyWeisbach"),
  };
}

/** Sources of one pool give alike; a header tank draws on the pool that fills it. */
function drawnByPens({ judged, flock, fullVolumes }: AskedPlan): PenShare[][] {
  const drawn: PenShare[][] = judged.line.sources.map(() => []);
  const alone = {
    refills: judged.line.sources.map(() => ({ kind: "none" }) as const),
    start: fullVolumes,
    failed: new Set<number>(),
    dripRate: 0,
  };
  for (const { stores, pens } of poolsOf(judged, flock, alone))
    for (const { source } of stores)
      drawn[source].push(...pens.map(({ pen, share }) => ({ pen, share: share / stores.length })));
  return drawn;
}

/** Water drawn by birds through one source: in a whole day, and in its dark hours [m3]. */
export interface Drawn {
  readonly day: number;
  readonly night: number;
}

/**
 * What birds draw from a source through drinkers that pass these flows. A pen whose drinkers together pass less than
 * it wants in its busiest hour draws so much less; without birds, the draw of an ordinary hour counts for some hours.
 *
 * @param flow      by drinker, when worked [m3/s]
 * @param ordinary  draw on the source in an ordinary hour, leaks not counted [m3/s]
 */
export function drawnFrom(
  bench: Bench,
  flock: Flock,
  source: number,
  { flow, ordinary }: { readonly flow: Float64Array; readonly ordinary: number },
): Drawn {
  if (flock.pens.length === 0) return { day: Math.max(0, ordinary) * WORKED_A_DAY, night: 0 };
  const drawn = { day: 0, night: 0 };
  for (const { pen: p, share } of bench.drawnBy[source]) {
    const pen = flock.pens[p];
    const { daily, edges, rates } = drawOfPen(bench.line, flock, pen, "expect");
    const want = wantOfPen(bench.line, pen, flock.weather);
    const demand = want.batches.reduce((sum, batch) => sum + batch.count * batch.demand, 0);
    const passed = pen.drinkers.reduce((sum, d) => sum + takenAt(bench.line, d) * flow[d], 0);
    const served = share * (demand > 0 ? Math.min(1, passed / demand) : 1);
    const { dawn, light } = flock.weather;
    const inLight = edges
      .slice(1)
      .reduce(
        (sum, to, i) => sum + rates[i] * overlap({ from: edges[i], to }, { from: dawn, to: dawn + light }),
        0,
      );
    drawn.day += served * daily;
    drawn.night += served * Math.max(0, daily - inLight);
  }
  return drawn;
}

/** Of what a worked drinker passes, what is drunk: a float's water stands to be drunk, a trigger's runs past. */
const takenAt = (line: Line, d: number): number =>
  groupOf(line, d).workedBy === "trigger" ? TAKEN_IN.share : 1;

interface Span {
  readonly from: number;
  readonly to: number;
}

/** How long a span of the day and the light have in common [s]; the light may run past midnight. */
const overlap = ({ from, to }: Span, light: Span) =>
  Math.max(0, Math.min(to, light.to) - Math.max(from, light.from)) +
  Math.max(0, Math.min(to + DAY, light.to) - Math.max(from + DAY, light.from));

export const momentOf = (sourceHead: Float64Array, atWork: Uint8Array): Moment => ({
  name: "ordinary",
  sourceHead,
  atWork,
});

import { distanceFromSources } from "../../model/distance.js";
import type { Line } from "../../model/line.js";
import { type Moment, sourceHeads } from "../../model/moment.js";
import { evenDraws, SOBOL_DIMENSIONS } from "../../numerics/even-draws.js";
import { normalQuantile } from "../../numerics/normal-quantile.js";
import { type PreparedLine, prepareAlike, prepareLine } from "../../solve/prepare-line.js";
import { FRICTION_LAWS, type FrictionLaw } from "../../solve/solution.js";
import { solveLine } from "../../solve/solve-line.js";
import { type DrinkerVerdict, VERDICTS } from "../check-result.js";
import { listInputs } from "../sureness/doubted-inputs.js";
import type { Doubts } from "../sureness/doubts.js";
import { varyLine } from "../sureness/vary-line.js";
import type { JugTest } from "./build-sheet.js";

/** Times for a jug and a watch [s], and the least that reads well off a jug [m³]; common practice, no source. */
const TIMES = [15, 30, 60, 120, 180, 300];
const READS_WELL = 100e-6;
/** Share of the plans tried that the band leaves out at each end. */
const TAIL = 0.05;

export interface JugAsked {
  readonly drinkers: readonly Pick<DrinkerVerdict, "verdict" | "margin" | "index" | "drinker">[];
  readonly friction: FrictionLaw;
  readonly doubts: Doubts;
  readonly samples: number;
  readonly seed: number;
}

/**
 * What jug and watch should give at the first, the last and the worst drinker, each held open alone with the sources
 * full and the line bled; the band is that of plans that fit the measurements as well, by both friction laws.
 */
export function jugTests(line: Line, asked: JugAsked): JugTest[] {
  const chosen = choose(line, asked.drinkers);
  if (chosen.length === 0) return [];
  const flows = sampleFlows(
    line,
    asked,
    chosen.map(({ index }) => index),
  );
  const written = prepareLine(line, asked.friction);
  return chosen.map(({ index, roles, verdict }, k) => {
    const flow = flowAlone(written, index);
    const sorted = [...(flows[k] ?? [])].sort((a, b) => a - b);
    const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] ?? flow;
    const seconds = TIMES.find((time) => flow * time >= READS_WELL) ?? TIMES[TIMES.length - 1];
    return {
      drinker: line.drinkers.id[index],
      roles,
      verdict,
      seconds,
      volume: flow * seconds,
      low: Math.min(flow, at(TAIL)) * seconds,
      high: Math.max(flow, at(1 - TAIL)) * seconds,
      needed: line.drinkers.need[index] * seconds,
      samples: sorted.length,
    };
  });
}

interface Chosen {
  readonly index: number;
  readonly roles: ("first" | "last" | "worst")[];
  readonly verdict: JugTest["verdict"];
}

/** The nearest, the farthest, and the one with the worst verdict and least to spare; one drinker may be several. */
function choose(line: Line, drinkers: JugAsked["drinkers"]): Chosen[] {
  if (drinkers.length === 0) return [];
  const distance = distanceFromSources(line);
  const along = (d: number) => distance[line.drinkers.point[d]];
  const fed = drinkers.filter(({ index }) => Number.isFinite(along(index)));
  const best = (
    isBetter: (a: (typeof drinkers)[number], b: (typeof drinkers)[number]) => boolean,
    among: typeof drinkers = fed,
  ) => (among.length === 0 ? drinkers : among).reduce((a, b) => (isBetter(b, a) ? b : a));
  const rank = (one: (typeof drinkers)[number]) => VERDICTS.indexOf(one.verdict);
  const picks = [
    ["first", best((a, b) => along(a.index) < along(b.index))],
    ["last", best((a, b) => along(a.index) > along(b.index))],
    ["worst", best((a, b) => rank(a) > rank(b) || (rank(a) === rank(b) && a.margin < b.margin), drinkers)],
  ] as const;
  const chosen = new Map<number, Chosen>();
  for (const [role, { index, verdict }] of picks) {
    const one = chosen.get(index) ?? { index, roles: [], verdict };
    one.roles.push(role);
    chosen.set(index, one);
  }
  return [...chosen.values()];
}

/** Flow of one drinker held open alone, sources full [m³/s]. */
function flowAlone(prepared: PreparedLine, drinker: number): number {
  const { line } = prepared;
  const atWork = new Uint8Array(line.drinkers.count);
  atWork[drinker] = 1;
  const moment: Moment = { name: "fullIdle", sourceHead: sourceHeads(line, "fullIdle"), atWork };
  return Math.max(0, solveLine(prepared, moment).drinkerFlow[drinker]);
}

/** By drinker, its flow in each plan tried. */
function sampleFlows(line: Line, { doubts, samples, seed }: JugAsked, chosen: readonly number[]): number[][] {
  const inputs = listInputs(line, doubts, undefined);
  const names = [...inputs.map(({ key }) => key), ...line.drinkers.id.map((id) => `drinker ${id}`)];
  const drawn = evenDraws(names, seed, Math.min(SOBOL_DIMENSIONS, inputs.length));
  let prepared = FRICTION_LAWS.map((friction) => prepareLine(line, friction));
  const flows = chosen.map((): number[] => []);
  for (let sample = 0; sample < samples; sample += 1) {
    const normal = (input: number) => normalQuantile(drawn.uniform(sample, input));
    const varied = varyLine(
      line,
      inputs,
      {
        inputs: Float64Array.from(inputs, (_, i) => normal(i)),
        own: Float64Array.from(line.drinkers.id, (_, d) => normal(inputs.length + d)),
      },
      undefined,
    );
    prepared = prepared.map((each) => prepareAlike(each, varied.line));
    const ready = prepared[sample % prepared.length];
    chosen.forEach((d, k) => {
      flows[k].push(flowAlone(ready, d));
    });
  }
  return flows;
}

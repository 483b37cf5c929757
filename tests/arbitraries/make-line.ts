import type { Line, Source } from "../../packages/hydraulics/src/model/line.js";
import type { Moment } from "../../packages/hydraulics/src/model/moment.js";
import { waterAt } from "../../packages/hydraulics/src/physics/water.js";

/** A pipe between two points, by index; whatever is left out is that of ordinary half-inch pipe. */
export interface PipePart {
  from: number;
  to: number;
  length: number;
  bore?: number;
  hazenWilliams?: number;
  roughness?: number;
  k1?: number;
  kInfinity?: number;
  kind?: number;
  setting?: number;
  shut?: boolean;
}

/** A drinker at a point: flow at 1 m of head above opening, exponent, opening head, height of its valve. */
export interface DrinkerPart {
  point: number;
  coefficient: number;
  exponent?: number;
  openingHead?: number;
  drop?: number;
  need?: number;
}

export interface LineParts {
  heights: readonly number[];
  pipes: readonly PipePart[];
  drinkers: readonly DrinkerPart[];
  /** Points that are sources. */
  sources: readonly number[];
  temperatureC?: number;
}

/** A line made directly, without a plan: for tests of the solver. */
export function makeLine(parts: LineParts): Line {
  const { heights, pipes, drinkers } = parts;
  const column = (pick: (pipe: PipePart) => number) => Float64Array.from(pipes, pick);
  return {
    name: "made for a test",
    water: waterAt(parts.temperatureC ?? 20),
    points: {
      count: heights.length,
      id: heights.map((_, i) => `point ${i}`),
      height: Float64Array.from(heights),
      ground: Float64Array.from(heights),
      bleed: new Uint8Array(heights.length),
      measured: new Uint8Array(heights.length).fill(1),
    },
    segments: {
      count: pipes.length,
      from: Int32Array.from(pipes, (pipe) => pipe.from),
      to: Int32Array.from(pipes, (pipe) => pipe.to),
      run: Int32Array.from(pipes, () => 0),
      kind: Uint8Array.from(pipes, (pipe) => pipe.kind ?? 0),
      shut: Uint8Array.from(pipes, (pipe) => (pipe.shut ? 1 : 0)),
      length: column((pipe) => pipe.length),
      bore: column((pipe) => pipe.bore ?? 0.0158),
      hazenWilliams: column((pipe) => pipe.hazenWilliams ?? 150),
      roughness: column((pipe) => pipe.roughness ?? 1.5e-6),
      k1: column((pipe) => pipe.k1 ?? 0),
      kInfinity: column((pipe) => pipe.kInfinity ?? 0),
      setting: column((pipe) => pipe.setting ?? 0),
    },
    runs: [],
    drinkers: {
      count: drinkers.length,
      id: drinkers.map((_, i) => `drinker ${i}`),
      group: new Int32Array(drinkers.length),
      groups: [],
      run: new Int32Array(drinkers.length),
      point: Int32Array.from(drinkers, (drinker) => drinker.point),
      along: new Float64Array(drinkers.length),
      height: Float64Array.from(drinkers, (drinker) => heights[drinker.point] - (drinker.drop ?? 0)),
      coefficient: Float64Array.from(drinkers, (drinker) => drinker.coefficient),
      exponent: Float64Array.from(drinkers, (drinker) => drinker.exponent ?? 0.5),
      openingHead: Float64Array.from(drinkers, (drinker) => drinker.openingHead ?? 0),
      need: Float64Array.from(drinkers, (drinker) => drinker.need ?? 0),
    },
    sources: parts.sources.map((point, index) => makeSource(point, index, heights[point])),
  };
}

function makeSource(point: number, index: number, base: number): Source {
  return {
    id: `source ${index}`,
    index,
    point,
    vesselName: "a drum",
    shape: { kind: "upright", diameter: 0.56, height: 0.85 },
    emptyMass: 10,
    ground: base,
    stand: 0,
    base,
    outlet: 0,
    levels: { full: 0.8, lowest: 0.05, ordinary: 0.4 },
    vent: { kind: "open", diameter: undefined },
    feed: undefined,
  };
}

/** A moment with the given heads at the sources and every drinker at work, or the ones marked. */
export function makeMoment(line: Line, sourceHead: readonly number[], atWork?: readonly boolean[]): Moment {
  return {
    name: "lowestBusiest",
    sourceHead: Float64Array.from(sourceHead),
    atWork: Uint8Array.from({ length: line.drinkers.count }, (_, d) =>
      atWork === undefined || atWork[d] ? 1 : 0,
    ),
  };
}

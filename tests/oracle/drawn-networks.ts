import { SEGMENT_KIND } from "../../packages/hydraulics/src/model/line.js";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import type { DrinkerPart, LineParts, PipePart } from "../arbitraries/make-line.js";

/** A line drawn by number, with the heads of its sources and who drinks. */
export interface DrawnNetwork {
  readonly parts: LineParts;
  readonly sourceHead: readonly number[];
  readonly atWork: readonly boolean[];
}

/** What a network has besides plain pipe and drinkers. */
export interface Features {
  readonly drinkers: number;
  /** Runs that leave the main one. */
  readonly branches?: number;
  /** Pipes that close rings. */
  readonly chords?: number;
  readonly secondSource?: boolean;
  /** How far the second source's water stands below the first's [m]; drawn unless given. */
  readonly secondBelow?: number;
  readonly shutTaps?: number;
  /** One-way valves on the way out of each source. */
  readonly oneWay?: boolean;
  /** Head that low-pressure regulators hold, at the start of this many branches. */
  readonly regulators?: { readonly count: number; readonly setting: number };
  readonly idleShare?: number;
}

const { pipe: PIPE, oneWay: ONE_WAY, regulator: REGULATOR } = SEGMENT_KIND;

/**
 * A line as somebody might build it: a main run from the source and branches off it, drinkers a hand's breadth to a
 * pace apart on all of them, ground that goes up and down, fittings here and there. Same number, same line.
 */
export function drawNetwork(seed: number, features: Features): DrawnNetwork {
  const { uniform, integerBelow } = randomFrom(seed);
  const between = (low: number, high: number) => low + (high - low) * uniform();
  const heights: number[] = [0];
  const pipes: PipePart[] = [];
  const drinkers: DrinkerPart[] = [];
  const bores = [0.0104, 0.0158, 0.0209, 0.0266];

  const addPoint = (height: number) => heights.push(height) - 1;
  const addPipe = (from: number, to: number, length: number, bore: number, more: Partial<PipePart> = {}) => {
    const fitted = uniform() < 0.15 ? { k1: between(50, 900), kInfinity: between(0.2, 8) } : {};
    const walls = { hazenWilliams: between(120, 150), roughness: between(1e-6, 2e-5) };
    // A pipe may be drawn against the flow; devices may not.
    const ends = more.kind === undefined && uniform() < 0.3 ? { from: to, to: from } : { from, to };
    pipes.push({ ...ends, length, bore, ...walls, ...fitted, ...more });
  };
  const addRun = (first: number, count: number, bore: number): number[] => {
    const points = [first];
    const every = between(0.2, 0.9);
    for (let d = 0; d < count; d += 1) {
      const last = points[points.length - 1]!;
      const point = addPoint(heights[last]! + between(-0.03, 0.02));
      addPipe(last, point, every, bore);
      drinkers.push({
        point,
        coefficient: between(1e-6, 4e-6),
        exponent: uniform() < 0.6 ? 0.5 : between(0.4, 0.95),
        openingHead: uniform() < 0.3 ? between(0, 0.08) : 0,
        drop: between(-0.02, 0.1),
      });
      points.push(point);
    }
    return points;
  };

  // The way out of the source: a valve where asked, then a feed pipe.
  const outlet = features.oneWay ? addPoint(0) : 0;
  if (features.oneWay) addPipe(0, outlet, 0.1, 0.0209, { kind: ONE_WAY, setting: 0.02 });
  const gate = addPoint(-0.3);
  addPipe(outlet, gate, between(3, 15), 0.0209, { k1: 1500, kInfinity: 6 });

  const branches = features.branches ?? 0;
  const perRun = Math.floor(features.drinkers / (branches + 1));
  const main = addRun(gate, features.drinkers - branches * perRun, bores[2 + integerBelow(2)]!);
  const ends = [main[main.length - 1]!];
  for (let b = 0; b < branches; b += 1) {
    let start = main[1 + integerBelow(main.length - 1)]!;
    if (b < (features.regulators?.count ?? 0)) {
      const after = addPoint(heights[start]!);
      addPipe(start, after, 0, 0.0158, {
        kind: REGULATOR,
        setting: features.regulators!.setting,
        k1: 0,
        kInfinity: 3,
      });
      start = after;
    }
    const run = addRun(start, perRun, bores[integerBelow(3)]!);
    ends.push(run[run.length - 1]!);
  }
  // Not from behind a regulator: one that water can get around cannot hold.
  const free = ends.filter((_, run) => run === 0 || run > (features.regulators?.count ?? 0));
  for (let c = 0; c < (features.chords ?? 0); c += 1) {
    const [from, to] = [free[c % free.length]!, main[1 + integerBelow(main.length - 2)]!];
    if (from !== to) addPipe(from, to, between(1, 10), bores[integerBelow(4)]!);
  }

  const sources = [0];
  const sourceHead = [between(0.5, 1.4)];
  if (features.secondSource) {
    const second = addPoint(heights[ends[0]!]!);
    const after = features.oneWay ? addPoint(heights[second]!) : second;
    if (features.oneWay) addPipe(second, after, 0.1, 0.0209, { kind: ONE_WAY, setting: 0.02 });
    addPipe(after, ends[0]!, between(1, 6), 0.0158);
    sources.push(second);
    sourceHead.push(sourceHead[0]! - (features.secondBelow ?? between(0.02, 0.3)));
  }
  const plain = pipes.filter(({ kind = PIPE }, i) => kind === PIPE && i > 4);
  for (let t = 0; t < (features.shutTaps ?? 0); t += 1) plain[integerBelow(plain.length)]!.shut = true;
  const atWork = drinkers.map(() => uniform() >= (features.idleShare ?? 0.4));
  return { parts: { heights, pipes, drinkers, sources, temperatureC: between(2, 30) }, sourceHead, atWork };
}

import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { type LineParts, makeLine, makeMoment, type PipePart } from "./make-line.js";

/**
 * A random valid line and moment by number: trees and rings, huge and tiny bores, zero-length pipes, shut taps,
 * one-way valves, regulators, drinkers above the water, opening heads, odd exponents. Same number, same line.
 */
export function randomLine(seed: number) {
  const random = randomFrom(seed);
  const uniform = (low: number, high: number) => low + (high - low) * random.uniform();
  const chance = (share: number) => random.uniform() < share;
  const spread = (low: number, high: number) => low * (high / low) ** random.uniform();
  const pointCount = 2 + Math.floor(spread(1, 60));
  const heights = Array.from({ length: pointCount }, () => uniform(-1, 1));
  const bore = () => (chance(0.1) ? spread(0.001, 0.5) : spread(0.01, 0.05));
  const pipe = (from: number, to: number): PipePart => {
    const part: PipePart = {
      from,
      to,
      length: chance(0.1) ? 0.001 : spread(0.05, 100),
      bore: bore(),
      hazenWilliams: uniform(90, 150),
      roughness: spread(1e-6, 1e-4),
      k1: chance(0.3) ? uniform(0, 2000) : 0,
      kInfinity: chance(0.3) ? uniform(0, 20) : 0,
    };
    if (chance(0.02)) part.shut = true;
    if (chance(0.04)) Object.assign(part, { kind: 1, setting: chance(0.3) ? 0 : uniform(0, 0.1) });
    return part;
  };
  const pipes: PipePart[] = [];
  for (let p = 1; p < pointCount; p += 1) {
    const parent = chance(0.8) ? p - 1 : Math.floor(uniform(0, p));
    const part = chance(0.5) ? pipe(parent, p) : pipe(p, parent);
    if (part.kind === undefined && chance(0.03) && part.from === parent) {
      Object.assign(part, { kind: 2, setting: uniform(0.02, 0.6) });
    }
    pipes.push(part);
  }
  const sources = [0];
  const isRinged = chance(0.3);
  if (isRinged) {
    const bare = pipes.every((part) => part.kind !== 2);
    const chords = 1 + Math.floor(uniform(0, 4));
    for (let c = 0; bare && c < chords && pointCount > 2; c += 1) {
      const from = Math.floor(uniform(0, pointCount));
      const to = Math.floor(uniform(0, pointCount));
      if (from !== to) pipes.push(pipe(from, to));
    }
    if (bare && chance(0.3) && pointCount > 3) sources.push(pointCount - 1);
  }
  const drinkerCount = Math.floor(spread(1, 80)) - 1;
  const drinkers = Array.from({ length: drinkerCount }, () => ({
    point: Math.floor(uniform(0, pointCount)),
    coefficient: chance(0.1) ? spread(1e-10, 1e-2) : spread(5e-7, 2e-5),
    exponent: chance(0.7) ? 0.5 : uniform(0.35, 1),
    openingHead: chance(0.3) ? uniform(0, 0.3) : 0,
    drop: chance(0.3) ? uniform(-0.3, 0.3) : 0,
  }));
  const parts: LineParts = { heights, pipes, drinkers, sources, temperatureC: uniform(0, 50) };
  const line = makeLine(parts);
  const sourceHead = sources.map((p) => heights[p] + (chance(0.1) ? spread(1e-6, 1e-2) : uniform(0, 2)));
  const moment = makeMoment(
    line,
    sourceHead,
    drinkers.map(() => chance(0.7)),
  );
  return { parts, line, moment };
}

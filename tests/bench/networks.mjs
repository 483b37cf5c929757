import { waterAt } from "../../packages/hydraulics/dist/physics/water.js";

/** Drinkers on one hung line, and metres from one to the next. */
const PER_LINE = 60;
const SPACING = 0.3;

/**
 * A yard of `count` drinkers: hung lines of 60 nipples on half-inch pipe, fed from a main that is stepped down as its
 * flow falls. A third are at work. Every figure is invented.
 */
export function buildYard(count) {
  const heights = [0];
  const pipes = [];
  const drinkers = [];
  const lines = Math.ceil(count / PER_LINE);
  let end = 0;
  for (let line = 0; line < lines; line += 1) {
    const left = (lines - line) * PER_LINE;
    // Fifteen centimetres a second if a third of them drank 60 mL/min each.
    const bore = Math.max(0.0158, Math.sqrt((4 * left * 3.3e-7) / (Math.PI * 0.15)));
    const tee = add(heights, -0.001 * (line % 7));
    pipes.push(pipe(end, tee, 2, bore));
    end = tee;
    let at = tee;
    for (let k = 0; k < PER_LINE && drinkers.length < count; k += 1) {
      const place = add(heights, heights[tee] - 0.01);
      pipes.push(pipe(at, place, SPACING, 0.0156));
      drinkers.push({ point: place, coefficient: 2.3e-6 * (0.9 + (0.2 * ((k * 7919) % 100)) / 100) });
      at = place;
    }
  }
  return assemble(heights, pipes, drinkers);
}

/** A tree of `points` points with `rings` chords between places near each other; a drinker at every point. */
export function buildRings(points, rings) {
  const heights = [0];
  const pipes = [];
  const drinkers = [];
  for (let p = 1; p < points; p += 1) {
    add(heights, -0.01);
    const line = Math.floor((p - 1) / 100);
    const from = (p - 1) % 100 === 0 ? (line === 0 ? 0 : (line - 1) * 100 + 1) : p - 1;
    const left = points - line * 100;
    const isMain = (p - 1) % 100 === 0;
    pipes.push(pipe(from, p, isMain ? 2 : 0.3, isMain ? Math.max(0.02, Math.sqrt(left * 1e-6)) : 0.02));
    drinkers.push({ point: p, coefficient: 2e-6 });
  }
  for (let r = 0; r < rings; r += 1) {
    const from = 1 + ((r * 7919) % (points - 201));
    pipes.push(pipe(from, from + 100 + (r % 97), 3, 0.0158));
  }
  return assemble(heights, pipes, drinkers);
}

const add = (list, value) => list.push(value) - 1;
const pipe = (from, to, length, bore) => ({ from, to, length, bore });

function assemble(heights, pipes, drinkers) {
  const column = (list, pick) => Float64Array.from(list, pick);
  const line = {
    name: "bench",
    water: waterAt(12),
    points: {
      count: heights.length,
      id: heights.map((_, p) => `p${p}`),
      height: Float64Array.from(heights),
      ground: Float64Array.from(heights),
      bleed: new Uint8Array(heights.length),
      measured: new Uint8Array(heights.length),
    },
    segments: {
      count: pipes.length,
      from: Int32Array.from(pipes, (p) => p.from),
      to: Int32Array.from(pipes, (p) => p.to),
      run: new Int32Array(pipes.length),
      kind: new Uint8Array(pipes.length),
      shut: new Uint8Array(pipes.length),
      length: column(pipes, (p) => p.length),
      bore: column(pipes, (p) => p.bore),
      hazenWilliams: column(pipes, () => 150),
      roughness: column(pipes, () => 1.5e-6),
      k1: column(pipes, () => 0),
      kInfinity: column(pipes, () => 0),
      setting: column(pipes, () => 0),
    },
    runs: [],
    drinkers: {
      count: drinkers.length,
      id: drinkers.map((_, d) => `d${d}`),
      group: new Int32Array(drinkers.length),
      groups: [],
      run: new Int32Array(drinkers.length),
      point: Int32Array.from(drinkers, (d) => d.point),
      along: new Float64Array(drinkers.length),
      height: column(drinkers, (d) => heights[d.point] - 0.1),
      coefficient: column(drinkers, (d) => d.coefficient),
      exponent: column(drinkers, () => 0.5),
      openingHead: column(drinkers, () => 0.04),
      need: column(drinkers, () => 8.3e-7),
    },
    sources: [{ point: 0 }],
  };
  const atWork = Uint8Array.from(drinkers, (_, d) => (d % 3 === 0 ? 1 : 0));
  return { line, moment: { name: "lowestBusiest", sourceHead: Float64Array.of(1), atWork } };
}

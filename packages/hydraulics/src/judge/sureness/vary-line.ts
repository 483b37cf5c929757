import { type Line, SEGMENT_KIND } from "../../model/line.js";
import type { Crowd } from "../../simulate/crowd.js";
import { atWorkVaried } from "../../simulate/crowd-numbers.js";
import { type Input, SAMPLED_DOUBTS, spreadBy } from "./doubted-inputs.js";

/** How far everything in doubt is off in one sample, in standard deviations. */
export interface Off {
  /** By input. */
  readonly inputs: Float64Array;
  /** By drinker: its flow against that of its like. */
  readonly own: Float64Array;
}

/** A line that fits the measurements as well as the one written. */
export interface VariedLine {
  readonly line: Line;
  /** Who is at work in the busiest minutes; undefined where that does not hang on birds. */
  readonly atWork: Uint8Array | undefined;
}

/** The line with everything as far off as is said; what birds are at work follows from it. */
export const varyLine = (
  line: Line,
  inputs: readonly Input[],
  off: Off,
  crowd: Crowd | undefined,
): VariedLine => createVarier(line, inputs, crowd)(off);

/**
 * Varies one line again and again: in the same columns, so that a varied line holds only until the next one is made.
 */
export function createVarier(
  line: Line,
  inputs: readonly Input[],
  crowd: Crowd | undefined,
): (off: Off) => VariedLine {
  const gathered = roomFor(line, crowd?.pens.length ?? 0);
  const { shift, flow, intake } = gathered;
  const points = { ...line.points, height: line.points.height.slice() };
  const segments = ownColumns(line.segments, ["bore", "k1", "kInfinity", "hazenWilliams"]);
  const drinkers = ownColumns(line.drinkers, ["height", "coefficient"]);
  return (off) => {
    gather(gathered, line, inputs, off.inputs);
    layBetween(line, shift);
    for (let p = 0; p < points.count; p += 1) points.height[p] = line.points.height[p] + shift[p];
    varySegments(segments, line, gathered);
    varyDrinkers(drinkers, line, gathered, off.own);
    return {
      line: { ...line, points, segments, drinkers, sources: sourcesOff(line, gathered) },
      atWork:
        crowd === undefined
          ? undefined
          : atWorkVaried(line, crowd, { intake, flow, takenIn: gathered.takenIn }),
    };
  };
}

/** The same columns but for some, which become copies to be written in. */
function ownColumns<Columns>(columns: Columns, keys: readonly (keyof Columns)[]): Columns {
  const own = { ...columns };
  for (const key of keys) own[key] = (columns[key] as Float64Array).slice() as Columns[keyof Columns];
  return own;
}

/** What the inputs come to, by what they bear on. */
interface Gathered {
  /** By point, of those measured [m]. */
  readonly shift: Float64Array;
  /** By source [m]. */
  readonly level: Float64Array;
  /** By run [m]. */
  readonly bore: Float64Array;
  /** Factors by group, by pen. */
  readonly flow: number[];
  readonly intake: number[];
  takenIn: number;
  roughness: number;
  fittings: number;
}

const roomFor = (line: Line, pens: number): Gathered => ({
  shift: new Float64Array(line.points.count),
  level: new Float64Array(line.sources.length),
  bore: new Float64Array(line.runs.length),
  flow: line.drinkers.groups.map(() => 1),
  intake: Array.from({ length: pens }, () => 1),
  takenIn: 1,
  roughness: 1,
  fittings: 1,
});

function gather(gathered: Gathered, line: Line, inputs: readonly Input[], off: Float64Array): void {
  for (const lengths of [gathered.shift, gathered.level, gathered.bore]) lengths.fill(0);
  for (const factors of [gathered.flow, gathered.intake]) factors.fill(1);
  gathered.takenIn = 1;
  gathered.roughness = 1;
  gathered.fittings = 1;
  for (let i = 0; i < inputs.length; i += 1) note(gathered, line, inputs[i], off[i]);
}

function note(gathered: Gathered, line: Line, { input, index, doubt, spread }: Input, z: number): void {
  switch (input.kind) {
    case "height":
      gathered.shift[index] = (doubt / 2) * z;
      return;
    case "level":
      gathered.level[index] = (doubt / 2) * z;
      return;
    case "bore":
      gathered.bore[index] = (doubt / 2) * z;
      return;
    case "flow":
      line.drinkers.groups.forEach(({ kindName }, g) => {
        if (kindName === input.drinkers) gathered.flow[g] = spreadBy(spread, z);
      });
      return;
    case "intake":
      gathered.intake[index] = spreadBy(spread, z);
      return;
    default:
      gathered[input.kind] = spreadBy(spread, z);
  }
}

function varySegments(
  into: Line["segments"],
  { segments }: Line,
  { bore, roughness, fittings }: Gathered,
): void {
  for (let s = 0; s < segments.count; s += 1) {
    const written = segments.bore[s];
    into.bore[s] = Math.max(0.5 * written, written + bore[segments.run[s]]);
    into.k1[s] = segments.k1[s] * fittings;
    into.kInfinity[s] = segments.kInfinity[s] * fittings;
    into.hazenWilliams[s] = segments.hazenWilliams[s] * roughness;
  }
}

function varyDrinkers(
  into: Line["drinkers"],
  { drinkers }: Line,
  { shift, flow }: Gathered,
  off: Float64Array,
): void {
  const own = SAMPLED_DOUBTS.oneToTheNext / 2;
  for (let d = 0; d < drinkers.count; d += 1) {
    into.height[d] = drinkers.height[d] + shift[drinkers.point[d]];
    into.coefficient[d] = drinkers.coefficient[d] * flow[drinkers.group[d]] * Math.exp(own * off[d]);
  }
}

const sourcesOff = ({ sources }: Line, { shift, level }: Gathered): Line["sources"] =>
  sources.map((source, s) => ({
    ...source,
    base: source.base + shift[source.point],
    levels: {
      full: source.levels.full + level[s],
      lowest: source.levels.lowest + level[s],
      ordinary: source.levels.ordinary + level[s],
    },
  }));

/** Between measured places the pipe stays straight: their shifts decide those of the places between. */
function layBetween(line: Line, shift: Float64Array): void {
  // A device sits where its run begins.
  const { segments } = line;
  for (let s = 0; s < segments.count; s += 1) {
    if (segments.kind[s] !== SEGMENT_KIND.pipe) shift[segments.to[s]] = shift[segments.from[s]];
  }
  for (const run of line.runs) {
    let before = 0;
    for (let k = 1; k < run.points.length; k += 1) {
      if (line.points.measured[run.points[k]] === 0) continue;
      const [a, b] = [run.along[before], run.along[k]];
      for (let between = before + 1; between < k; between += 1) {
        const share = b > a ? (run.along[between] - a) / (b - a) : 1;
        shift[run.points[between]] = (1 - share) * shift[run.points[before]] + share * shift[run.points[k]];
      }
      before = k;
    }
  }
}

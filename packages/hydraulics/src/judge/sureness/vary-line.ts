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
export function varyLine(
  line: Line,
  inputs: readonly Input[],
  off: Off,
  crowd: Crowd | undefined,
): VariedLine {
  const gathered = gather(line, inputs, off.inputs, crowd?.pens.length ?? 0);
  const { shift, level, flow, intake, takenIn } = gathered;
  layBetween(line, shift);
  const { points, drinkers, sources } = line;
  const own = SAMPLED_DOUBTS.oneToTheNext / 2;
  return {
    atWork: crowd === undefined ? undefined : atWorkVaried(line, crowd, { intake, flow, takenIn }),
    line: {
      ...line,
      points: { ...points, height: points.height.map((h, p) => h + shift[p]) },
      segments: segmentsOff(line, gathered),
      drinkers: {
        ...drinkers,
        height: drinkers.height.map((h, d) => h + shift[drinkers.point[d]]),
        coefficient: drinkers.coefficient.map(
          (k, d) => k * flow[drinkers.group[d]] * Math.exp(own * off.own[d]),
        ),
      },
      sources: sources.map((source, s) => ({
        ...source,
        base: source.base + shift[source.point],
        levels: {
          full: source.levels.full + level[s],
          lowest: source.levels.lowest + level[s],
          ordinary: source.levels.ordinary + level[s],
        },
      })),
    },
  };
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

function gather(line: Line, inputs: readonly Input[], off: Float64Array, pens: number): Gathered {
  const gathered: Gathered = {
    shift: new Float64Array(line.points.count),
    level: new Float64Array(line.sources.length),
    bore: new Float64Array(line.runs.length),
    flow: line.drinkers.groups.map(() => 1),
    intake: Array.from({ length: pens }, () => 1),
    takenIn: 1,
    roughness: 1,
    fittings: 1,
  };
  inputs.forEach((input, i) => {
    note(gathered, line, input, off[i]);
  });
  return gathered;
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

function segmentsOff({ segments }: Line, { bore, roughness, fittings }: Gathered): Line["segments"] {
  return {
    ...segments,
    bore: segments.bore.map((d, s) => Math.max(0.5 * d, d + bore[segments.run[s]])),
    k1: segments.k1.map((k) => k * fittings),
    kInfinity: segments.kInfinity.map((k) => k * fittings),
    hazenWilliams: segments.hazenWilliams.map((c) => c * roughness),
  };
}

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

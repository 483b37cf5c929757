import { DOUBT_UNIT, type Input, type InputKind } from "./doubted-inputs.js";

/** A better measurement of one input. */
export interface Rung {
  /** How far it may then be off: a length [m] or a share [-]; 0 for nothing. */
  readonly doubt: number;
  /** How much of the doubt it keeps, from 0 to 1. */
  readonly keeps: number;
}

/** Figures a person would ask for. */
const STEPS = [1, 1.5, 2, 3, 5, 7] as const;
/** Nothing better can be had with string, level, gauge, jug and watch [m, -]; common practice, no source. */
const FINEST: Readonly<Partial<Record<InputKind, number>>> = {
  height: 0.002,
  level: 0.002,
  bore: 0.0001,
  flow: 0.02,
};
/** A doubt this much smaller is as good as none. */
const LEAST_KEPT = 0.03;

/**
 * The better measurements of an input that can be asked for, the best first. What birds do cannot be measured a little
 * better: how many drink at once is counted and typed, and the doubt is gone.
 */
export function rungsOf(input: Input): readonly Rung[] {
  const finest = FINEST[input.input.kind];
  if (finest === undefined) return [{ doubt: 0, keeps: 0 }];
  return roundFigures(Math.max(finest, LEAST_KEPT * input.doubt), input.doubt).map((doubt) => ({
    doubt,
    keeps: keptOf(input, doubt),
  }));
}

function roundFigures(least: number, below: number): number[] {
  const figures: number[] = [];
  for (let power = Math.floor(Math.log10(least)); 10 ** power < below; power += 1)
    for (const step of STEPS) {
      // 1.5e-3 and not 0.0015000000000000002.
      const figure = Number(`${step}e${power}`);
      if (figure >= least * (1 - 1e-9) && figure < below * (1 - 1e-9)) figures.push(figure);
    }
  return figures;
}

/** How much of its deviations an input keeps when its doubt is so small. */
function keptOf({ input, doubt, spread }: Input, smaller: number): number {
  if (DOUBT_UNIT[input.kind] === "length") return smaller / doubt;
  const down = spread.low < 1 ? Math.log(1 - smaller) / Math.log(spread.low) : 1;
  const up = spread.high > 1 ? Math.log(1 + smaller) / Math.log(spread.high) : 1;
  return Math.min(1, down, up);
}

import type { Spare } from "../weigh-drinker.js";
import { type Input, SAMPLED_DOUBTS } from "./doubted-inputs.js";
import type { CloseCall, Sway } from "./measuring.js";
import type { Sampler } from "./sample-verdicts.js";
import { asDoubted, type Ranked } from "./tally.js";

/** Inputs of one drinker that are looked at. */
const LOOKED_AT_EACH = 12;
/** Standard deviations that make up a doubt, and those of a step: small, so that none leads past an edge. */
const DOUBT = 2;
const STEP = 0.2;
/** A share of the greatest sway under which heads do not show why an input decides; common practice, no source. */
const UNSEEN = 0.25;
/** Less than this is rounding [m]. */
const NOTHING = 1e-6;

/**
 * How far the water must come up, or go down, for each drinker to be good in as many of the plans as it takes to be
 * sure: read off the spare heads of the samples.
 */
export function findSpares(
  sampler: Sampler,
  drinkers: readonly number[],
  samples: number,
): Pick<CloseCall, "moreHead" | "lessHead">[] {
  const below = drinkers.map(() => new Float64Array(samples));
  const above = drinkers.map(() => new Float64Array(samples));
  for (let k = 0; k < samples; k += 1) {
    const sample = sampler.take(k);
    drinkers.forEach((drinker, o) => {
      const spare = sample.spare(drinker);
      below[o][k] = spare.below;
      above[o][k] = spare.above;
    });
  }
  return drinkers.map((_, o) => ({ moreHead: missing(below[o]), lessHead: missing(above[o]) }));
}

/** What is missing in all but the few worst; 0 where nothing is, undefined where water does not come at all. */
function missing(spare: Float64Array): number | undefined {
  const sorted = spare.sort();
  const worst = sorted[Math.floor((1 - SAMPLED_DOUBTS.sureShare) * sorted.length)];
  if (worst === Number.NEGATIVE_INFINITY) return undefined;
  return worst >= -NOTHING ? 0 : -worst;
}

/** A close call with what the samples say of its inputs. */
export interface Doubtful {
  readonly drinker: number;
  readonly ranked: readonly Ranked[];
  /** The edge it is close to. */
  readonly side: keyof Spare;
}

/** An input with how it moves a drinker. */
export interface Mover {
  readonly input: Input;
  readonly sway: Sway;
}

/**
 * How the inputs move the head to spare of each drinker, by central differences through the solver; those that move it
 * farthest come first, but for those whose draws clearly went with a change of verdict though they hardly move it.
 */
export function findMovers(sampler: Sampler, close: readonly Doubtful[]): Mover[][] {
  const spareAt = (inputs: Float64Array): Spare[] => {
    const sample = sampler.judge({ inputs, own: new Float64Array(sampler.drinkers) });
    return close.map(({ drinker }) => sample.spare(drinker));
  };
  const moved = new Map<Input, readonly [down: Spare[], up: Spare[]]>();
  const movedBy = (input: Input) => {
    const known = moved.get(input);
    if (known !== undefined) return known;
    const at = (deviations: number) =>
      spareAt(Float64Array.from(sampler.inputs, (one) => (one === input ? deviations : 0)));
    const both = [at(-STEP), at(STEP)] as const;
    moved.set(input, both);
    return both;
  };
  return close.map(({ ranked, side }, o) => {
    const movers = ranked.slice(0, LOOKED_AT_EACH).map(({ input, isClear }) => {
      const [down, up] = movedBy(input);
      const head = (Math.abs(up[o][side] - down[o][side]) / (2 * STEP)) * DOUBT;
      return {
        input,
        isClear,
        sway: { ...asDoubted(input), head: Number.isFinite(head) ? head : undefined },
      };
    });
    const most = movers.reduce((greatest, { sway }) => Math.max(greatest, sway.head ?? 0), 0);
    // What decides without moving the head much decides otherwise: a hump that may stand above the water.
    const first = (mover: (typeof movers)[number]) => mover.isClear && (mover.sway.head ?? 0) < UNSEEN * most;
    return movers.sort(
      (x, y) => Number(first(y)) - Number(first(x)) || (y.sway.head ?? 0) - (x.sway.head ?? 0),
    );
  });
}

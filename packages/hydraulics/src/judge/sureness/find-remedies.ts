import { type Rung, rungsOf } from "./doubt-ladder.js";
import type { Input } from "./doubted-inputs.js";
import type { Better, Remedy } from "./measuring.js";
import type { Sampler } from "./sample-verdicts.js";
import { tallyVerdicts } from "./tally.js";

/** Inputs of one drinker that are tried, the weightiest first. */
const TRIED_EACH = 3;
/** Inputs and pairs of inputs of a plan that are tried at most. */
const TRIED_IN_ALL = 8;

/** A close call to be made sure: a drinker by index, with its inputs, the weightiest first. */
export interface Open {
  readonly drinker: number;
  readonly ranked: readonly Input[];
}

export interface RemedyOptions {
  readonly samples: number;
  readonly most: number;
  /** Told after each measurement tried, with how many there are. */
  readonly tried?: (done: number, of: number) => void;
}

/** For every close call what makes it sure, found by trying: the same plans again, with that one thing less in doubt. */
export function findRemedies(
  sampler: Sampler,
  baseline: readonly number[],
  open: readonly Open[],
  options: RemedyOptions,
): ReadonlyMap<number, Remedy> {
  const singles = chooseSingles(open);
  const found = new Map<number, Better[]>(open.map(({ drinker }) => [drinker, []]));
  const search = (inputs: readonly Input[], asking: readonly Open[]) =>
    climb(
      sampler,
      baseline,
      inputs,
      asking.map(({ drinker }) => drinker),
      options,
    );
  singles.forEach((input, k) => {
    options.tried?.(k, singles.length + 1);
    const asking = open.filter(({ ranked }) => ranked.slice(0, TRIED_EACH).includes(input));
    for (const [drinker, [better]] of search([input], asking)) found.get(drinker)?.push(better);
  });
  const remedies = new Map<number, Remedy>();
  for (const { drinker, ranked } of open) {
    const [better, ...or] = inOrder(found.get(drinker) ?? [], ranked);
    if (better !== undefined) remedies.set(drinker, { kind: "one", better, or });
  }
  const without = open.filter(({ drinker, ranked }) => !remedies.has(drinker) && ranked.length > 1);
  for (const pair of choosePairs(without)) {
    const asking = without.filter(({ ranked }) => ranked[0] === pair[0] && ranked[1] === pair[1]);
    for (const [drinker, [one, other]] of search(pair, asking))
      remedies.set(drinker, { kind: "two", better: [one, other] });
  }
  for (const { drinker } of open) if (!remedies.has(drinker)) remedies.set(drinker, { kind: "none" });
  return remedies;
}

/** Inputs that weigh most with most of the drinkers. */
function chooseSingles(open: readonly Open[]): Input[] {
  const weight = new Map<Input, number>();
  for (const { ranked } of open)
    ranked.slice(0, TRIED_EACH).forEach((input, rank) => {
      if (rungsOf(input).length > 0) weight.set(input, (weight.get(input) ?? 0) + 1 / (1 + rank));
    });
  return [...weight]
    .sort((a, b) => b[1] - a[1])
    .slice(0, TRIED_IN_ALL)
    .map(([input]) => input);
}

function choosePairs(open: readonly Open[]): (readonly [Input, Input])[] {
  const pairs = new Map<string, readonly [Input, Input]>();
  for (const { ranked } of open) {
    const [one, other] = ranked;
    if (rungsOf(one).length > 0 && rungsOf(other).length > 0)
      pairs.set(`${one.key} ${other.key}`, [one, other]);
  }
  return [...pairs.values()].slice(0, TRIED_IN_ALL);
}

const inOrder = (betters: readonly Better[], ranked: readonly Input[]): Better[] => {
  const place = ({ input }: Better) => ranked.findIndex((one) => one.input === input);
  return [...betters].sort((a, b) => place(a) - place(b));
};

/**
 * The largest doubt of these inputs, each on the rung of the same number from the best, with which a verdict is sure:
 * by halving, all drinkers that ask for the same rung at once.
 *
 * @returns by drinker, one for each input; no entry where the best measurement is not enough
 */
function climb(
  sampler: Sampler,
  baseline: readonly number[],
  inputs: readonly Input[],
  drinkers: readonly number[],
  options: RemedyOptions,
): Map<number, Better[]> {
  const ladders = inputs.map(rungsOf);
  const highest = Math.max(...ladders.map(({ length }) => length)) - 1;
  const rungOf = (ladder: readonly Rung[], rung: number) => ladder[Math.min(rung, ladder.length - 1)];
  const sureAt = (rung: number, among: readonly number[]): number[] => {
    const keeping = new Float64Array(sampler.inputs.length).fill(1);
    inputs.forEach((input, k) => {
      keeping[sampler.inputs.indexOf(input)] = rungOf(ladders[k], rung).keeps;
    });
    const tallies = tallyVerdicts(sampler, baseline, { ...options, among, keeping: { inputs: keeping } });
    return among.filter((_, a) => tallies[a].certainty.kind === "sure");
  };
  const betters = new Map<number, Better[]>();
  /** All of `among` are sure on rung `low`, and none above `high`. */
  const halve = (low: number, high: number, among: readonly number[]): void => {
    if (among.length === 0) return;
    if (low === high) {
      for (const drinker of among) betters.set(drinker, inputs.map(betterAt(low)));
      return;
    }
    const middle = Math.ceil((low + high) / 2);
    const sure = sureAt(middle, among);
    halve(middle, high, sure);
    halve(
      low,
      middle - 1,
      among.filter((drinker) => !sure.includes(drinker)),
    );
  };
  const betterAt =
    (rung: number) =>
    (input: Input, k: number): Better => ({
      input: input.input,
      doubt: input.doubt,
      needed: rungOf(ladders[k], rung).doubt,
    });
  halve(0, highest, sureAt(0, drinkers));
  return betters;
}

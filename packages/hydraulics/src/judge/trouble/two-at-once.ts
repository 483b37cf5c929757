import { logOfSum } from "../../numerics/shares.js";
import type { Question } from "./ask-about-trouble.js";
import type { Candidate, Cause, Supposed } from "./cause.js";
import { logChanceOf, logChanceOfAny } from "./chances.js";
import { expectTrial } from "./expect-trial.js";
import { mergeTrials } from "./merge-trials.js";
import type { Sign } from "./signs.js";
import type { NamedCause, TwoAtOnce } from "./trouble-result.js";
import { fitOfSign, SAME_FIT, type SignFit, splitByFit, type Weighed } from "./weigh.js";

/** One cause leaves a sign badly explained where another makes it this many times as likely; common practice, no source. */
const BADLY = 10;
/**
 * Of all times something is wrong, a second thing is as well in so many; and what stops one drinker often stops another:
 * the same kind again is so many times as likely. Common practice, no source.
 */
const SECOND = { share: 0.2, sameKind: 5 } as const;
/** States that are put together, and pairs of these that are solved; of one pair of causes at most so many. */
const MOST = { states: 300, solved: 60, ofPair: 3 } as const;
/** A pair that holds less than this is not told. */
const LEAST_SHARE = 0.05;

/** All causes alone, held against the signs, and the share of the first that is listed of them. */
export interface Alone {
  readonly weighed: readonly Weighed[];
  readonly firstShare: number;
}

/** A state of one cause, with what it makes of each sign. */
interface One {
  readonly candidate: Candidate;
  readonly state: Supposed;
  /** Logarithm of its weight before any sign. */
  readonly log: number;
  /** By sign: logarithm of its chance. */
  readonly chances: readonly number[];
}

/** Two of them, solved together. */
interface Solved {
  readonly a: One;
  readonly b: One;
  readonly log: number;
  readonly chances: readonly number[];
}

/**
 * The likeliest two things wrong at once, tried only where the likeliest one leaves a sign badly explained. Pairs are
 * chosen by an estimate, each sign as of that one of both that changes it more, and then solved together.
 *
 * @param alone  all causes, each alone
 * @returns undefined where one cause explains every sign, or no pair holds a twentieth
 */
export function twoAtOnce(question: Question, alone: Alone, signs: readonly Sign[]): TwoAtOnce | undefined {
  const { weighed } = alone;
  const unexplained = signsLeft(question, weighed, signs);
  if (unexplained.length === 0) return undefined;
  const solved = likeliestPairs(statesToPair(question, weighed, signs), question, signs).flatMap(
    ({ a, b }): Solved[] => {
      const trial = mergeTrials(question.bench, a.state.trial, b.state.trial);
      if (trial === undefined) return [];
      const expectation = expectTrial(question.bench, trial, question.usual);
      const chances = signs.map((sign) => logChanceOf(sign, expectation, question.seen));
      return [{ a, b, log: a.log + b.log + sum(chances), chances }];
    },
  );
  return solved.length === 0 ? undefined : likeliestOf(solved, alone, signs, unexplained);
}

const sum = (values: readonly number[]) => values.reduce((total, one) => total + one, 0);

/** Signs that the likeliest cause leaves badly explained; all where that is none of those tried. */
function signsLeft({ seen }: Question, weighed: readonly Weighed[], signs: readonly Sign[]): Sign[] {
  const first = weighed.reduce((most, one) => (one.share > most.share ? one : most));
  if (first.candidate.states.length === 0) return [...signs];
  return signs.filter((sign) => {
    const alone = fitOfSign(first, sign, seen);
    return weighed.some((one) => fitOfSign(one, sign, seen) > BADLY * alone);
  });
}

/** The states that make most of what is seen likelier than the plan as it should be does. */
function statesToPair({ usual, seen }: Question, weighed: readonly Weighed[], signs: readonly Sign[]): One[] {
  const asUsual = signs.map((sign) => logChanceOf(sign, usual, seen));
  const states = weighed
    .filter(({ candidate }) => candidate.cause.code !== "asDesigned")
    .flatMap(({ candidate }) =>
      candidate.states.map((state): One & { readonly gains: number } => {
        const chances = signs.map((sign) => logChanceOf(sign, state.expectation, seen));
        const log = Math.log(candidate.prior * state.weight);
        const gains = log + sum(chances.map((chance, k) => Math.max(0, chance - asUsual[k])));
        return { candidate, state, log, chances, gains };
      }),
    );
  return states.sort((a, b) => b.gains - a.gains).slice(0, MOST.states);
}

/** Pairs by their estimate, best first. */
function likeliestPairs(ones: readonly One[], { usual, seen }: Question, signs: readonly Sign[]) {
  const asUsual = signs.map((sign) => logChanceOf(sign, usual, seen));
  const pairs: { a: One; b: One; log: number }[] = [];
  for (let i = 0; i < ones.length; i += 1)
    for (let j = i + 1; j < ones.length; j += 1) {
      const [a, b] = [ones[i], ones[j]];
      if (a.candidate === b.candidate) continue;
      let log = a.log + b.log;
      for (let k = 0; k < asUsual.length; k += 1) {
        const [byA, byB] = [a.chances[k], b.chances[k]];
        log += Math.abs(byA - asUsual[k]) >= Math.abs(byB - asUsual[k]) ? byA : byB;
      }
      pairs.push({ a, b, log });
    }
  pairs.sort((one, other) => other.log - one.log);
  const counts = new Map<string, number>();
  const chosen: typeof pairs = [];
  for (const pair of pairs) {
    if (chosen.length === MOST.solved) break;
    const key = keyOf(pair);
    const count = counts.get(key) ?? 0;
    if (count === MOST.ofPair) continue;
    counts.set(key, count + 1);
    chosen.push(pair);
  }
  return chosen;
}

const nameOf = ({ code, at, id }: Cause): string => `${code} ${at} ${id}`;
const keyOf = ({ a, b }: { readonly a: One; readonly b: One }): string =>
  [a, b]
    .map(({ candidate }) => nameOf(candidate.cause))
    .sort()
    .join(" and ");

/** Held against all causes alone, each pair as the sum of its solved states. */
function likeliestOf(
  solved: readonly Solved[],
  { weighed, firstShare }: Alone,
  signs: readonly Sign[],
  unexplained: readonly Sign[],
): TwoAtOnce | undefined {
  const alone = weighed.map(({ candidate, logFit }) => Math.log(candidate.prior) + logFit);
  const priors = weighed.reduce((total, { candidate }) => total + candidate.prior, 0);
  const byPair = new Map<string, Solved[]>();
  for (const one of solved) byPair.set(keyOf(one), [...(byPair.get(keyOf(one)) ?? []), one]);
  const pairs = [...byPair.values()]
    .map((states) => ({ states, log: together(states[0], priors) + logOfSum(states.map(({ log }) => log)) }))
    .sort((one, other) => other.log - one.log);
  const whole = logOfSum([...alone, ...pairs.map(({ log }) => log)]);
  const kin = pairs.filter(
    ({ states, log }) => log >= pairs[0].log - SAME_FIT && isKin(pairs[0].states[0], states[0]),
  );
  const share = kin.reduce((total, { log }) => total + Math.exp(log - whole), 0);
  if (share < LEAST_SHARE) return undefined;
  return {
    causes: namedCauses(
      kin.map(({ states }) => states),
      weighed,
    ),
    share,
    aloneShare: firstShare * Math.exp(logOfSum(alone) - whole),
    unexplained,
    ...fitsOf(pairs[0].states, signs),
    tried: solved.length,
  };
}

/** Logarithm of how much likelier two are than the product of their priors; either may have come first. */
function together({ a, b }: Solved, priors: number): number {
  const isSameKind = a.candidate.cause.code === b.candidate.cause.code;
  return Math.log((2 * SECOND.share * (isSameKind ? SECOND.sameKind : 1)) / priors);
}

/** Of the same two kinds, and one of both the same cause: the place of the other is not told apart. */
function isKin(one: Solved, other: Solved): boolean {
  const codes = ({ a, b }: Solved) =>
    [a, b]
      .map(({ candidate }) => candidate.cause.code)
      .sort()
      .join();
  const names = new Set([one.a, one.b].map(({ candidate }) => nameOf(candidate.cause)));
  return (
    codes(one) === codes(other) &&
    [other.a, other.b].some(({ candidate }) => names.has(nameOf(candidate.cause)))
  );
}

/** The two causes, that first which is the likelier alone; of either the places that are not told apart. */
function namedCauses(
  kin: readonly (readonly Solved[])[],
  weighed: readonly Weighed[],
): readonly [NamedCause, NamedCause] {
  const best = kin[0].reduce((most, one) => (one.log > most.log ? one : most));
  const shareOf = ({ candidate }: One) => weighed.find((one) => one.candidate === candidate)?.share ?? 0;
  const [first, second] = [best.a, best.b].sort((a, b) => shareOf(b) - shareOf(a));
  const others = kin.flatMap(([state]) => [state.a, state.b]);
  const named = (one: One, partner: One): NamedCause => {
    const { code, at, id } = one.candidate.cause;
    const places = others
      .filter(({ candidate }) => candidate !== partner.candidate && candidate.cause.code === code)
      .sort((x, y) => x.candidate.cause.index - y.candidate.cause.index)
      .map(({ candidate }) => candidate.cause.id);
    return {
      code,
      at,
      places: [...new Set(places.length === 0 ? [id] : places)],
      severity: one.state.severity,
    };
  };
  return [named(first, second), named(second, first)];
}

function fitsOf(states: readonly Solved[], signs: readonly Sign[]) {
  const whole = logOfSum(states.map(({ log }) => log));
  const ratios = signs.map((sign, k): SignFit => {
    const chance = states.reduce((total, { log, chances }) => total + Math.exp(log - whole + chances[k]), 0);
    return { sign, ratio: chance / Math.exp(logChanceOfAny(sign)) };
  });
  return splitByFit(ratios);
}

import { logOfSum, sharesOfLogs } from "../../numerics/shares.js";
import type { Candidate, Cause, Supposed } from "./cause.js";
import { chancesOf, logChanceOf, logChanceOfAny, type Seen } from "./chances.js";
import { ANSWERS, type Look, type Sign } from "./signs.js";

/** A cause after the signs were held against it. */
export interface Weighed {
  readonly candidate: Candidate;
  /** Share among all causes. */
  readonly share: number;
  /** Logarithm of the chance of all signs together under this cause. */
  readonly logFit: number;
  /** By state: its share of the cause. */
  readonly stateShares: readonly number[];
}

/**
 * Holds every cause against the signs: Bayes' rule on the chances the solver and the observation model give, each
 * sign taken by itself once the state is given.
 *
 *   share(cause) ~ prior(cause) * sum over its states w(state) * product over signs P(sign | state)
 */
export function weighCauses(candidates: readonly Candidate[], signs: readonly Sign[], seen: Seen): Weighed[] {
  const fits = candidates.map((candidate) => fitOf(candidate, signs, seen));
  const shares = sharesOfLogs(fits.map(({ logFit }, i) => Math.log(candidates[i].prior) + logFit));
  return candidates.map((candidate, i) => ({ candidate, share: shares[i], ...fits[i] }));
}

function fitOf({ states }: Candidate, signs: readonly Sign[], seen: Seen) {
  if (states.length === 0)
    return { logFit: signs.reduce((sum, sign) => sum + logChanceOfAny(sign), 0), stateShares: [] };
  const logs = states.map(({ weight, expectation }) =>
    signs.reduce((sum, sign) => sum + logChanceOf(sign, expectation, seen), Math.log(weight)),
  );
  return { logFit: logOfSum(logs), stateShares: sharesOfLogs(logs) };
}

/** Chance of each answer to a look under a cause, its states weighed by the signs so far. */
export function chancesUnder({ candidate, stateShares }: Weighed, look: Look, seen: Seen): number[] {
  const sum = new Array<number>(ANSWERS[look.look].length).fill(0);
  let total = 0;
  candidate.states.forEach(({ expectation }, s) => {
    if (stateShares[s] < LEAST_STATE) return;
    total += stateShares[s];
    chancesOf(look, expectation, seen).forEach((p, k) => {
      sum[k] += stateShares[s] * p;
    });
  });
  return sum.map((p) => p / total);
}

/** States that hold less of their cause than this are not asked what a look would show; of some hundreds one always holds more. */
const LEAST_STATE = 1e-4;

/** How a sign sits with a cause: the chance it gives the sign, over that of knowing nothing. */
export function fitOfSign({ candidate, stateShares }: Weighed, sign: Sign, seen: Seen): number {
  const { states } = candidate;
  if (states.length === 0) return 1;
  const chance = states.reduce(
    (sum, { expectation }, s) => sum + stateShares[s] * Math.exp(logChanceOf(sign, expectation, seen)),
    0,
  );
  return chance / Math.exp(logChanceOfAny(sign));
}

/** How a sign sits with a cause. */
export interface SignFit {
  readonly sign: Sign;
  /** The chance this cause gives the sign, over that of knowing nothing. */
  readonly ratio: number;
}

/** Ratios beyond which a sign is said to speak for a cause, or not to fit it; common practice, no source. */
const SPEAKS_FOR = 1.25;
const DOES_NOT_FIT = 0.5;

/** Signs that speak for a cause, and that do not fit it, strongest first. */
export const splitByFit = (ratios: readonly SignFit[]): Record<"fits" | "against", readonly SignFit[]> => ({
  fits: ratios.filter(({ ratio }) => ratio >= SPEAKS_FOR).sort((a, b) => b.ratio - a.ratio),
  against: ratios.filter(({ ratio }) => ratio < DOES_NOT_FIT).sort((a, b) => a.ratio - b.ratio),
});

/** The most likely of a cause's states. */
export function likeliestState({ candidate, stateShares }: Weighed): Supposed | undefined {
  let best = 0;
  for (let s = 1; s < stateShares.length; s += 1) if (stateShares[s] > stateShares[best]) best = s;
  return candidate.states[best];
}

/** Logarithms of fit this near are no difference. */
export const SAME_FIT = 0.1;

/** Causes of one kind that the signs so far do not tell apart, taken together: one of these. */
export interface Alike {
  readonly members: readonly Weighed[];
  readonly share: number;
}

/** Takes causes of one kind and as good a fit together; likeliest first. */
export function groupAlike(weighed: readonly Weighed[]): Alike[] {
  const byFit = [...weighed].sort((a, b) => b.logFit - a.logFit);
  const groups: Weighed[][] = [];
  for (const one of byFit) {
    const kin = groups.find(([first]) => isAlike(first, one));
    if (kin === undefined) groups.push([one]);
    else kin.push(one);
  }
  return groups
    .map((members) => ({
      members: inOrder(members),
      share: members.reduce((sum, { share }) => sum + share, 0),
    }))
    .sort((a, b) => b.share - a.share);
}

const isAlike = (a: Weighed, b: Weighed) =>
  a.candidate.cause.code === b.candidate.cause.code &&
  a.candidate.cause.at === b.candidate.cause.at &&
  Math.abs(a.logFit - b.logFit) <= SAME_FIT;

const inOrder = (members: readonly Weighed[]) =>
  [...members].sort((a, b) => placeOf(a.candidate.cause) - placeOf(b.candidate.cause));
const placeOf = ({ index }: Cause) => index;

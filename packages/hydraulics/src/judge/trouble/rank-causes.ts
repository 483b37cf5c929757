import type { Question } from "./ask-about-trouble.js";
import type { Bench } from "./bench.js";
import type { CausesTried } from "./causes-of.js";
import { placeIndex, type Seen } from "./chances.js";
import { expectTrial } from "./expect-trial.js";
import type { Expectation } from "./expectation.js";
import { looksAt } from "./looks-at.js";
import { isTold, type Looking, lookAmong, looksBetween, looksLeft } from "./next-look.js";
import type { Sign } from "./signs.js";
import type { LikelyCause, Trouble } from "./trouble-result.js";
import { twoAtOnce } from "./two-at-once.js";
import { withEmptySource } from "./water-causes.js";
import {
  type Alike,
  fitOfSign,
  groupAlike,
  likeliestState,
  type SignFit,
  splitByFit,
  weighCauses,
} from "./weigh.js";

/** Causes that hold less than this are not listed. */
const LEAST_SHARE = 0.01;
const MOST_LISTED = 8;
const MOST_LOOKS = 3;

/**
 * Holds causes against signs, and chooses what to look at next.
 *
 * @param options.two  whether two at once are tried where one leaves a sign badly explained
 */
export function rankCauses(
  question: Question,
  causes: CausesTried,
  signs: readonly Sign[],
  { two = true } = {},
): Trouble {
  const { bench, usual, seen, digest } = question;
  const { candidates, tried, drinkersTried } = causes;
  const { kept, setAside } = setEmptyAside(bench, signs, usual, seen);
  const weighed = weighCauses(candidates, kept, seen);
  const groups = groupAlike(weighed);
  const listed = groups.filter(({ share }, k) => k === 0 || share >= LEAST_SHARE).slice(0, MOST_LISTED);
  const looking: Looking = {
    looks: looksLeft(looksAt(bench.line, listed), signs),
    seen,
    isEmpty: signs.some((sign) => sign.look === "water" && sign.sees === "empty"),
  };
  const [first, second] = listed;
  const between = second === undefined ? [] : looksBetween(first, second, looking);
  return {
    plan: { digest },
    signs,
    setAside,
    likely: listed.map((group) => likelyCause(group, kept, seen)),
    otherShare: Math.max(0, 1 - listed.reduce((sum, { share }) => sum + share, 0)),
    fitsBadly: first.members[0].candidate.cause.code === "somethingElse",
    twoAtOnce: two ? twoAtOnce(question, { weighed, firstShare: groups[0].share }, kept) : undefined,
    nextLook: between[0],
    moreLooks: between.slice(1, 1 + MOST_LOOKS),
    lookAmong: lookAmong(first, looking),
    notToldFromFirst: listed.flatMap((group, k) =>
      k > 0 && group.members[0].candidate.states.length > 0 && !isTold(first, group, looking) ? [k] : [],
    ),
    tried: { causes: candidates.length, states: tried, drinkers: drinkersTried },
    levels: bench.line.sources.map(({ id }, i) => ({ source: id, level: bench.levels[i] })),
  };
}

/** With a source empty its drinkers are dry whatever emptied it: that they are tells nothing of the cause. */
function setEmptyAside(bench: Bench, signs: readonly Sign[], usual: Expectation, seen: Seen) {
  const empty = new Set(
    signs.flatMap((sign) =>
      sign.look === "water" && sign.sees === "empty" ? [placeIndex(sign, seen.places)] : [],
    ),
  );
  if (empty.size === 0) return { kept: signs, setAside: [] };
  const line = [...empty].reduce((cut, source) => withEmptySource(cut, source), bench.line);
  const trial = { weight: 1, severity: {}, line, isAlike: false };
  const { flow } = expectTrial(bench, trial, usual);
  const follows = (sign: Sign) => {
    if (sign.afterFilling === true || (sign.look !== "gives" && sign.look !== "jug")) return false;
    return flow[placeIndex(sign, seen.places)] === 0;
  };
  return { kept: signs.filter((sign) => !follows(sign)), setAside: signs.filter(follows) };
}

function likelyCause({ members, share }: Alike, signs: readonly Sign[], seen: Seen): LikelyCause {
  const best = members.reduce((most, member) => (member.logFit > most.logFit ? member : most));
  const { cause } = best.candidate;
  const ratios = signs.map((sign): SignFit => ({ sign, ratio: fitOfSign(best, sign, seen) }));
  return {
    code: cause.code,
    at: cause.at,
    places: members.map(({ candidate }) => candidate.cause.id),
    share,
    severity: likeliestState(best)?.severity ?? {},
    ...splitByFit(ratios),
  };
}

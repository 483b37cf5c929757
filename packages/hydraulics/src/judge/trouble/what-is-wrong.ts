import { writePlan } from "../../document/check-document.js";
import type { Plan } from "../../document/plan-schema.js";
import { digestOf } from "../../numerics/digest.js";
import { type AskedPlan, askPlan } from "../asked-plan.js";
import { type Bench, benchOf } from "./bench.js";
import { causesOf } from "./causes-of.js";
import { placeIndex, type Seen } from "./chances.js";
import { checkSigns, placesByName } from "./check-signs.js";
import { expectTrial } from "./expect-trial.js";
import type { Expectation } from "./expectation.js";
import { looksAt } from "./looks-at.js";
import { type Looking, lookAmong, looksBetween, looksLeft } from "./next-look.js";
import type { Sign } from "./signs.js";
import type { LikelyCause, SignFit, Trouble, TroubleAnswer } from "./trouble-result.js";
import { withEmptySource } from "./water-causes.js";
import { type Alike, fitOfSign, groupAlike, likeliestState, weighCauses } from "./weigh.js";

export interface TroubleOptions {
  /** The day asked about, "2026-07-04": how old the birds are. Counts where the plan names none. */
  readonly day?: string | undefined;
  /** Where the water stands in each source [m above its inside bottom]; its ordinary level where left out. */
  readonly levels?: readonly (number | undefined)[];
  /** How long ago the sources were last seen with water in them [s]. Default a day. */
  readonly lastSeen?: number;
  /** Called with the share of the work done, from 0 to 1. What it does changes no figure. */
  readonly progress?: (share: number) => void;
}

const DAY = 86_400;
/** Causes that hold less than this are not listed. */
const LEAST_SHARE = 0.01;
const MOST_LISTED = 8;
const MOST_LOOKS = 3;

/**
 * What is likely wrong with a line, from what its keeper sees. Every cause is made from the plan and solved; its
 * signature is held against the signs; what is left over is the share each gets. One thing wrong at a time.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param signs    what is seen; anything may be left out
 * @param options  day, levels
 * @returns the causes, or what in the plan or in the signs does not fit; the same question gives the same answer
 * @throws RangeError when a level is outside its source, or lastSeen is not above 0
 */
export function whatIsWrong(plan: Plan, signs: readonly Sign[], options: TroubleOptions = {}): TroubleAnswer {
  const asking = askPlan(plan, options.day);
  if (!asking.ok) return asking;
  const { line } = asking.asked.judged;
  const places = placesByName(line);
  const problems = checkSigns(signs, places);
  if (problems.length > 0) return { ok: false, problems };
  const bench = benchOf(asking.asked, levelsOf(asking.asked, options.levels ?? []));
  const lastSeen = options.lastSeen ?? DAY;
  if (!(lastSeen > 0)) throw new RangeError(`whatIsWrong: lastSeen is ${lastSeen}; it must be above 0`);
  const asIs = { weight: 1, severity: {}, line, isAlike: true };
  const usual = expectTrial(bench, asIs, undefined);
  const seen: Seen = { usual: { flow: usual.flow, need: line.drinkers.need, lastSeen }, places };
  return { ok: true, trouble: troubleOf({ bench, usual, seen, plan }, signs, options.progress) };
}

function levelsOf({ judged }: AskedPlan, told: readonly (number | undefined)[]): number[] {
  return judged.line.sources.map(({ id, levels }, i) => {
    const level = told[i] ?? levels.ordinary;
    if (!(level >= 0 && level <= levels.full + 1e-9))
      throw new RangeError(`whatIsWrong: level of ${id} is ${level}; it must be from 0 to ${levels.full}`);
    return level;
  });
}

interface Question {
  readonly bench: Bench;
  readonly usual: Expectation;
  readonly seen: Seen;
  readonly plan: Plan;
}

function troubleOf(
  { bench, usual, seen, plan }: Question,
  signs: readonly Sign[],
  progress: TroubleOptions["progress"],
): Trouble {
  const { kept, setAside } = setEmptyAside(bench, signs, usual, seen);
  const { candidates, tried, drinkersTried } = causesOf(bench, usual, signs, progress);
  const groups = groupAlike(weighCauses(candidates, kept, seen));
  const listed = groups.filter(({ share }, k) => k === 0 || share >= LEAST_SHARE).slice(0, MOST_LISTED);
  const looking: Looking = {
    looks: looksLeft(looksAt(bench.line, listed), signs),
    seen,
    isEmpty: signs.some((sign) => sign.look === "water" && sign.sees === "empty"),
  };
  const [first, second] = listed;
  const between = second === undefined ? [] : looksBetween(first, second, looking);
  return {
    plan: { digest: digestOf(writePlan(plan)) },
    signs,
    setAside,
    likely: listed.map((group) => likelyCause(group, kept, seen)),
    otherShare: Math.max(0, 1 - listed.reduce((sum, { share }) => sum + share, 0)),
    fitsBadly: first.members[0].candidate.cause.code === "somethingElse",
    nextLook: between[0],
    moreLooks: between.slice(1, 1 + MOST_LOOKS),
    lookAmong: lookAmong(first, looking),
    notToldFromFirst: listed.flatMap((group, k) =>
      k > 0 &&
      group.members[0].candidate.states.length > 0 &&
      looksBetween(first, group, looking).length === 0
        ? [k]
        : [],
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
  const levels = bench.levels.map((level, i) =>
    empty.has(i) ? Math.min(level, bench.line.sources[i].outlet) : level,
  );
  const line = [...empty].reduce((cut, source) => withEmptySource(cut, source), bench.line);
  const trial = { weight: 1, severity: {}, line, isAlike: false, levels };
  const { flow } = expectTrial(bench, trial, usual);
  const follows = (sign: Sign) => {
    if (sign.look !== "gives" && sign.look !== "jug") return false;
    return flow[placeIndex(sign, seen.places)] === 0;
  };
  return { kept: signs.filter((sign) => !follows(sign)), setAside: signs.filter(follows) };
}

/** Ratios beyond which a sign is said to speak for a cause, or not to fit it; common practice, no source. */
const SPEAKS_FOR = 1.25;
const DOES_NOT_FIT = 0.5;

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
    fits: ratios.filter(({ ratio }) => ratio >= SPEAKS_FOR).sort((a, b) => b.ratio - a.ratio),
    against: ratios.filter(({ ratio }) => ratio < DOES_NOT_FIT).sort((a, b) => a.ratio - b.ratio),
  };
}

import { expectedInformation } from "../../numerics/shares.js";
import type { Seen } from "./chances.js";
import { ANSWERS, keyOfLook, type Look, type Looked, type Sign } from "./signs.js";
import { type Alike, chancesUnder, type Weighed } from "./weigh.js";

/** A look that would tell something, and how much on average. */
export interface UsefulLook {
  readonly look: Look;
  /** Between the two it is asked about [bit]: 1 tells them apart for sure, 0 not at all. */
  readonly information: number;
  /** What each answer would speak for. */
  readonly answers: readonly LookAnswer[];
  /** Whether an empty source has to be filled for it first. */
  readonly afterFilling: boolean;
}

/**
 * One answer to a look: how likely each of the first two causes gives it, and how sure the first would then be.
 */
export interface LookAnswer {
  readonly sees: string;
  /** Chance of this answer under the first cause, and under the second. */
  readonly chances: readonly [number, number];
  /** Share of the first of the two after this answer. */
  readonly firstShare: number;
}

/**
 * How readily each look is taken, against the others: a glance is worth more than a night's wait; common practice, no
 * source. It only chooses between looks that tell about as much.
 */
const READINESS: Readonly<Record<Looked, number>> = {
  gives: 1,
  drips: 1,
  ground: 1,
  water: 1,
  lid: 0.95,
  end: 0.85,
  night: 0.75,
  day: 0.65,
};

/** Looks at water that flows or stands; where a source was found empty, it has to be filled for them first. */
const NEEDS_WATER: ReadonlySet<Looked> = new Set(["gives", "drips", "night", "day", "lid", "end"]);
const AFTER_FILLING = 0.5;

/** Looks that can still be taken, and with what. */
export interface Looking {
  readonly looks: readonly Look[];
  readonly seen: Seen;
  /** Whether a source was found empty. */
  readonly isEmpty: boolean;
}

const worthOf = ({ look, information, afterFilling }: UsefulLook) =>
  information * READINESS[look.look] * (afterFilling ? AFTER_FILLING : 1);

/** Below this nothing is told [bit]: causes whose best look tells no more are alike by nature. */
const TELLS_NOTHING = 0.03;

/**
 * The looks that tell two causes apart, best first: mutual information between the answer and which of the two it is,
 * evenly weighed, so that the look is chosen for what it tells and not for what is already believed.
 */
export function looksBetween(first: Alike, second: Alike, { looks, seen, isEmpty }: Looking): UsefulLook[] {
  const useful = looks.flatMap((look): UsefulLook[] => {
    const chances = [mixedChances(first, look, seen), mixedChances(second, look, seen)] as const;
    const information = expectedInformation([0.5, 0.5], chances);
    if (information < TELLS_NOTHING) return [];
    const afterFilling = isEmpty && NEEDS_WATER.has(look.look);
    return [{ look, information, answers: answersOf(look, chances), afterFilling }];
  });
  return useful.sort((a, b) => worthOf(b) - worthOf(a));
}

/** Whether some look tells two causes apart. */
export const isTold = (first: Alike, second: Alike, { looks, seen }: Looking): boolean =>
  looks.some((look) => {
    const chances = [mixedChances(first, look, seen), mixedChances(second, look, seen)];
    return expectedInformation([0.5, 0.5], chances) >= TELLS_NOTHING;
  });

function answersOf(look: Look, [one, other]: readonly [readonly number[], readonly number[]]): LookAnswer[] {
  return ANSWERS[look.look].map((sees, k) => ({
    sees,
    chances: [one[k], other[k]],
    firstShare: one[k] / (one[k] + other[k]),
  }));
}

/** Of many places alike, so many stand for all. */
const MOST_MEMBERS = 8;

/** Chances of the answers were it one of these, each as likely as the signs have it. */
function mixedChances({ members }: Alike, look: Look, seen: Seen): number[] {
  const sum = new Array<number>(ANSWERS[look.look].length).fill(0);
  const some = evenlyOf(members);
  const total = some.reduce((all, { share }) => all + share, 0);
  for (const member of some) {
    const weight = total > 0 ? member.share / total : 1 / some.length;
    chancesOrAny(member, look, seen).forEach((p, k) => {
      sum[k] += weight * p;
    });
  }
  return sum;
}

/** All, or as many as stand for all, evenly among them. */
function evenlyOf(members: readonly Weighed[]): readonly Weighed[] {
  if (members.length <= MOST_MEMBERS) return members;
  return Array.from(
    { length: MOST_MEMBERS },
    (_, k) => members[Math.floor(((k + 0.5) * members.length) / MOST_MEMBERS)],
  );
}

/** What no state foretells may be anything. */
const chancesOrAny = (member: Weighed, look: Look, seen: Seen): number[] =>
  member.candidate.states.length === 0
    ? ANSWERS[look.look].map(() => 1 / ANSWERS[look.look].length)
    : chancesUnder(member, look, seen);

/** The look that tells most about which one of causes taken together it is [bit over their shares]. */
export function lookAmong(
  { members, share }: Alike,
  { looks, seen, isEmpty }: Looking,
): UsefulLook | undefined {
  if (members.length < 2 || share <= 0) return undefined;
  const shares = members.map((member) => member.share / share);
  let best: UsefulLook | undefined;
  for (const look of looks) {
    // An end is opened to find what a run does; each costs a solve for every place.
    if (look.look === "end" && members.length > MOST_MEMBERS) continue;
    const information = expectedInformation(
      shares,
      members.map((member) => chancesOrAny(member, look, seen)),
    );
    const found = { look, information, answers: [], afterFilling: isEmpty && NEEDS_WATER.has(look.look) };
    if (information >= TELLS_NOTHING && (best === undefined || worthOf(found) > worthOf(best))) best = found;
  }
  return best;
}

/** Looks not yet taken. */
export function looksLeft(looks: readonly Look[], signs: readonly Sign[]): Look[] {
  const taken = new Set(signs.flatMap((sign) => [keyOfLook(sign), ...alsoTaken(sign)]));
  return looks.filter((look) => !taken.has(keyOfLook(look)));
}

/** A jug answers what a look at the drinker would. */
const alsoTaken = (sign: Sign): string[] =>
  sign.look === "jug" ? [keyOfLook({ look: "gives", at: "drinker", id: sign.id })] : [];

import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import { type Random, randomFrom } from "../../numerics/random.js";
import { askAboutTrouble, type Question } from "./ask-about-trouble.js";
import type { Cause, CauseCode } from "./cause.js";
import { type CausesTried, causesOf } from "./causes-of.js";
import { logChanceOf } from "./chances.js";
import { expectTrial } from "./expect-trial.js";
import type { Expectation } from "./expectation.js";
import { rankCauses } from "./rank-causes.js";
import { answerOfKeeper } from "./rehearse-keeper.js";
import { asBuilt, type Maker, mayHappen, type Truth } from "./rehearse-truth.js";
import type { Look, Sign } from "./signs.js";
import type { LikelyCause, Trouble } from "./trouble-result.js";

/** How many rehearsals, and their seed. */
export interface RehearseOptions {
  readonly seed?: number;
  /** Faults to make. Default 100. */
  readonly count?: number;
  readonly day?: string | undefined;
}

/** One fault made, looked at by a keeper who errs, and looked for. */
export interface Rehearsed {
  readonly truth: Cause;
  /** Signs told; none when nothing the keeper looked at showed that anything is wrong. */
  readonly signs: number;
  /** Where the true cause stands among the likely ones, from 0; -1 when it is not listed. */
  readonly rank: number;
  /** Where the true kind of cause stands, whatever its place. */
  readonly kindRank: number;
  /** The likeliest cause. */
  readonly first: CauseCode;
  readonly firstShare: number;
  /** Whether no look tells the true cause from the first one. */
  readonly isAlikeByNature: boolean;
  /** The rank once the one look was taken and its answer told. */
  readonly rankAfterLook: number;
}

/** Causes made to happen and looked for, or what in the plan contradicts itself. */
export type Rehearsal =
  | { readonly ok: true; readonly cases: readonly Rehearsed[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * How well what is wrong with a plan can be told: faults are made one after another in lines built a little
 * differently from the plan, most of them at severities of their own; a keeper looks at some places and errs now and
 * then; and what
 * is told is held against what was done. Seeded: the same seed gives the same rehearsal.
 *
 * @example rehearseTrouble(small, { seed: 1, count: 3 }).cases.length   // 3
 */
export function rehearseTrouble(plan: Plan, options: RehearseOptions = {}): Rehearsal {
  const { seed = 1, count = 100, day } = options;
  const asking = askAboutTrouble(plan, { day });
  if (!asking.ok) return asking;
  const { question } = asking;
  const causes = causesEverywhere(question);
  const random = randomFrom(seed);
  const kinds = byKind(question);
  const cases = Array.from({ length: count }, () => {
    const truth = drawTruth(kinds, question, random);
    return rehearseOne(question, causes, truth, random);
  });
  return { ok: true, cases };
}

/** Places next to every drinker are tried, as they are where a keeper tells of it. */
export function causesEverywhere({ bench, usual }: Question): CausesTried {
  const looked = bench.line.drinkers.id
    .slice(0, 64)
    .map((id): Sign => ({ look: "gives", at: "drinker", id, sees: "fine" }));
  return causesOf(bench, usual, looked);
}

/** What can be made to happen, by its kind. */
export function byKind({ bench }: Question): Maker[][] {
  const kinds = new Map<CauseCode, Maker[]>();
  for (const make of mayHappen(bench)) {
    const { code } = make(bench, randomFrom(1)).cause;
    kinds.set(code, [...(kinds.get(code) ?? []), make]);
  }
  return [...kinds.values()];
}

/** A kind first, then the place, so that a line of many drinkers does not only rehearse drinkers. */
function drawTruth(kinds: readonly (readonly Maker[])[], { bench }: Question, random: Random): Truth {
  const same = kinds[random.integerBelow(kinds.length)];
  return same[random.integerBelow(same.length)](asBuilt(bench, random), random);
}

/** Signs show a fault when it makes them so much likelier than the plan as it should be does. */
export const SHOWS = 3;

function shows({ usual, seen }: Question, truth: Expectation, told: readonly Sign[]): boolean {
  const over = told.reduce(
    (sum, sign) => sum + logChanceOf(sign, truth, seen) - logChanceOf(sign, usual, seen),
    0,
  );
  return over > Math.log(SHOWS);
}

function rehearseOne(question: Question, causes: CausesTried, truth: Truth, random: Random): Rehearsed {
  const { seen } = question;
  const expectation = trueExpectation(question, truth);
  const told = tellSome(question, expectation, random);
  if (!shows(question, expectation, told)) return unseen(truth.cause);
  const trouble = rankCauses(question, causes, told, { two: false });
  const rank = rankOf(truth.cause, trouble);
  const more = trouble.nextLook;
  const after =
    more === undefined
      ? trouble
      : rankCauses(
          question,
          causes,
          [
            ...told,
            { ...answerOfKeeper(more.look, expectation, seen, random), afterFilling: more.afterFilling },
          ],
          { two: false },
        );
  const [first] = trouble.likely;
  return {
    truth: truth.cause,
    signs: told.length,
    rank,
    kindRank: trouble.likely.findIndex(({ code }) => code === truth.cause.code),
    first: first.code,
    firstShare: first.share,
    isAlikeByNature: rank > 0 && trouble.notToldFromFirst.includes(rank),
    rankAfterLook: rankOf(truth.cause, after),
  };
}

const unseen = (truth: Cause): Rehearsed => ({
  truth,
  signs: 0,
  rank: -1,
  kindRank: -1,
  first: "somethingElse",
  firstShare: 0,
  isAlikeByNature: false,
  rankAfterLook: -1,
});

/** What really shows: the fault in the line as built, against what the plan has its keeper expect. */
function trueExpectation({ usual }: Question, { bench, trial }: Truth): Expectation {
  return expectTrial(bench, trial, usual);
}

const rankOf = ({ code, at, id }: Cause, { likely }: Trouble): number =>
  likely.findIndex((one: LikelyCause) => one.code === code && one.at === at && one.places.includes(id));

/** The looks a keeper takes on a round: some drinkers, more or less of the rest. */
export function tellSome({ bench, seen }: Question, truth: Expectation, random: Random): Sign[] {
  const { drinkers, runs, sources } = bench.line;
  const share = Math.min(0.6, 16 / Math.max(1, drinkers.count));
  const looks: Look[] = [];
  const maybe = (chance: number, look: Look) => {
    if (random.uniform() < chance) looks.push(look);
  };
  for (const id of drinkers.id) {
    if (random.uniform() >= share) continue;
    looks.push({ look: "gives", at: "drinker", id });
    maybe(0.5, { look: "drips", at: "drinker", id });
  }
  for (const { id } of sources) {
    maybe(0.7, { look: "water", at: "source", id });
    maybe(0.6, { look: "night", at: "source", id });
    maybe(0.4, { look: "day", at: "source", id });
  }
  for (const { id } of runs) maybe(0.4, { look: "ground", at: "run", id });
  const told = looks.map((look) => answerOfKeeper(look, truth, seen, random));
  return withoutWater(told);
}

/** Once a source stands empty, its drinkers are all found dry: that says nothing more. */
function withoutWater(told: readonly Sign[]): Sign[] {
  const isEmpty = told.some((sign) => sign.look === "water" && sign.sees === "empty");
  return told.filter(({ look }) => !isEmpty || look !== "gives");
}

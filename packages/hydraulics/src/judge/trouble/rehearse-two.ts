import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import { type Random, randomFrom } from "../../numerics/random.js";
import { askAboutTrouble, type Question } from "./ask-about-trouble.js";
import type { Cause } from "./cause.js";
import type { CausesTried } from "./causes-of.js";
import { logChanceOf } from "./chances.js";
import { expectTrial } from "./expect-trial.js";
import type { Expectation } from "./expectation.js";
import { mergeTrials } from "./merge-trials.js";
import { rankCauses } from "./rank-causes.js";
import { byKind, causesEverywhere, type RehearseOptions, SHOWS, tellSome } from "./rehearse.js";
import { asBuilt, type Maker, type Truth } from "./rehearse-truth.js";
import type { Sign } from "./signs.js";
import type { NamedCause } from "./trouble-result.js";

/** Two faults made at once, looked at by a keeper who errs, and looked for. */
export interface RehearsedTwo {
  readonly truths: readonly [Cause, Cause];
  /** Whether the signs told show that both are there: much likelier than under either of them alone. */
  readonly shows: boolean;
  /** Whether two at once were told, and whether these are the two. */
  readonly isTold: boolean;
  readonly areBoth: boolean;
  /** Share they were given. */
  readonly share: number;
  /** Whether the likeliest cause alone is one of the two. */
  readonly isOneFirst: boolean;
}

/** Pairs of causes made to happen and looked for, or what in the plan contradicts itself. */
export type RehearsalOfTwo =
  | { readonly ok: true; readonly cases: readonly RehearsedTwo[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * As `rehearseTrouble`, with two things wrong at once in each case. Seeded.
 *
 * @example rehearseTwo(small, { seed: 1, count: 2 }).cases.length   // 2
 */
export function rehearseTwo(
  plan: Plan,
  { seed = 1, count = 100, day }: RehearseOptions = {},
): RehearsalOfTwo {
  const asking = askAboutTrouble(plan, { day });
  if (!asking.ok) return asking;
  const { question } = asking;
  const causes = causesEverywhere(question);
  const random = randomFrom(seed);
  const kinds = byKind(question);
  const cases = Array.from({ length: count }, () => rehearseOne(question, causes, kinds, random));
  return { ok: true, cases };
}

interface TwoTruths {
  readonly truths: readonly [Truth, Truth];
  /** What both together show. */
  readonly expectation: Expectation;
}

/** Two kinds that can be at once, each with its place. */
function drawTwo(
  kinds: readonly (readonly Maker[])[],
  { bench, usual }: Question,
  random: Random,
): TwoTruths {
  for (;;) {
    const built = asBuilt(bench, random);
    const draw = () => {
      const same = kinds[random.integerBelow(kinds.length)];
      return same[random.integerBelow(same.length)](built, random);
    };
    const truths = [draw(), draw()] as const;
    const [one, other] = truths;
    const trial = mergeTrials(built, one.trial, other.trial);
    const isSame = one.cause.code === other.cause.code && one.cause.id === other.cause.id;
    if (trial !== undefined && !isSame) return { truths, expectation: expectTrial(built, trial, usual) };
  }
}

function rehearseOne(
  question: Question,
  causes: CausesTried,
  kinds: readonly (readonly Maker[])[],
  random: Random,
): RehearsedTwo {
  const { seen, usual } = question;
  const { truths, expectation } = drawTwo(kinds, question, random);
  const told = tellSome(question, expectation, random);
  const fitOf = (state: Expectation) => told.reduce((sum, sign) => sum + logChanceOf(sign, state, seen), 0);
  const alone = truths.map(({ bench, trial }) => fitOf(expectTrial(bench, trial, usual)));
  const [first, second] = truths.map(({ cause }) => cause);
  const shows = fitOf(expectation) - Math.max(...alone, fitOf(usual)) > Math.log(SHOWS);
  if (!shows) return { truths: [first, second], ...NOT_SHOWN };
  return { truths: [first, second], shows, ...lookFor(question, causes, told, [first, second]) };
}

const NOT_SHOWN = { shows: false, isTold: false, areBoth: false, share: 0, isOneFirst: false } as const;

function lookFor(
  question: Question,
  causes: CausesTried,
  told: readonly Sign[],
  truths: readonly [Cause, Cause],
): Omit<RehearsedTwo, "truths" | "shows"> {
  const { likely, twoAtOnce } = rankCauses(question, causes, told);
  const names = (named: NamedCause, { code, at, id }: Cause) =>
    named.code === code && named.at === at && named.places.includes(id);
  const [a, b] = truths;
  const areBoth =
    twoAtOnce !== undefined &&
    [twoAtOnce.causes, [...twoAtOnce.causes].reverse()].some(
      ([one, other]) => names(one, a) && names(other, b),
    );
  return {
    isTold: twoAtOnce !== undefined,
    areBoth,
    share: twoAtOnce?.share ?? 0,
    isOneFirst: truths.some((truth) => names(likely[0], truth)),
  };
}

import type { Line } from "../model/line.js";
import { buildMoments, type Moments, momentsAlike, stallsWithinUse } from "../model/moment.js";
import { FRICTION_LAWS, type FrictionLaw, type LineSolution } from "../solve/solution.js";
import type { VerdictName } from "./check-result.js";
import { type Filling, judgeFilling } from "./filling.js";
import type { JudgingCase } from "./judge-drinker.js";
import { isWorse } from "./judge-line.js";
import { findLowestWays, type Ways } from "./lowest-ways.js";
import { solveForVerdicts } from "./solve-moments.js";
import { weighTroubles } from "./weigh-drinker.js";

/** What questions of time need of a line: its verdicts without reasons and readings. A `JudgedLine` is one. */
export interface WeighedLine {
  readonly line: Line;
  readonly moments: Moments;
  readonly ways: Ways;
  readonly solved: {
    readonly darcyWeisbach: {
      readonly lowestBusiest: { readonly idle: LineSolution; readonly solution: LineSolution };
    };
  };
  readonly filling: Filling;
  readonly drinkers: readonly {
    readonly verdict: VerdictName;
    /** Other troubles of the same drinker. */
    readonly also: readonly { readonly verdict: VerdictName }[];
  }[];
}

/**
 * The verdicts of `judgeLine`, for less.
 *
 * @param like  a line weighed before: where it has the same pipes, ways and drinkers at work are taken from it
 */
export function weighLine(line: Line, like?: Pick<WeighedLine, "line" | "moments" | "ways">): WeighedLine {
  const isLaidAlike = like !== undefined && isSamePipe(line, like.line);
  const moments = isLaidAlike ? momentsAlike(line, like.moments) : buildMoments(line);
  const ways = isLaidAlike ? like.ways : findLowestWays(line);
  const solved = solveForVerdicts(line, moments);
  const { lowestBusiest, busy } = solved.darcyWeisbach;
  const filling = judgeFilling(line, ways, lowestBusiest.idle, busy);
  const stalledBelow = line.sources.some((source) => stallsWithinUse(line, source));
  const caseOf = (friction: FrictionLaw): JudgingCase => ({
    line,
    moments,
    friction,
    filling,
    stalledBelow,
    ...solved[friction],
  });
  const [first, second] = FRICTION_LAWS.map(caseOf);
  const drinkers = Array.from(line.drinkers.id.keys(), (d) => {
    const [one, other] = [weighTroubles(first, d), weighTroubles(second, d)];
    const [{ verdict }, ...also] = isWorse(other[0], one[0]) ? other : one;
    return { verdict, also: also.filter((trouble) => trouble.verdict !== "good") };
  });
  return { line, moments, ways, solved, filling, drinkers };
}

/** The same points, pipes and taps, sources at the same places, the same groups of drinkers. */
const isSamePipe = (a: Line, b: Line): boolean =>
  a.points === b.points &&
  a.segments === b.segments &&
  a.drinkers.groups === b.drinkers.groups &&
  a.drinkers.point === b.drinkers.point &&
  a.sources.length === b.sources.length &&
  a.sources.every(
    ({ point, feed }, i) =>
      point === b.sources[i].point && (feed === undefined) === (b.sources[i].feed === undefined),
  );

import type { Line } from "../model/line.js";
import { buildMoments, stallsWithinUse } from "../model/moment.js";
import { FRICTION_LAWS, type LineSolution } from "../solve/solution.js";
import type { VerdictName } from "./check-result.js";
import { type JudgingCase, weighTroubles } from "./drinker-troubles.js";
import { type Filling, judgeFilling } from "./filling.js";
import { isWorse } from "./judge-line.js";
import { findLowestWays } from "./lowest-ways.js";
import { solveForVerdicts } from "./solve-moments.js";

/** What questions of time need of a line: its verdicts without reasons and readings. A `JudgedLine` is one. */
export interface WeighedLine {
  readonly line: Line;
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

/** The verdicts of `judgeLine`, for less: the same to the last digit. */
export function weighLine(line: Line): WeighedLine {
  const moments = buildMoments(line);
  const solved = solveForVerdicts(line, moments);
  const { lowestBusiest, busy } = solved.darcyWeisbach;
  const filling = judgeFilling(line, findLowestWays(line), lowestBusiest.idle, busy);
  const stalledBelow = line.sources.some((source) => stallsWithinUse(line, source));
  const [first, second] = FRICTION_LAWS.map(
    (friction): JudgingCase => ({ line, moments, friction, filling, stalledBelow, ...solved[friction] }),
  );
  const drinkers = Array.from(line.drinkers.id.keys(), (d) => {
    const [one, other] = [weighTroubles(first, d), weighTroubles(second, d)];
    const [{ verdict }, ...also] = isWorse(other[0], one[0]) ? other : one;
    return { verdict, also: also.filter((trouble) => trouble.verdict !== "good") };
  });
  return { line, solved, filling, drinkers };
}

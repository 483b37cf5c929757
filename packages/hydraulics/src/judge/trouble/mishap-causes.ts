import type { Line } from "../../model/line.js";
import type { Mishap } from "../../model/mishap.js";
import { withMishap } from "../../model/with-mishap.js";
import type { Bench } from "./bench.js";
import type { Cause, CauseCode, CausePlace } from "./cause.js";
import type { Trial } from "./trial.js";
import { stalledTrials, waterTrials } from "./water-causes.js";

/** A cause with the states it may be in, not yet solved. */
export interface Supposition {
  readonly cause: Cause;
  readonly trials: readonly Trial[];
}

/** What is left of a drinker's flow when slime or grit sits in it, besides nothing; common practice, no source. */
const LEFT_IN_DRINKER = [0.08, 0.3];

/** What a beak still finds in a cup that hangs askew, of what runs through it; common practice, no source. */
const LEFT_IN_TIPPED = 0.1;

/**
 * A mishap as a cause, with the milder states it may be in; undefined for those that are told as another one: a blocked run is looked for along its whole length, and birds
 * that drink more are one cause.
 */
export function supposeMishap(bench: Bench, mishap: Mishap): Supposition | undefined {
  const { line } = bench;
  switch (mishap.kind) {
    case "drinkerStuckOpen":
      return bare(bench, mishap, "drinkerStuckOpen", drinkerAt(line, mishap.drinker));
    case "floatStuckDown":
      return bare(bench, mishap, "floatStuckOpen", drinkerAt(line, mishap.drinker));
    case "cupTipped":
      return tipped(bench, mishap);
    case "drinkerBlocked":
    case "floatStuckUp": {
      const code = mishap.kind === "drinkerBlocked" ? "drinkerBlocked" : "floatStuckShut";
      return { cause: { code, ...drinkerAt(line, mishap.drinker) }, trials: blockedTrials(bench, mishap) };
    }
    case "jointApart":
      return changed(bench, mishap, "jointApart", place("point", line.points.id[mishap.point], mishap.point));
    case "tapLeftShut":
      return changed(bench, mishap, "tapShut", runAt(line, mishap.run));
    case "tapLeftOpen":
      return changed(bench, mishap, "tapOpen", runAt(line, mishap.run));
    case "regulatorGone":
      return changed(bench, mishap, "regulatorGone", runAt(line, mishap.run));
    case "regulatorShut":
      return changed(bench, mishap, "regulatorShut", runAt(line, mishap.run));
    case "oneWayShut":
      return changed(bench, mishap, "oneWayShut", runAt(line, mishap.run));
    case "lidOff":
      return bare(bench, mishap, "lidOff", sourceAt(line, mishap.source));
    case "ventBlocked":
      return {
        cause: { code: "ventBlocked", ...sourceAt(line, mishap.source) },
        trials: stalledTrials(bench, mishap.source),
      };
    case "feedStuckDown":
      return changed(bench, mishap, "feedStuckOpen", sourceAt(line, mishap.source));
    case "feedStuckUp":
      return {
        cause: { code: "feedStuckShut", ...sourceAt(line, mishap.source) },
        trials: waterTrials(bench, mishap.source, { notFilled: mishap.source }),
      };
    case "refillMissed":
    case "hoseOff":
      return {
        cause: { code: "notRefilled", ...sourceAt(line, mishap.source) },
        trials: waterTrials(bench, mishap.source, { notFilled: mishap.source }),
      };
    case "moreBirds":
    case "hottestWeek":
    case "runBlocked":
    case "oneWayOpen":
      return undefined;
  }
}

const place = (at: CausePlace, id: string, index: number) => ({ at, id, index });
const drinkerAt = ({ drinkers }: Line, d: number) => place("drinker", drinkers.id[d], d);
export const runAt = ({ runs }: Line, r: number) => place("run", runs[r].id, r);
export const sourceAt = ({ sources }: Line, i: number) => place("source", sources[i].id, i);

type Where = ReturnType<typeof place>;

/** One state, with the plan's own points, pipes and taps. */
function bare(bench: Bench, mishap: Mishap, code: CauseCode, where: Where): Supposition {
  const trial = { weight: 1, severity: {}, line: withMishap(bench.line, mishap), isAlike: true };
  return { cause: { code, ...where }, trials: [trial] };
}

/**
 * A cup that hangs askew passes what one passes whose float hangs low, and from the line they are the same. At the cup they
 * are not: over its lower lip the water runs away, where that of the other stands to the brim.
 */
function tipped(bench: Bench, mishap: Mishap & { readonly drinker: number }): Supposition {
  const { cause, trials } = bare(bench, mishap, "cupTipped", drinkerAt(bench.line, mishap.drinker));
  const spilt = { drinker: mishap.drinker, left: LEFT_IN_TIPPED };
  return { cause, trials: trials.map((trial) => ({ ...trial, spilt })) };
}

/** One state whose pipes, taps or outlets are others. */
function changed(bench: Bench, mishap: Mishap, code: CauseCode, where: Where): Supposition {
  const trial = { weight: 1, severity: {}, line: withMishap(bench.line, mishap), isAlike: false };
  return { cause: { code, ...where }, trials: [trial] };
}

function blockedTrials({ line }: Bench, mishap: Mishap & { readonly drinker: number }): Trial[] {
  const partly = LEFT_IN_DRINKER.map((openShare): Trial => {
    const coefficient = line.drinkers.coefficient.slice();
    coefficient[mishap.drinker] *= openShare;
    const slimed = { ...line, drinkers: { ...line.drinkers, coefficient } };
    return { weight: 0.25, severity: { openShare }, line: slimed, isAlike: true };
  });
  return [
    { weight: 0.5, severity: { openShare: 0 }, line: withMishap(line, mishap), isAlike: true },
    ...partly,
  ];
}

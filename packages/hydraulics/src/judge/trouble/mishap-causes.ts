import type { Line } from "../../model/line.js";
import type { Mishap, MishapKind } from "../../model/mishap.js";
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

/** Mishaps that are told as a cause of their own. */
const CAUSE_OF = {
  drinkerStuckOpen: "drinkerStuckOpen",
  drinkerBlocked: "drinkerBlocked",
  floatStuckDown: "floatStuckOpen",
  floatStuckUp: "floatStuckShut",
  cupTipped: "cupTipped",
  jointApart: "jointApart",
  tapLeftShut: "tapShut",
  tapLeftOpen: "tapOpen",
  regulatorGone: "regulatorGone",
  regulatorShut: "regulatorShut",
  oneWayShut: "oneWayShut",
  lidOff: "lidOff",
  ventBlocked: "ventBlocked",
  feedStuckDown: "feedStuckOpen",
  feedStuckUp: "feedStuckShut",
  refillMissed: "notRefilled",
  hoseOff: "notRefilled",
} as const satisfies Partial<Record<MishapKind, CauseCode>>;

type ToldMishap = Extract<Mishap, { readonly kind: keyof typeof CAUSE_OF }>;
const isTold = (mishap: Mishap): mishap is ToldMishap => mishap.kind in CAUSE_OF;

/**
 * A mishap as a cause, with the milder states it may be in; undefined for those that are told as another one: a blocked run is looked for along its whole length, and birds
 * that drink more are one cause.
 */
export function supposeMishap(bench: Bench, mishap: Mishap): Supposition | undefined {
  if (!isTold(mishap)) return undefined;
  const cause = { code: CAUSE_OF[mishap.kind], ...placeOf(bench.line, mishap) };
  return { cause, trials: trialsOf(bench, mishap) };
}

function trialsOf(bench: Bench, mishap: ToldMishap): readonly Trial[] {
  switch (mishap.kind) {
    case "drinkerStuckOpen":
    case "floatStuckDown":
    case "lidOff":
      return [bare(bench, mishap)];
    case "cupTipped":
      return [tipped(bench, mishap)];
    case "drinkerBlocked":
    case "floatStuckUp":
      return blockedTrials(bench, mishap);
    case "ventBlocked":
      return stalledTrials(bench, mishap.source);
    case "feedStuckUp":
    case "refillMissed":
    case "hoseOff":
      return waterTrials(bench, mishap.source, { notFilled: mishap.source });
    default:
      return [changed(bench, mishap)];
  }
}

function placeOf(line: Line, mishap: ToldMishap): Where {
  if ("drinker" in mishap) return drinkerAt(line, mishap.drinker);
  if ("run" in mishap) return runAt(line, mishap.run);
  if ("source" in mishap) return sourceAt(line, mishap.source);
  return place("point", line.points.id[mishap.point], mishap.point);
}

const place = (at: CausePlace, id: string, index: number) => ({ at, id, index });
const drinkerAt = ({ drinkers }: Line, d: number) => place("drinker", drinkers.id[d], d);
export const runAt = ({ runs }: Line, r: number) => place("run", runs[r].id, r);
export const sourceAt = ({ sources }: Line, i: number) => place("source", sources[i].id, i);

type Where = ReturnType<typeof place>;

/** One state, with the plan's own points, pipes and taps. */
const bare = (bench: Bench, mishap: Mishap): Trial => ({
  weight: 1,
  severity: {},
  line: withMishap(bench.line, mishap),
  isAlike: true,
});

/**
 * A cup that hangs askew passes what one passes whose float hangs low, and from the line they are the same. At the cup they
 * are not: over its lower lip the water runs away, where that of the other stands to the brim.
 */
const tipped = (bench: Bench, mishap: Mishap & { readonly drinker: number }): Trial => ({
  ...bare(bench, mishap),
  spilt: { drinker: mishap.drinker, left: LEFT_IN_TIPPED },
});

/** One state whose pipes, taps or outlets are others. */
const changed = (bench: Bench, mishap: Mishap): Trial => ({ ...bare(bench, mishap), isAlike: false });

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

import type { Flock } from "../../model/flock.js";
import type { Line } from "../../model/line.js";
import type { Mishap } from "../../model/mishap.js";
import { flockWithMishap, withMishap } from "../../model/with-mishap.js";
import type { Refill } from "../../simulate/drawn-pool.js";
import { MORNING, type WeighedPlan } from "../asked-plan.js";
import { manLine } from "../birds/man-line.js";
import { isLeaky, withoutLeaks } from "../time/pool-leaks.js";
import { type WeighedLine, weighLine } from "../weigh-line.js";

const DAY = 86_400;
/** How far a mishap is followed when nobody looks [s]. */
export const FOLLOWED = 60 * DAY;

/** A plan after a mishap: its line as it pours, and as it would stand if what pours were stopped. */
export interface Struck {
  readonly mishap: Mishap | undefined;
  readonly flock: Flock;
  /** Verdicts are those of the line as it pours. */
  readonly judged: WeighedLine;
  readonly still: WeighedLine;
  /** Set where it pours. */
  readonly leaking: Line | undefined;
  readonly refills: readonly Refill[];
  /** How far it is followed [s]. */
  readonly lasts: number;
}

/** Makes a mishap happen to a plan; without one, the plan as nobody looks after it. */
export function strike(asked: WeighedPlan, mishap: Mishap | undefined): Struck {
  const { plan, judged } = asked;
  const flock = mishap === undefined ? asked.flock : flockWithMishap(asked.flock, mishap);
  const isOtherFlock = flock !== asked.flock && flock.pens.length > 0;
  const base = isOtherFlock ? manLine(plan, judged.line, flock).line : judged.line;
  const line = mishap === undefined ? base : withMishap(base, mishap);
  const dry = withoutLeaks(line);
  const still = isSameAs(line, mishap, judged, isOtherFlock) ? judged : weighLine(dry, judged);
  return {
    mishap,
    flock,
    judged: isLeaky(line) ? weighLine(line, judged) : still,
    still,
    leaking: isLeaky(line) ? line : undefined,
    refills: asked.refills.map((refill, i) => refillAfter(refill, i, mishap)),
    lasts: lastsUntil(asked, mishap),
  };
}

/** Whether the line without what pours is the plan's own: then it is judged already. */
function isSameAs(
  line: Line,
  mishap: Mishap | undefined,
  judged: WeighedLine,
  isOtherFlock: boolean,
): boolean {
  if (isOtherFlock) return false;
  if (line === judged.line) return true;
  return (
    mishap?.kind === "drinkerStuckOpen" ||
    mishap?.kind === "floatStuckDown" ||
    mishap?.kind === "cupTipped" ||
    mishap?.kind === "feedStuckDown"
  );
}

/** Hoses run on and nobody fills by hand, but where a round is missed: then all others are made. */
function refillAfter(refill: Refill, source: number, mishap: Mishap | undefined): Refill {
  if (mishap?.kind === "hoseOff" && mishap.source === source) return { kind: "none" };
  if (refill.kind !== "byHand") return refill;
  if (mishap?.kind !== "refillMissed") return { kind: "none" };
  return mishap.source === source ? { ...refill, first: refill.first + refill.every } : refill;
}

/** Up to the round after the one that was missed; all other mishaps are followed equally far. */
function lastsUntil({ refills }: WeighedPlan, mishap: Mishap | undefined): number {
  if (mishap?.kind !== "refillMissed") return FOLLOWED;
  const refill = refills[mishap.source];
  return refill.kind === "byHand" ? refill.first + refill.every - MORNING : FOLLOWED;
}

import { createHeap } from "../numerics/heap.js";
import type { Cost } from "./cost.js";
import { type CureSpace, costOf, type Picks } from "./cure-space.js";
import { guessPlan } from "./first-guess.js";
import type { Domains } from "./fronts.js";
import type { Found, Searched, Searching } from "./searching.js";

interface Part {
  readonly domains: Domains;
  readonly cost: Cost;
  readonly picks: Picks;
}

/** Plans judged in vain before some plan that works is looked for in a quick way, so that dearer parts can be dropped. */
const GUESS_AFTER = 3;
/** In smaller spaces it is not worth it. */
const WORTH_A_GUESS = 200;

/**
 * The cheapest plan of a space that works, by branch and bound: always the part with the least bound is taken, the
 * plan its bound points at is judged, and what is left of the part is divided so that no plan is in two parts
 * (Lawler 1972). Parts whose bound is no cheaper than a plan already found are dropped unseen. When none is left, what
 * was found is the cheapest.
 */
export function searchSpace(searching: Searching): Searched {
  const { space, bound, compare, mayGoOn, below } = searching;
  const queue = createHeap<Part>((a, b) => compare(a.cost, b.cost) < 0);
  let found: Found | undefined;
  let judged = 0;
  let parts = 0;
  const plans = countPlans(space);
  const limit = () => found?.cost ?? below;
  /** Whether nothing that costs as much is of interest any more. */
  const isDear = (cost: Cost) => {
    const most = limit();
    return most !== undefined && compare(cost, most) >= 0;
  };
  const works = (picks: Picks) => {
    judged += 1;
    return searching.works(picks);
  };
  /** Looks for some plan that works in a quick way. */
  const guess = (look: (searching: Searching) => Found | undefined) => {
    const likely = plans > WORTH_A_GUESS ? look({ ...searching, works }) : undefined;
    if (likely !== undefined && !isDear(likely.cost)) found = likely;
  };
  const enter = (domains: Domains) => {
    parts += 1;
    const least = domains.some((domain) => domain.length === 0) ? undefined : bound(domains, limit());
    if (least !== undefined && !isDear(least.cost)) queue.push({ domains, ...least });
  };
  const end = (open: Cost | undefined): Searched => {
    return { found, proven: open === undefined, bound: open, plans, judged, parts };
  };
  let inVain = 0;
  guess(firstLikely);
  enter(wholeOf(space));
  for (let part = queue.pop(); part !== undefined && !isDear(part.cost); part = queue.pop()) {
    if (!mayGoOn() || parts > searching.mostParts) return end(part.cost);
    const cost = costOf(space, part.picks);
    const isTried = !isDear(cost);
    if (isTried && works(part.picks)) found = { picks: part.picks, cost };
    else if (isTried) {
      inVain += 1;
      if (found === undefined && inVain === GUESS_AFTER) guess(guessPlan);
    }
    // What has just been found may cost no more than the part's bound: then nothing in it, or behind it, is cheaper.
    if (isDear(part.cost)) break;
    for (const domains of divide(part)) enter(domains);
  }
  return end(undefined);
}

function firstLikely({ space, likely, works, below }: Searching): Found | undefined {
  for (const picks of likely?.(below) ?? []) if (works(picks)) return { picks, cost: costOf(space, picks) };
  return undefined;
}

const choicesOf = ({ runs, sources }: CureSpace) => [...runs, ...sources];

export const wholeOf = (space: CureSpace): Domains =>
  choicesOf(space).map(({ options }) => options.map((_, k) => k));

export const countPlans = (space: CureSpace): number =>
  choicesOf(space).reduce((product, { options }) => product * options.length, 1);

/**
 * What is left of a part without the plan looked at: for each choice, all plans that are as that plan up to it and
 * differ in it.
 */
function divide({ domains, picks }: Part): Domains[] {
  return domains.flatMap((domain, v) =>
    domain.length < 2
      ? []
      : [
          domains.map((other, w) =>
            w < v ? [picks[w]] : w === v ? other.filter((k) => k !== picks[v]) : other,
          ),
        ],
  );
}

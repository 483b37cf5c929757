import { wholeOf } from "./branch-and-bound.js";
import { costOf } from "./cure-space.js";
import type { Searched, Searching } from "./searching.js";

/**
 * The same answer by judging every plan of a space, one after another: for spaces small enough, as the check on the
 * search and its bounds.
 */
export function searchByForce({
  space,
  compare,
  works,
}: Pick<Searching, "space" | "compare" | "works">): Searched {
  const domains = wholeOf(space);
  const plans = domains.reduce((product, { length }) => product * length, 1);
  let found: Searched["found"];
  for (let number = 0; number < plans; number += 1) {
    let rest = number;
    const picks = domains.map((domain) => {
      const pick = domain[rest % domain.length];
      rest = Math.floor(rest / domain.length);
      return pick;
    });
    if (!works(picks)) continue;
    const cost = costOf(space, picks);
    if (found === undefined || compare(cost, found.cost) < 0) found = { picks, cost };
  }
  return { found, proven: true, bound: undefined, plans, judged: plans, parts: 0 };
}

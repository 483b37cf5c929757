import { costOf, type Picks } from "./cure-space.js";
import type { Found, Searching } from "./searching.js";

/**
 * Some plan that works, found quickly and not the cheapest: every run at its last option (the widest), the first stand
 * that then works, and from there each run put back to the cheapest option with which it still works.
 */
export function guessPlan({ space, compare, works, mayGoOn }: Searching): Found | undefined {
  const { runs, sources } = space;
  const widest = runs.map(({ options }) => options.length - 1);
  const byCost = (options: readonly { readonly cost: Found["cost"] }[]) =>
    options.map((_, k) => k).sort((a, b) => compare(options[a].cost, options[b].cost));
  let picks = firstThatWorks(
    combinations(sources.map(({ options }) => byCost(options))).map((stands) => [...widest, ...stands]),
    works,
    mayGoOn,
  );
  if (picks === undefined) return undefined;
  for (let r = 0; r < runs.length; r += 1) {
    const kept: Picks = picks;
    const others = byCost(runs[r].options).filter(
      (k) => compare(runs[r].options[k].cost, runs[r].options[kept[r]].cost) < 0,
    );
    const less = others.map((k) => kept.map((pick, v) => (v === r ? k : pick)));
    picks = firstThatWorks(less, works, mayGoOn) ?? picks;
  }
  return { picks, cost: costOf(space, picks) };
}

/** At most so many settings of stands are tried. */
const MOST_STANDS = 64;

function combinations(lists: readonly (readonly number[])[]): number[][] {
  return lists
    .reduce<number[][]>((all, list) => list.flatMap((one) => all.map((rest) => [...rest, one])), [[]])
    .slice(0, MOST_STANDS);
}

function firstThatWorks(
  candidates: readonly Picks[],
  works: Searching["works"],
  mayGoOn: Searching["mayGoOn"],
): Picks | undefined {
  return candidates.find((picks) => mayGoOn() && works(picks));
}

import type { Line } from "../../model/line.js";
import type { Look, Looked, Place } from "./signs.js";
import type { Alike } from "./weigh.js";

/** Drinkers that are thought of for a look, besides those a likely cause names. */
const MOST_DRINKERS = 40;
/** Runs whose ends are thought of; each costs a solve for every state of the causes compared. */
const MOST_ENDS = 12;

/**
 * What could be looked at next: drinkers worked and watched, runs walked along and their ends opened, sources looked
 * into, their levels, their lids.
 */
export function looksAt(line: Line, likely: readonly Alike[]): Look[] {
  const drinkers = [...drinkersToLookAt(line, likely)].map((d) => line.drinkers.id[d]);
  const runs = line.runs.map(({ id }) => id);
  const sources = line.sources.map(({ id }) => id);
  const at = (place: Place, look: Looked, ids: readonly string[]) =>
    ids.map((id): Look => ({ look, at: place, id }));
  return [
    ...at("source", "water", sources),
    ...at("source", "ground", sources),
    ...at("run", "ground", runs),
    ...at("drinker", "gives", drinkers),
    ...at("drinker", "drips", drinkers),
    ...at("source", "lid", sources),
    ...at("run", "end", runs.slice(0, MOST_ENDS)),
    ...at("source", "night", sources),
    ...at("source", "day", sources),
  ];
}

function drinkersToLookAt({ drinkers }: Line, likely: readonly Alike[]): Set<number> {
  const chosen = new Set<number>();
  for (const { members } of likely)
    for (const { candidate } of members)
      if (candidate.cause.at === "drinker" && chosen.size < MOST_DRINKERS) chosen.add(candidate.cause.index);
  const evenly = Math.min(drinkers.count, MOST_DRINKERS);
  for (let k = 0; k < evenly; k += 1) chosen.add(Math.floor(((k + 0.5) * drinkers.count) / evenly));
  return chosen;
}

import type { Line } from "../../model/line.js";
import type { Mishap, MishapKind } from "../../model/mishap.js";

/** Mishaps that are told in one line. */
export interface Bundle {
  readonly kinds: readonly MishapKind[];
  readonly count: number;
  readonly run: readonly Mishap[];
}

/**
 * Of a group of more drinkers than this, only some are run, spread from its first to its last; in a plan of many groups
 * fewer of each, so that all groups together are not run more often than this, but for the ends of each.
 */
const MOST_RUN = { ofGroup: 12, ofAll: 120, ends: 2 } as const;

/** Kinds that change the same law to the same: each is told with the first of them. */
const SAME_LAW: Readonly<Partial<Record<MishapKind, MishapKind>>> = {
  cupTipped: "floatStuckDown",
  regulatorShut: "runBlocked",
  oneWayShut: "runBlocked",
  tapLeftShut: "runBlocked",
};

/** By law and place: a group of drinkers is one place, and so is the start of a run. */
export function bundlesOf(line: Line, mishaps: readonly Mishap[]): Bundle[] {
  const byPlace = new Map<string, Mishap[]>();
  for (const mishap of mishaps) {
    const key = `${SAME_LAW[mishap.kind] ?? mishap.kind} ${placeOf(line, mishap)}`;
    byPlace.set(key, [...(byPlace.get(key) ?? []), mishap]);
  }
  const groups = [...byPlace.keys()].filter((key) => key.includes("group")).length;
  const most = Math.min(MOST_RUN.ofGroup, Math.max(MOST_RUN.ends, Math.floor(MOST_RUN.ofAll / groups)));
  return [...byPlace.values()].map((members) => {
    const kinds = [...new Set(members.map(({ kind }) => kind))];
    // Those of the other kinds do the same there.
    const first = members.filter(({ kind }) => kind === kinds[0]);
    return { kinds, count: first.length, run: spread(first, most) };
  });
}

function placeOf({ drinkers }: Line, mishap: Mishap): string {
  if ("drinker" in mishap) return `group ${drinkers.group[mishap.drinker]}`;
  if ("source" in mishap) return `source ${mishap.source}`;
  if ("run" in mishap) return `run ${mishap.run}`;
  if ("point" in mishap) return `point ${mishap.point}`;
  return "pen" in mishap ? `batch ${mishap.pen} ${mishap.batch}` : "";
}

function spread<T>(all: readonly T[], most: number): T[] {
  if (all.length <= most) return [...all];
  return Array.from({ length: most }, (_, k) => all[Math.round((k * (all.length - 1)) / (most - 1))]);
}

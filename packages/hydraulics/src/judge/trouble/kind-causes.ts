import type { Bench } from "./bench.js";
import type { Supposition } from "./mishap-causes.js";
import type { Trial } from "./trial.js";

/** What worn seals still hold, of what the kind holds when new; common practice, no source. */
const STILL_HOLDS = [0.5, 0.2];

/** Drinkers of a kind that pass less than the plan takes them to: the low end of their kind's range, and half of that. */
export function supposeWeakKinds({ line }: Bench): Supposition[] {
  return line.drinkers.groups.map((group, g) => ({
    cause: { code: "givesLessThanThought", at: "group", id: group.id, index: g },
    trials: [Math.min(0.7, group.flowLow), 0.5 * group.flowLow].map((openShare): Trial => {
      const coefficient = line.drinkers.coefficient.map((k, d) =>
        line.drinkers.group[d] === g ? k * openShare : k,
      );
      const weaker = { ...line, drinkers: { ...line.drinkers, coefficient } };
      return { weight: 0.5, severity: { openShare }, line: weaker, isAlike: true };
    }),
  }));
}

/** Drinkers of a kind whose seals no longer hold what they did when new: they drip at heads they were made for. */
export function supposeWornSeals({ line }: Bench): Supposition[] {
  return line.drinkers.groups.map((group, g) => ({
    cause: { code: "sealsWorn", at: "group", id: group.id, index: g },
    trials: STILL_HOLDS.map((share): Trial => {
      const groups = line.drinkers.groups.map((one, k) =>
        k === g ? { ...one, holdsUpTo: share * one.holdsUpTo } : one,
      );
      const worn = { ...line, drinkers: { ...line.drinkers, groups } };
      return { weight: 0.5, severity: {}, line: worn, isAlike: true };
    }),
  }));
}

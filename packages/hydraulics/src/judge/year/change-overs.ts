import type { Flock } from "../../model/flock.js";
import type { Yard } from "../../model/yard.js";
import { BOTH_STAY, changeOversOf } from "../yard/waterer-suits.js";
import type { ChangeOverEvent, KitGiven, YearPeriod } from "./year-result.js";

/** Change-overs between a pen's own waterers, as its birds grow; each told once. */
export function ownChangeOvers(yard: Yard, flocks: readonly Flock[], to: number): ChangeOverEvent[] {
  const found = new Map<string, ChangeOverEvent>();
  for (const { day, pens } of flocks)
    for (const pen of yard.pens)
      for (const change of changeOversOf(pen, pens[pen.index], day)) {
        const { from, to: next, bothFromDay, untilDay } = change;
        if (bothFromDay === undefined || untilDay === undefined || bothFromDay >= to) continue;
        const key = `${pen.id} ${from} ${next ?? ""} ${untilDay}`;
        if (found.has(key)) continue;
        found.set(key, {
          code: "changeOver",
          day: bothFromDay,
          pen: pen.id,
          from: [from],
          to: next === undefined ? [] : [next],
          until: untilDay,
          by: "pen",
          wantedElsewhere: [],
        });
      }
  return [...found.values()];
}

/**
 * Change-overs among the kit: some of it comes into a pen on a day on which other kinds go, and birds stay there. The
 * old is left for some days if no other pen takes it that day.
 */
export function kitChangeOvers(
  periods: readonly YearPeriod[],
  ids: readonly string[],
  { kinds, lent }: Pick<KitGiven, "kinds" | "lent">,
): ChangeOverEvent[] {
  return periods.flatMap((period, t) => {
    if (t === 0) return [];
    return ids.flatMap((pen, p): ChangeOverEvent[] => {
      const [before, now] = [lent[t - 1][p], lent[t][p]];
      const change = kinds.map((_, k) => now[k] - before[k]);
      const stays = periods[t - 1].pens[p].birds > 0 && period.pens[p].birds > 0;
      if (!stays || !change.some((more) => more > 0) || !change.some((more) => more < 0)) return [];
      const gone = [...kinds.keys()].filter((k) => change[k] < 0);
      const free = (k: number) => kinds[k].count - lent[t].reduce((sum, own) => sum + own[k], 0);
      return [
        {
          code: "changeOver",
          day: period.from,
          pen,
          from: gone.map((k) => kinds[k].name),
          to: [...kinds.keys()].filter((k) => change[k] > 0).map((k) => kinds[k].name),
          until: period.from + BOTH_STAY,
          by: "kit",
          wantedElsewhere: gone.filter((k) => free(k) < -change[k]).map((k) => kinds[k].name),
        },
      ];
    });
  });
}

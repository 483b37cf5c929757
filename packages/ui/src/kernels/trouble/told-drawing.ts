import type { Checked, Line, Sign, VerdictName } from "@headfall/hydraulics";
import type { ProfileLayout } from "../profile-layout.js";
import { type ProfilePath, pathToDrinker } from "../profile-path.js";
import type { Spot } from "../profile-request.js";

/** What is told of a drinker, as the mark of the verdict that says the same. */
const MARKS: Readonly<Record<string, VerdictName>> = {
  fine: "good",
  holds: "good",
  weak: "starves",
  drips: "drips",
  dry: "dry",
};

/** Of several things told of one drinker the worst is shown. */
const ORDER: readonly VerdictName[] = ["good", "drips", "starves", "dry"];

/** By drinker that something was told of: the mark of what was. */
export function marksTold(line: Line, signs: readonly Sign[]): ReadonlyMap<number, VerdictName> {
  const indexOf = new Map(line.drinkers.id.map((id, d) => [id, d]));
  const marks = new Map<number, VerdictName>();
  for (const sign of signs) {
    const drinker = sign.at === "drinker" ? indexOf.get(sign.id) : undefined;
    const mark = sign.look === "jug" ? undefined : MARKS[sign.sees];
    if (drinker === undefined || mark === undefined) continue;
    const before = marks.get(drinker);
    if (before === undefined || ORDER.indexOf(mark) > ORDER.indexOf(before)) marks.set(drinker, mark);
  }
  return marks;
}

/** What the check found out, with what was told in place of the verdicts; for the drawing. */
export function checkedAsTold(checked: Checked, signs: readonly Sign[]): Checked {
  const marks = marksTold(checked.line, signs);
  const drinkers = checked.drinkers.map((one, d) => ({ ...one, verdict: marks.get(d) ?? one.verdict }));
  return { ...checked, drinkers };
}

/** The way to the last drinker of a run; undefined where the run has none or no pipe leads there. */
export function wayOfRun({ runs, drinkers, ...line }: Line, run: string): ProfilePath | undefined {
  const last = drinkers.id.findLastIndex((_, d) => runs[drinkers.run[d]!]!.id === run);
  return last < 0 ? undefined : pathToDrinker({ runs, drinkers, ...line }, last);
}

/** Where the drinkers that something was told of are on the drawing [px]. */
export function spotsTold(layout: ProfileLayout, line: Line, signs: readonly Sign[]): readonly Spot[] {
  const marks = marksTold(line, signs);
  return layout.drinkers.filter(({ index }) => marks.has(index));
}

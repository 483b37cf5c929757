import type { DrinkerVerdict } from "../judge/check-result.js";
import type { Line } from "../model/line.js";
import { type UnitSystem, writeQuantity } from "../units/quantity.js";
import { writeJudgement } from "./sentences.js";
import { writeCertainty } from "./sureness/certainty-words.js";
import { LAW_WORDS } from "./words.js";

/**
 * A drinker's verdict as plain sentences with the numbers in them: what, why, how sure.
 *
 * @param verdict  from `checkPlan`
 * @param system   whose units to write in
 * @example writeVerdict(checked.drinkers[0], line, "metric")   // "hen line 1 (30 cm along) does well with the water lowest and the birds busiest: ..."
 */
export function writeVerdict(verdict: DrinkerVerdict, line: Line, system: UnitSystem): string {
  const parts = [`${verdict.drinker}${placeOf(verdict, line, system)} ${writeJudgement(verdict, system)}`];
  for (const other of verdict.also) parts.push(`It also ${writeJudgement(other, system)}`);
  if (!verdict.lawsAgree)
    parts.push(`The two friction laws differ here; ${LAW_WORDS[verdict.friction]} is the cautious one.`);
  const sureness = writeCertainty(verdict.certainty);
  if (sureness !== "") parts.push(sureness);
  return parts.join(" ");
}

/** Where on its run a drinker hangs, for those that are one of many. */
function placeOf(verdict: DrinkerVerdict, line: Line, system: UnitSystem): string {
  const { group, groups, along } = line.drinkers;
  if (groups[group[verdict.index]].count === 1) return "";
  return ` (${writeQuantity(along[verdict.index], "length", system)} along)`;
}

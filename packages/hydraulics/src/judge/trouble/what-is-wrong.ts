import type { Plan } from "../../document/plan-schema.js";
import { type AskOptions, askAboutTrouble } from "./ask-about-trouble.js";
import { causesOf } from "./causes-of.js";
import { checkSigns } from "./check-signs.js";
import { rankCauses } from "./rank-causes.js";
import type { Sign } from "./signs.js";
import type { TroubleAnswer } from "./trouble-result.js";

/** How causes are looked for. */
export interface TroubleOptions extends AskOptions {
  /** Called with the share of the work done, from 0 to 1. What it does changes no figure. */
  readonly progress?: (share: number) => void;
}

/**
 * What is likely wrong with a line, from what its keeper sees. Every cause is made from the plan and solved; its
 * signature is held against the signs; what is left over is the share each gets. One thing wrong at a time.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param signs    what is seen; anything may be left out
 * @param options  day, levels
 * @returns the causes, or what in the plan or in the signs does not fit; the same question gives the same answer
 * @throws RangeError when a level is outside its source, or lastSeen is not above 0
 * @example whatIsWrong(small, [{ look: "gives", at: "drinker", id: "line 4", sees: "dry" }]).trouble.likely[0].code   // "jointApart"
 */
export function whatIsWrong(plan: Plan, signs: readonly Sign[], options: TroubleOptions = {}): TroubleAnswer {
  const asking = askAboutTrouble(plan, options);
  if (!asking.ok) return asking;
  const { question } = asking;
  const problems = checkSigns(signs, question.seen.places);
  if (problems.length > 0) return { ok: false, problems };
  const causes = causesOf(question.bench, question.usual, signs, options.progress);
  return { ok: true, trouble: rankCauses(question, causes, signs) };
}

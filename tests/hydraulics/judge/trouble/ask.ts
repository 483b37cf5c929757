import { readFileSync } from "node:fs";
import type { Plan } from "../../../../packages/hydraulics/src/document/plan-schema.js";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import type { Look, Place, Sign } from "../../../../packages/hydraulics/src/judge/trouble/signs.js";
import type { Trouble } from "../../../../packages/hydraulics/src/judge/trouble/trouble-result.js";
import {
  type TroubleOptions,
  whatIsWrong,
} from "../../../../packages/hydraulics/src/judge/trouble/what-is-wrong.js";

export function planOf(document: unknown): Plan {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

export const example = (name: string): Plan =>
  planOf(
    JSON.parse(readFileSync(new URL(`../../../../docs/examples/${name}.json`, import.meta.url), "utf8")),
  );

export const ASKED_ON = "2026-07-04";

/** What is wrong, where the signs fit the plan. */
export function troubleOf(plan: Plan, signs: readonly Sign[], options: TroubleOptions = {}): Trouble {
  const answer = whatIsWrong(plan, signs, { day: ASKED_ON, ...options });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.trouble;
}

export const sight = (look: Look["look"], at: Place, id: string, sees: string): Sign => ({
  look,
  at,
  id,
  sees,
});

/** Drinkers of a line by their numbers, worked. */
export const worked = (base: string, numbers: readonly number[], sees: string): Sign[] =>
  numbers.map((k) => sight("gives", "drinker", `${base} ${k}`, sees));

import type { Plan } from "./plan-schema.js";

/**
 * A plan as file text: two spaces, a line feed at the end. What was typed is kept.
 *
 * @example readPlan(writePlan(plan)).ok   // true
 */
export function writePlan(plan: Plan): string {
  return `${JSON.stringify(plan, null, 2)}\n`;
}

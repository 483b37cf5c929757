import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import type { Cure } from "../../packages/hydraulics/src/search/cure-answer.js";

/** What is wrong with a cure, in words; nothing where it is one. */
export function faultsOfCure({ kind, plan, after, cost }: Cure): string[] {
  const reading = checkDocument(JSON.parse(JSON.stringify(plan)));
  return [
    ...(reading.ok ? [] : [`${kind}: its plan has problems: ${JSON.stringify(reading.problems)}`]),
    ...(after.meets ? [] : [`${kind}: does not work`]),
    ...(Object.values(cost).every((one) => Number.isFinite(one) && one >= 0)
      ? []
      : [`${kind}: costs no number`]),
  ];
}

import type { Plan } from "@headfall/hydraulics";

/** A view with fields that show the plan. */
export type PlanFields = HTMLElement & { plan: Plan | undefined };

const VIEWS = ["headfall-part", "headfall-plan-table"];

/** The panel or the tables an event came from; undefined when it came from a drawing. */
export function fieldsAround(event: Event): PlanFields | undefined {
  const found = event
    .composedPath()
    .find((target) => target instanceof HTMLElement && VIEWS.includes(target.localName));
  return found as PlanFields | undefined;
}

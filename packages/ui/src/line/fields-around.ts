import type { Plan } from "@headfall/hydraulics";
import type { Drawing } from "../controllers/drag-pace.js";

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

/** The drawing that fired an event, if it was one. */
export function drawingAround(event: Event): Drawing | undefined {
  const names = event.composedPath().map((target) => (target instanceof HTMLElement ? target.localName : ""));
  if (names.includes("headfall-above")) return "above";
  return names.includes("headfall-profile-hands") ? "side" : undefined;
}

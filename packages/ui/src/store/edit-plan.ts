import type { Plan } from "@headfall/hydraulics";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { editKey, editKeys } from "./edits/edit-keys.js";
import type { Edited, PlanChange } from "./plan-change.js";

/**
 * Makes one edit: gives a new plan that shares with the old one all that the edit left alone, or says why it cannot
 * be done. What the edit writes is in the units of `system`.
 */
export function editPlan(plan: Plan, change: PlanChange, _system: UnitSystem): Edited {
  switch (change.kind) {
    case "set":
      return editKey(plan, change.path, change.value, change.what);
    case "setAll":
      return editKeys(plan, change.entries, change.what);
    default:
      return { ok: false, because: `${change.kind} cannot be done yet.` };
  }
}

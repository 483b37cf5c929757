import { writeBundle } from "../storage/plan-bundle.js";
import { writeRaw } from "../storage/raw-text.js";
import type { KeptPlan, ShutPlan } from "../storage/stored-plan.js";
import { planFileName, savePlanFile, saveText } from "./save-file.js";

/** One plan as a file of its own, several as one file. Those that cannot be opened here go along as they are. */
export function savePlans(plans: readonly KeptPlan[]): void {
  const [first] = plans;
  if (plans.length === 1 && first?.kind === "openable") savePlanFile(first.plan);
  else saveText("headfall-plans.json", writeBundle(plans.map(documentOf)));
}

/** A plan that cannot be opened here, as it stands in the browser's storage. */
export function saveRecord(plan: ShutPlan): void {
  saveText(planFileName(plan.name), writeRaw(documentOf(plan)));
}

function documentOf(kept: KeptPlan): unknown {
  if (kept.kind === "openable") return kept.plan;
  const { record } = kept;
  return typeof record === "object" && record !== null && "plan" in record ? record.plan : record;
}

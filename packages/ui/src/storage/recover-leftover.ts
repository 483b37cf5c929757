import { checkDocument, type Plan } from "@headfall/hydraulics";
import type { Draft } from "./autosave.js";
import { mergePlans } from "./merge-plans.js";
import type { PlanLibrary } from "./plan-library.js";
import { nameFor, withName } from "./plan-names.js";

/** A draft and the plan it had become, as text to leave behind. */
export function writeLeftover({ id, base }: Draft, plan: Plan): string {
  return JSON.stringify({ id, base, plan });
}

/**
 * Saves what a page was left with: on the plan it belongs to, or as one of its own when that has been changed since.
 *
 * @returns the id it is saved under; undefined when the text holds no plan
 * @throws StorageTrouble
 */
export async function recoverLeftover(library: PlanLibrary, text: string): Promise<string | undefined> {
  const leftover = readLeftover(text);
  if (leftover === undefined) return undefined;
  const { id, base, plan } = leftover;
  const stored = await library.read(id);
  if (stored === undefined) return (await library.save(id, plan, 0)).ok ? id : undefined;
  const merged = stored.kind === "openable" && base ? mergePlans(base, plan, stored.plan) : undefined;
  if (merged === undefined || stored.kind !== "openable") {
    return (await library.add(withName(plan, nameFor(plan.name ?? "", "left unsaved", new Set())))).id;
  }
  if (merged === stored.plan) return id;
  const saving = await library.save(id, merged, stored.revision);
  return saving.ok ? id : recoverLeftover(library, text);
}

function readLeftover(text: string): { id: string; base: Plan | undefined; plan: Plan } | undefined {
  try {
    const { id, base, plan } = JSON.parse(text) as Record<string, unknown>;
    const [before, after] = [checkDocument(base), checkDocument(plan)];
    if (typeof id !== "string" || !after.ok) return undefined;
    return { id, base: before.ok ? before.plan : undefined, plan: after.plan };
  } catch {
    return undefined;
  }
}

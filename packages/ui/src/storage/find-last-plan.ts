import type { PlanShelf } from "./plan-shelf.js";
import { type OpenablePlan, readStored } from "./stored-plan.js";

/**
 * The plan to open the page with: the first of the wanted ones that can be opened, else the one changed last.
 *
 * @param wanted  ids, most wanted first: what this tab showed, what any tab showed
 * @throws StorageTrouble
 */
export async function findLastPlan(
  shelf: PlanShelf,
  wanted: readonly string[],
): Promise<OpenablePlan | undefined> {
  for (const id of wanted) {
    const kept = openable(id, await shelf.one(id));
    if (kept !== undefined) return kept;
  }
  const all = (await shelf.all()).flatMap(([id, record]) => openable(id, record) ?? []);
  return all.sort((a, b) => b.changedAt - a.changedAt)[0];
}

function openable(id: string, record: unknown): OpenablePlan | undefined {
  if (record === undefined) return undefined;
  const kept = readStored(id, record);
  return kept.kind === "openable" && kept.deletedAt === undefined ? kept : undefined;
}

import { HeadfallCure } from "../cure/cure-element.js";
import type { KeptPlan } from "../cure/room.js";
import { PlanLibrary } from "../storage/plan-library.js";
import { PlanShelf } from "../storage/plan-shelf.js";

/** The room of the cure with the plans that this browser keeps. */
export class PageCure extends HeadfallCure {
  constructor() {
    super();
    this.keptPlans = keptPlans;
  }
}

async function keptPlans(): Promise<readonly KeptPlan[]> {
  const shelf = new PlanShelf();
  try {
    const kept = await new PlanLibrary(shelf).list();
    return kept.flatMap((plan) => (plan.kind === "openable" && plan.deletedAt === undefined ? [plan] : []));
  } finally {
    await shelf.close();
  }
}

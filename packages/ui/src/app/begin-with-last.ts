import type { Plan } from "@headfall/hydraulics";
import { findLastPlan } from "../storage/find-last-plan.js";
import type { PlanShelf } from "../storage/plan-shelf.js";
import { type StorageTrouble, troubleOf } from "../storage/storage-trouble.js";
import type { OpenablePlan } from "../storage/stored-plan.js";
import type { Notice } from "./notice.js";
import { lastPlans } from "./preferences.js";

/** What the page begins with. */
export interface Begun {
  /** The plan last worked on; undefined when there is none, or none that can be reached. */
  readonly kept?: OpenablePlan | undefined;
  /** A plan that is not kept yet, as one that came by a link. */
  readonly arrived?: Plan;
  readonly trouble?: StorageTrouble;
  readonly news?: Notice;
}

/** Begins with the first of the wanted plans that can be opened, else with the one changed last. */
export async function beginWithLast(shelf: PlanShelf, wanted = lastPlans()): Promise<Begun> {
  try {
    return { kept: await findLastPlan(shelf, wanted) };
  } catch (error) {
    return { trouble: troubleOf(error) };
  }
}

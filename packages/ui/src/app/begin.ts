import type { Plan } from "@headfall/hydraulics";
import { findLastPlan } from "../storage/find-last-plan.js";
import { hasLeftovers } from "../storage/leftovers.js";
import { LINK_MARK } from "../storage/link-mark.js";
import type { PlanShelf } from "../storage/plan-shelf.js";
import { type StorageTrouble, troubleOf } from "../storage/storage-trouble.js";
import type { OpenablePlan } from "../storage/stored-plan.js";
import { lastPlans } from "./preferences.js";
import type { Notice } from "./shell.js";

/** What the page begins with. */
export interface Begun {
  /** The plan last worked on; undefined when there is none, or none that can be reached. */
  readonly kept?: OpenablePlan | undefined;
  /** A plan that is not kept yet, as one that came by a link. */
  readonly arrived?: Plan;
  readonly trouble?: StorageTrouble;
  readonly news?: Notice;
}

/** Finds what to show first: what came by a link or was left unsaved, else the plan last worked on. */
export async function begin(shelf: PlanShelf): Promise<Begun> {
  if (location.hash.startsWith(LINK_MARK) || hasLeftovers()) {
    const otherwise = await import("./begin-otherwise.js").catch(() => undefined);
    // Not to be fetched now: what was left stays left, and the link stays in the address.
    if (otherwise !== undefined) return otherwise.beginOtherwise(shelf);
  }
  return beginWithLast(shelf);
}

export async function beginWithLast(shelf: PlanShelf, wanted = lastPlans()): Promise<Begun> {
  try {
    return { kept: await findLastPlan(shelf, wanted) };
  } catch (error) {
    return { trouble: troubleOf(error) };
  }
}

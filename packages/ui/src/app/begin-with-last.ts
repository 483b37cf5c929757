import type { Plan } from "@headfall/hydraulics";
import type { PlanShelf } from "../storage/plan-shelf.js";
import { StorageTrouble, troubleOf } from "../storage/storage-trouble.js";
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
  // What is kept has to be checked before it is shown. What checks it is fetched while the shelf is opened, but not on a
  // first visit, when there is nothing on it.
  const early = wanted.length > 0 ? fetchFinder() : undefined;
  early?.catch(() => undefined); // told below
  try {
    if (early === undefined && (await shelf.isEmpty())) return {};
    const { findLastPlan } = await (early ?? fetchFinder());
    return { kept: await findLastPlan(shelf, wanted) };
  } catch (error) {
    return { trouble: troubleOf(error) };
  }
}

const fetchFinder = () =>
  import("../storage/find-last-plan.js").catch((error: unknown) => {
    throw new StorageTrouble("unread", error);
  });

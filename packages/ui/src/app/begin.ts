import { hasLeftovers } from "../storage/leftovers.js";
import { LINK_MARK } from "../storage/link-mark.js";
import type { PlanShelf } from "../storage/plan-shelf.js";
import { type Begun, beginWithLast } from "./begin-with-last.js";

/** Finds what to show first: what came by a link or was left unsaved, else the plan last worked on. */
export async function begin(shelf: PlanShelf): Promise<Begun> {
  if (location.hash.startsWith(LINK_MARK) || hasLeftovers()) {
    const otherwise = await import("./begin-otherwise.js").catch(() => undefined);
    // Not to be fetched now: what was left stays left, and the link stays in the address.
    if (otherwise !== undefined) return otherwise.beginOtherwise(shelf);
  }
  return beginWithLast(shelf);
}

import { leaveAgain, takeLeftovers } from "../storage/leftovers.js";
import { LINK_MARK } from "../storage/link-mark.js";
import { PlanLibrary } from "../storage/plan-library.js";
import type { PlanShelf } from "../storage/plan-shelf.js";
import { recoverLeftover } from "../storage/recover-leftover.js";
import { type Begun, beginWithLast } from "./begin-with-last.js";
import { takeLink } from "./linked-plan.js";
import { lastPlans } from "./preferences.js";

/** Begins with what was left unsaved, or with what came by a link. */
export async function beginOtherwise(shelf: PlanShelf): Promise<Begun> {
  const recovered = await recoverAll(new PlanLibrary(shelf));
  const linked = location.hash.startsWith(LINK_MARK) ? await takeLink() : undefined;
  if (linked?.plan !== undefined) return { arrived: linked.plan, news: linked.news };
  const begun = await beginWithLast(shelf, [...recovered.slice(-1), ...lastPlans()]);
  return linked === undefined ? begun : { ...begun, news: linked.news };
}

/** Saves what pages were left with; tells under which ids. What cannot be saved now is left for another time. */
async function recoverAll(library: PlanLibrary): Promise<string[]> {
  const ids: string[] = [];
  for (const leftover of takeLeftovers()) {
    try {
      ids.push((await recoverLeftover(library, leftover.text)) ?? "");
    } catch {
      leaveAgain(leftover);
    }
  }
  return ids;
}

import { LINK_MARK } from "../storage/link-mark.js";
import type { Desk } from "./desk.js";
import { takeLink } from "./linked-plan.js";

/** Saves before the page goes out of sight or is left; brings in what came while it was away, or by a link. */
export function watchPage(desk: Desk): void {
  document.addEventListener("visibilitychange", () => {
    void (document.visibilityState === "hidden" ? desk.flush() : desk.lookElsewhere());
  });
  addEventListener("pagehide", () => desk.leave());
  addEventListener("pageshow", () => void desk.lookElsewhere());
  addEventListener("beforeunload", (event) => {
    if (desk.isUnsavable) event.preventDefault();
  });
  addEventListener("hashchange", () => {
    if (location.hash.startsWith(LINK_MARK)) void openLinked(desk);
  });
}

async function openLinked(desk: Desk): Promise<void> {
  const { plan, news } = await takeLink();
  if (plan !== undefined) await desk.openNew(plan);
  desk.tell(news);
}

import { Workbox } from "workbox-window";
import type { Desk } from "./desk.js";

/**
 * Lets the page work without a network from the next visit on. When a newer page has been fetched, it says so and
 * waits to be wanted; before it takes over, everything is saved.
 */
export async function workOffline(desk: Desk): Promise<void> {
  if (!("serviceWorker" in navigator)) return;
  const workbox = new Workbox("./sw.js");
  let isWanted = false;
  const takeOver = async () => {
    isWanted = true;
    await desk.flush();
    workbox.messageSkipWaiting();
  };
  workbox.addEventListener("waiting", () => {
    desk.tell({
      key: "newer",
      words: "A newer Headfall is ready. Your plans stay as they are.",
      acts: [{ words: "Use it now", act: takeOver }],
      closeWords: "Later",
    });
  });
  workbox.addEventListener("controlling", ({ isUpdate, isExternal }) => {
    if (isWanted) location.reload();
    else if (isUpdate || isExternal) sayRenewed(desk);
  });
  askToKeep();
  // Refused by the browser, or not a secure address: the page works as before, only not without a network.
  await workbox.register().catch(() => undefined);
}

/** An installed page asks the browser not to clear its plans away; a page in a tab does not bother anyone with it. */
function askToKeep(): void {
  if (!matchMedia("(display-mode: standalone)").matches) return;
  void navigator.storage?.persist?.().catch(() => undefined);
}

/** Another tab has brought the newer page; this one still runs the older, whose parts are no longer kept here. */
function sayRenewed(desk: Desk): void {
  const renew = async () => {
    await desk.flush();
    location.reload();
  };
  desk.tell({
    key: "newer",
    words: "Headfall was renewed in another tab. This tab still shows the older one.",
    acts: [{ words: "Renew this tab", act: renew }],
    closeWords: "Later",
  });
}

/** What the pages of the site do beyond being read: search, plans to work on, and all of it without a network. */
import { markScrollers } from "./scrollers.js";
import { setUpSearch } from "./search.js";
import { watchLive } from "./watch-live.js";

const root = new URL(document.documentElement.dataset["root"] ?? "", location.href);

setUpSearch(document.querySelector("form.search")!, root);
watchLive(document.querySelectorAll<HTMLElement>("figure.live"));
markScrollers(document.querySelectorAll<HTMLElement>(".scroll, pre"));
// Refused by the browser, or not a secure address: the pages are read as before, only not without a network.
void navigator.serviceWorker?.register(new URL("sw.js", root)).catch(() => undefined);

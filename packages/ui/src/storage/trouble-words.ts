import type { TroubleKind } from "./storage-trouble.js";

const WORDS: Readonly<Record<TroubleKind, string>> = {
  denied: "this browser does not let the page keep anything here (a private window, or a setting)",
  full: "the room this browser gives the page is used up",
  newer: "a newer Headfall keeps the plans here; they are unharmed, and this older page leaves them alone",
  silent: "the browser's storage does not answer",
  failed: "the browser's storage failed",
  unread: "the part of the page that reads kept plans could not be fetched; they are unharmed",
};

/** Why nothing is kept, as the end of a sentence. */
export function writeTrouble(kind: TroubleKind): string {
  return WORDS[kind];
}

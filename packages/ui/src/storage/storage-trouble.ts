/** Why the browser keeps no plans: told to the user in `writeTrouble`. */
export type TroubleKind = "denied" | "full" | "newer" | "silent" | "failed" | "unread";

/** The browser would not keep or give back plans. The plan in hand is not touched by that. */
export class StorageTrouble extends Error {
  constructor(
    readonly kind: TroubleKind,
    cause?: unknown,
  ) {
    super(`Storage: ${kind}`, { cause });
  }
}

const KINDS: Readonly<Record<string, TroubleKind>> = {
  VersionError: "newer",
  QuotaExceededError: "full",
  SecurityError: "denied",
  NotAllowedError: "denied",
  TypeError: "denied",
  ReferenceError: "denied",
  AbortError: "silent",
};

/** What an error of the browser's database means for the user. */
export function troubleOf(error: unknown): StorageTrouble {
  if (error instanceof StorageTrouble) return error;
  const name = error instanceof Error || error instanceof DOMException ? error.name : "";
  return new StorageTrouble(KINDS[name] ?? "failed", error);
}

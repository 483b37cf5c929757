const KEY = "headfall-leftover-";

/** Changes that could not be saved before a page was left: written at once, where nothing has to be waited for. */
export interface LeftoverText {
  readonly key: string;
  readonly text: string;
}

/** Whether a page was left with changes that the plans do not hold yet. */
export function hasLeftovers(): boolean {
  return leftoverKeys().length > 0;
}

function leftoverKeys(): string[] {
  try {
    return Object.keys(localStorage).filter((key) => key.startsWith(KEY));
  } catch {
    return []; // storage is denied
  }
}

/** Takes them out, so that no other tab takes them too. */
export function takeLeftovers(): LeftoverText[] {
  return leftoverKeys().flatMap((key) => {
    const text = localStorage.getItem(key);
    localStorage.removeItem(key);
    return text === null ? [] : [{ key, text }];
  });
}

export function leaveText(page: string, text: string): void {
  leaveAgain({ key: KEY + page, text });
}

export function leaveAgain({ key, text }: LeftoverText): void {
  try {
    localStorage.setItem(key, text);
  } catch {
    // Denied or full: the page has said for as long as it stood that the plan is not saved.
  }
}

/** The page goes on after all, and has saved. */
export function forgetLeftover(page: string): void {
  try {
    localStorage.removeItem(KEY + page);
  } catch {
    // Denied: there is nothing to forget.
  }
}

/** A share such as "50 %". */
export const SHARE = /^\s*(\d{1,3}(?:\.\d+)?)\s*%\s*$/;

/** "50 %" as 0.5; undefined when it is no share. */
export function readShare(typed: string): number | undefined {
  const match = SHARE.exec(typed);
  if (match === null) return undefined;
  const share = Number(match[1]) / 100;
  return share <= 1 ? share : undefined;
}

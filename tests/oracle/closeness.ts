import { expect } from "vitest";

/** How far two numbers may stand apart: by a share, or by an amount; the wider counts. */
export interface Bound {
  readonly relative: number;
  readonly absolute?: number;
}

/** Every number within a share of its partner, or within an absolute floor; says which one is worst. */
export function expectClose(
  what: string,
  ours: ArrayLike<number>,
  theirs: ArrayLike<number>,
  bound: Bound,
): void {
  expect(ours.length, `${what}: how many`).toBe(theirs.length);
  let worst = { excess: 0, at: -1 };
  for (let i = 0; i < ours.length; i += 1) {
    const allowed = Math.max(bound.relative * Math.abs(theirs[i]!), bound.absolute ?? 0);
    const left = Math.abs(ours[i]! - theirs[i]!);
    const excess = left <= allowed ? 0 : left / allowed;
    if (!(excess <= worst.excess)) worst = { excess, at: i };
  }
  const { at } = worst;
  expect(at, at < 0 ? what : `${what}, number ${at}: ours ${ours[at]}, theirs ${theirs[at]}`).toBe(-1);
}

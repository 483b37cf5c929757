/** Whether two results are of one guard: what comes from the worker are copies, of a line's guards and of a waterer's. */
export const isSameGuard = (one: { readonly guard: object }, other: { readonly guard: object }): boolean =>
  JSON.stringify(one.guard) === JSON.stringify(other.guard);

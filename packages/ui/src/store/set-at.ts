import type { PlanChange } from "./plan-change.js";
import type { Path } from "./plan-values.js";

/** The edit that types one key anew. */
export const setAt =
  (path: Path, what: string) =>
  (value: unknown): PlanChange => ({ kind: "set", path, value, what });

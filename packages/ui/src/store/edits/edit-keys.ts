import type { Plan } from "@headfall/hydraulics";
import type { Edited } from "../plan-change.js";
import { type Path, withValue } from "../plan-values.js";

/** Types keys of the plan anew, or takes them out where their value is undefined. */
export function editKeys(
  plan: Plan,
  entries: readonly { readonly path: Path; readonly value: unknown }[],
  what: string,
): Edited {
  const edited = entries.reduce<unknown>((whole, { path, value }) => withValue(whole, path, value), plan);
  return { ok: true, plan: edited as Plan, words: what };
}

import { checkDocument, type Plan, writeProblem } from "@headfall/hydraulics";
import type { Edited } from "../plan-change.js";
import { withValue } from "../plan-values.js";

type Path = readonly (string | number)[];

/** Types one key of the plan anew, or takes it out; what does not make a plan is refused with its problem. */
export function editKey(plan: Plan, path: Path, value: unknown, what: string): Edited {
  return editKeys(plan, [{ path, value }], what);
}

export function editKeys(
  plan: Plan,
  entries: readonly { readonly path: Path; readonly value: unknown }[],
  what: string,
): Edited {
  const edited = entries.reduce<unknown>((whole, { path, value }) => withValue(whole, path, value), plan);
  const reading = checkDocument(edited);
  if (!reading.ok) return { ok: false, because: reading.problems.map(writeProblem).join(" ") };
  return { ok: true, plan: edited as Plan, words: what };
}

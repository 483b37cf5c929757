import { DEFAULTS, type Plan } from "@headfall/hydraulics";
import type { PlanChange } from "./plan-change.js";
import { partWith } from "./plan-values.js";
import { setAt } from "./set-at.js";

/**
 * One key of the weather typed anew. A plan that says anything of its weather says how warm it is; what is taken for
 * granted is then written down.
 */
export function weatherChange(
  { weather }: Plan,
  { key, value, what }: { readonly key: string; readonly value: unknown; readonly what: string },
): PlanChange {
  const told = partWith(weather, key, value);
  return setAt(["weather"], what)(told && { high: DEFAULTS.air.typed, ...told });
}

/** The same of the night of frost, which says how cold it is. */
export function frostChange(
  plan: Plan,
  { key, value, what }: { readonly key: string; readonly value: unknown; readonly what: string },
): PlanChange {
  const told = partWith(plan.weather?.frost, key, value);
  return weatherChange(plan, {
    key: "frost",
    value: told && { low: DEFAULTS.frostLow.typed, ...told },
    what,
  });
}

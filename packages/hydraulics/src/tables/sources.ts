import type { Source } from "./row-types.js";
import { sources } from "./sources.generated.js";

export type { Source } from "./row-types.js";

/** Every source, by key. */
export const allSources: readonly Source[] = sources;

const byKey = new Map(sources.map((source) => [source.key, source]));

/**
 * The source a citation names.
 *
 * @example sourceByKey("hazen-williams-si").title   // "Hazen-Williams formula in SI units, general page"
 */
export function sourceByKey(key: string): Source | undefined {
  return byKey.get(key);
}

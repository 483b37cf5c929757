import type { Source } from "./row-types.js";
import { sources } from "./sources.generated.js";

export type { Source } from "./row-types.js";

/** Every source, by key. */
export const allSources: readonly Source[] = sources;

const byKey = new Map(sources.map((source) => [source.key, source]));

/** The source a citation names. */
export function sourceByKey(key: string): Source | undefined {
  return byKey.get(key);
}

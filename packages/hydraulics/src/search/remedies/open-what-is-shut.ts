import { runNames, sourceNames } from "../../document/run-ends.js";
import { NO_COST } from "../cost.js";
import type { Change } from "../cure-answer.js";
import { typedLength } from "../cure-space.js";
import type { Ailing, Remedy } from "./remedy.js";

/** Taps that are shut or half open, opened: all of them. */
export function openTaps({ plan }: Ailing): Remedy[] {
  const names = runNames(plan);
  const changes = plan.runs.flatMap(({ tap }, r): Change[] =>
    tap === "half" || tap === "shut" ? [{ code: "openTap", run: names[r], was: tap }] : [],
  );
  if (changes.length === 0) return [];
  const runs = plan.runs.map(({ tap: _, ...run }) => run);
  return [{ kind: "tap", plan: { ...plan, runs }, changes, spent: NO_COST }];
}

/** Air hole of a vessel that was sealed [m]: wide enough for any line of drinkers; common practice, no source. */
const AIR_HOLE = 0.02;

/** Sealed vessels given air: all of them. */
export function openVents({ plan, system }: Ailing): Remedy[] {
  const names = sourceNames(plan);
  const changes = plan.sources.flatMap(({ vent }, s): Change[] =>
    vent === "sealed" ? [{ code: "openVent", source: names[s], opening: AIR_HOLE }] : [],
  );
  if (changes.length === 0) return [];
  const sources = plan.sources.map((source) =>
    source.vent === "sealed" ? { ...source, vent: { opening: typedLength(AIR_HOLE, system) } } : source,
  );
  return [{ kind: "vent", plan: { ...plan, sources }, changes, spent: NO_COST }];
}

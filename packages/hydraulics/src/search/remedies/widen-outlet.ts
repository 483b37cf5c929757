import { runEnds, sourceNames } from "../../document/run-ends.js";
import { addCosts, NO_COST } from "../cost.js";
import type { Change } from "../cure-answer.js";
import { type Ailing, bought, type Remedy } from "./remedy.js";

/** Outlets narrower than a pipe that starts there, made as wide as it: all of them. */
export function widenOutlets({ plan, line }: Ailing): Remedy[] {
  const names = sourceNames(plan);
  const ends = runEnds(plan);
  const widest = (s: number) =>
    Math.max(0, ...line.runs.flatMap(({ index, bore }) => (ends[index].from === names[s] ? [bore] : [])));
  const isNarrow = line.sources.map(
    ({ outletBore }, s) => outletBore !== undefined && outletBore < widest(s) - 1e-9,
  );
  const changes = line.sources.flatMap(({ id, outletBore = 0 }, s): Change[] =>
    isNarrow[s] ? [{ code: "outlet", source: id, from: outletBore }] : [],
  );
  if (changes.length === 0) return [];
  const sources = plan.sources.map((source, s) => {
    if (!isNarrow[s]) return source;
    const { outletBore: _, ...rest } = source;
    return rest;
  });
  const spent = changes.reduce((sum) => addCosts(sum, bought(1, plan.prices?.outlet)), NO_COST);
  return [{ kind: "outlet", plan: { ...plan, sources }, changes, spent }];
}

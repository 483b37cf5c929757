import type { DoubtedInput } from "./doubted-inputs.js";
import type { Better, CloseCall, Worthwhile } from "./measuring.js";

interface Growing {
  better: Better;
  readonly drinkers: string[];
  readonly with: DoubtedInput[];
}

/**
 * The measurements that the close calls ask for, those that decide most drinkers first: one entry for each thing in
 * doubt, as good as the most demanding of its drinkers needs it.
 */
export function rankMeasurements(close: readonly CloseCall[]): Worthwhile[] {
  const asked = new Map<string, Growing>();
  const ask = (better: Better, drinker: string, other?: Better) => {
    const key = JSON.stringify(better.input);
    const known = asked.get(key) ?? { better, drinkers: [], with: [] };
    if (better.needed < known.better.needed) known.better = better;
    known.drinkers.push(drinker);
    if (other !== undefined && !known.with.some(({ input }) => input === other.input))
      known.with.push({ input: other.input, doubt: other.doubt });
    asked.set(key, known);
  };
  for (const { drinker, remedy } of close) {
    if (remedy.kind === "one") for (const better of [remedy.better, ...remedy.or]) ask(better, drinker);
    if (remedy.kind === "two") {
      const [one, other] = remedy.better;
      ask(one, drinker, other);
      ask(other, drinker, one);
    }
  }
  return [...asked.values()]
    .sort((a, b) => b.drinkers.length - a.drinkers.length)
    .map(({ better, drinkers, with: others }) => ({ ...better, drinkers, with: others }));
}

import { type DayResult, SHORT_BELOW } from "@headfall/hydraulics";

/** Birds of one batch that came short. */
export interface ShortBatch {
  readonly pen: number;
  readonly batch: number;
  readonly birds: number;
  readonly short: number;
  /** What these together wanted and did not get [m³]. */
  readonly missing: number;
  /** What the worst of them got of what it wanted, as a share. */
  readonly least: number;
}

/** Who came short of what they wanted, batch by batch, the worst first. */
export function shortBatches({ birds }: DayResult): ShortBatch[] {
  const found = new Map<string, { -readonly [Key in keyof ShortBatch]: ShortBatch[Key] }>();
  for (const { pen, batch, wanted, drunk } of birds) {
    const key = `${pen} ${batch}`;
    const one = found.get(key) ?? { pen, batch, birds: 0, short: 0, missing: 0, least: 1 };
    found.set(key, one);
    one.birds += 1;
    if (drunk >= SHORT_BELOW * wanted) continue;
    one.short += 1;
    one.missing += wanted - drunk;
    one.least = Math.min(one.least, drunk / wanted);
  }
  return [...found.values()].filter(({ short }) => short > 0).sort((a, b) => a.least - b.least);
}

/** The level noted last before a time; before the first, the first. */
export function levelAt({ levels }: Pick<DayResult, "levels">, source: number, time: number): number {
  const level = levels.level[source];
  if (level === undefined || level.length === 0) return 0;
  let at = 0;
  while (at + 1 < levels.time.length && levels.time[at + 1]! <= time) at += 1;
  return level[at]!;
}

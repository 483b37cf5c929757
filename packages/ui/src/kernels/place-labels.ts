/** A label that wants its middle at `at` and needs `size` px; a higher `weight` is kept when not all fit. */
export interface WantedLabel {
  readonly at: number;
  readonly size: number;
  readonly weight: number;
}

/** Where a label went: its middle, or undefined when it was left out. */
export type PlacedLabel = number | undefined;

/**
 * Places labels along a line so that none overlap and all stay within it, each as near to where it wants to be as
 * its neighbours let it. When they cannot all fit, the lightest are left out.
 *
 * @param wanted  labels, in any order
 * @param low     start of the line [px]
 * @param high    end of the line [px]
 * @param gap     least space between two labels [px]
 * @returns the middle of each label in the order of `wanted`; undefined for one left out
 */
export function placeLabels(
  wanted: readonly WantedLabel[],
  low: number,
  high: number,
  gap: number,
): readonly PlacedLabel[] {
  const kept = keepWhatFits(wanted, high - low, gap);
  const order = [...kept].sort((a, b) => wanted[a]!.at - wanted[b]!.at);
  const middles = order.map((index) => wanted[index]!.at);
  const sizes = order.map((index) => wanted[index]!.size);
  pushRight(middles, sizes, low, gap);
  pushLeft(middles, sizes, high, gap);
  const placed: PlacedLabel[] = wanted.map(() => undefined);
  order.forEach((index, i) => {
    placed[index] = middles[i];
  });
  return placed;
}

/** Heaviest first, as many as the length holds. */
function keepWhatFits(wanted: readonly WantedLabel[], length: number, gap: number): number[] {
  const byWeight = wanted
    .map((_, index) => index)
    .sort((a, b) => wanted[b]!.weight - wanted[a]!.weight || a - b);
  const kept: number[] = [];
  let used = 0;
  for (const index of byWeight) {
    const needed = wanted[index]!.size + (kept.length > 0 ? gap : 0);
    if (used + needed > length) continue;
    used += needed;
    kept.push(index);
  }
  return kept;
}

function pushRight(middles: number[], sizes: readonly number[], low: number, gap: number): void {
  let free = low;
  for (let i = 0; i < middles.length; i++) {
    middles[i] = Math.max(middles[i]!, free + sizes[i]! / 2);
    free = middles[i]! + sizes[i]! / 2 + gap;
  }
}

function pushLeft(middles: number[], sizes: readonly number[], high: number, gap: number): void {
  let free = high;
  for (let i = middles.length - 1; i >= 0; i--) {
    middles[i] = Math.min(middles[i]!, free - sizes[i]! / 2);
    free = middles[i]! - sizes[i]! / 2 - gap;
  }
}

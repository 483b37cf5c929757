import type { SizeComparison } from "../../search/compare-sizes.js";

const SIZES_FORMAT = { format: "headfall sizes", version: 1 } as const;

/**
 * A comparison of sizes as a plain document, SI throughout; described in docs/reference/check-result.md.
 *
 * @example writeSizesDocument(sizes).format   // "headfall sizes"
 */
export function writeSizesDocument(comparison: SizeComparison) {
  return {
    ...SIZES_FORMAT,
    runs: comparison.runs,
    smallestThatWorks: comparison.smallestThatWorks ?? null,
    smallestThatFeeds: comparison.smallestThatFeeds ?? null,
    money: comparison.money ?? null,
    sizes: comparison.rows.map(({ worst, cost, ...row }) => ({
      ...row,
      cost: cost ?? null,
      worst:
        worst === undefined
          ? null
          : {
              drinker: worst.drinker,
              verdict: worst.verdict,
              margin: worst.margin,
              lowestBusiest: worst.moments.lowestBusiest,
            },
    })),
  };
}

import type { Variant } from "../../search/compare-variants.js";

/**
 * Variants beside each other as a plain document, SI throughout; described in docs/reference/compare-result.md.
 *
 * @example writeVariantsDocument(variants).format   // "headfall compare"
 */
export function writeVariantsDocument(variants: readonly Variant[]) {
  return {
    format: "headfall compare",
    version: 1,
    variants: variants.map(({ name, money, figures, differences }) => ({
      name,
      money: money ?? null,
      figures: Object.fromEntries(Object.entries(figures).map(([key, value]) => [key, value ?? null])),
      differences: differences.map(({ path, part, first, other }) => ({
        path,
        part: part ?? null,
        first: first ?? null,
        other: other ?? null,
      })),
    })),
  };
}

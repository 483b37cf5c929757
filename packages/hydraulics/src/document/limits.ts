/** Ceilings that keep a hostile file from costing more than a moment. */
export const LIMITS = {
  textLength: 8_000_000,
  depth: 40,
  runs: 20_000,
  drinkers: 200_000,
  name: 80,
  note: 4000,
} as const;

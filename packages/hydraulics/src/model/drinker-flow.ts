import type { Drinkers } from "./line.js";

/**
 * What drinker `d` of a line passes while worked, with `head` at its valve [m3/s]: the law of physics/orifice.ts on the
 * line's columns, without an object for every drinker.
 */
export function flowOfDrinker(drinkers: Drinkers, d: number, head: number): number {
  const spare = head - drinkers.openingHead[d];
  if (spare <= 0) return 0;
  const exponent = drinkers.exponent[d];
  return drinkers.coefficient[d] * (exponent === 0.5 ? Math.sqrt(spare) : spare ** exponent);
}

/** Head at its valve with which drinker `d` passes `flow` [m]: the inverse; its opening head for no flow. */
export function headOfDrinker(drinkers: Drinkers, d: number, flow: number): number {
  const share = flow / drinkers.coefficient[d];
  const exponent = drinkers.exponent[d];
  return drinkers.openingHead[d] + (exponent === 0.5 ? share * share : share ** (1 / exponent));
}

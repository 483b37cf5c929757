import { QUANTITY_KINDS, type QuantityKind, UNITS, type Unit } from "./unit-list.js";

const spelled = (units: readonly Unit[]): ReadonlyMap<string, Unit> =>
  new Map(units.flatMap((one) => one.spellings.map((spelling) => [spelling, one] as const)));

const SPELLINGS = Object.fromEntries(QUANTITY_KINDS.map((kind) => [kind, spelled(UNITS[kind])])) as Readonly<
  Record<QuantityKind, ReadonlyMap<string, Unit>>
>;

/**
 * The unit a text names, whatever its capitals. "ML" is refused: strictly it is a megalitre, mostly it is meant as
 * a millilitre.
 *
 * @param kind  what is measured
 * @param text  the unit as typed, single spaces, "/" without spaces
 * @returns the unit, or undefined when the kind has none of that name
 */
export function findUnit(kind: QuantityKind, text: string): Unit | undefined {
  if (/^M[lL](\/|$)/.test(text)) return undefined;
  const name = text.toLowerCase();
  const whole = SPELLINGS[kind].get(name);
  if (whole !== undefined || kind !== "flow") return whole;
  const [volumeName, timeName, ...rest] = name.split("/");
  if (rest.length > 0 || volumeName === undefined || timeName === undefined) return undefined;
  const volume = SPELLINGS.volume.get(volumeName.trim());
  const time = SPELLINGS.time.get(timeName.trim());
  if (volume === undefined || time === undefined) return undefined;
  return SPELLINGS.flow.get(`${volume.symbol}/${time.symbol}`.toLowerCase());
}

/** A value in a unit, as SI. */
export function toSi(value: number, one: Unit): number {
  if (one.isAngle) return Math.tan((value * Math.PI) / 180);
  return ((value - (one.zero ?? 0)) * one.times) / one.by;
}

/** A value in SI, in a unit. */
export function fromSi(si: number, one: Unit): number {
  if (one.isAngle) return (Math.atan(si) * 180) / Math.PI;
  return (si * one.by) / one.times + (one.zero ?? 0);
}

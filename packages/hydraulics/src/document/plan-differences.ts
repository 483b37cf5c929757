import type { Plan } from "./plan-schema.js";
import { type PathStep, writePath } from "./problem.js";

/** One place where two plans say something else; undefined where one of them says nothing. */
export interface PlanDifference {
  /** As problems tell it: `sources[0].stand`; of a part that only one plan has, the place in that one. */
  readonly path: string;
  /** Id of the part it belongs to, where that has one. */
  readonly part: string | undefined;
  readonly first: unknown;
  readonly other: unknown;
}

/**
 * All that two plans say differently. Parts with an id (runs, points, sources, pens) are held against the part of the
 * same id, wherever it stands; a part that only one of them has is told whole. Quantities are compared as typed.
 *
 * @example planDifferences(plan, { ...plan, water: "20 degC" })[0].path   // "water"
 */
export function planDifferences(first: Plan, other: Plan): PlanDifference[] {
  return differences(first, other, { path: [], part: undefined });
}

interface Place {
  readonly path: readonly PathStep[];
  readonly part: string | undefined;
}

function differences(first: unknown, other: unknown, place: Place): PlanDifference[] {
  if (Object.is(first, other)) return [];
  if (isList(first) && isList(other)) return listDifferences(first, other, place);
  if (isRecord(first) && isRecord(other)) {
    const keys = new Set([...Object.keys(first), ...Object.keys(other)]);
    return [...keys].flatMap((key) => differences(first[key], other[key], inside(place, key, first)));
  }
  return [{ path: writePath(place.path), part: place.part, first, other }];
}

function listDifferences(
  first: readonly unknown[],
  other: readonly unknown[],
  place: Place,
): PlanDifference[] {
  const pairs = first.map((entry, i): [number, unknown, unknown] => {
    const id = idOf(entry);
    const twin = id === undefined ? other[i] : other.find((each) => idOf(each) === id);
    return [i, entry, twin];
  });
  const met = new Set(pairs.map(([, , twin]) => twin));
  const added = other.flatMap((entry, i): [number, unknown, unknown][] =>
    met.has(entry) ? [] : [[i, undefined, entry]],
  );
  return [...pairs, ...added].flatMap(([i, one, two]) => differences(one, two, inside(place, i, one ?? two)));
}

const inside = ({ path, part }: Place, step: PathStep, within: unknown): Place => ({
  path: [...path, step],
  part: idOf(within) ?? part,
});

const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value);
const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const idOf = (value: unknown): string | undefined =>
  isRecord(value) && typeof value["id"] === "string" ? value["id"] : undefined;

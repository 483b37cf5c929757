import { keyOfLook, type Line, type Look, type Sign } from "@headfall/hydraulics";

/** What was told of a look; undefined where nothing was. */
export function seenAt(signs: readonly Sign[], look: Look): string | undefined {
  const key = keyOfLook(look);
  const sign = signs.find((one) => keyOfLook(one) === key);
  return sign === undefined || sign.look === "jug" ? undefined : sign.sees;
}

/** What was told, by the key of its look; of jugs nothing. */
export const seenByLook = (signs: readonly Sign[]): ReadonlyMap<string, string> =>
  new Map(signs.flatMap((sign) => (sign.look === "jug" ? [] : [[keyOfLook(sign), sign.sees] as const])));

/** The signs with one more; what was told of the same look before is no longer so. */
export function withSign(signs: readonly Sign[], sign: Sign): readonly Sign[] {
  const key = keyOfLook(sign);
  return [...signs.filter((one) => keyOfLook(one) !== key), sign];
}

/** The signs without what was told of a look, or of a jug. */
export function withoutSign(signs: readonly Sign[], look: Look | Sign): readonly Sign[] {
  const key = keyOfLook(look);
  return signs.filter((one) => keyOfLook(one) !== key);
}

/**
 * The signs with the same answer at many places, in their order; where all of them show it already, with none of it: a
 * second press takes back the first.
 */
export function withAnswerAtAll(
  signs: readonly Sign[],
  looks: readonly Look[],
  sees: string,
): readonly Sign[] {
  const seen = seenByLook(signs);
  const isTold = looks.every((look) => seen.get(keyOfLook(look)) === sees);
  const keys = new Set(looks.map(keyOfLook));
  const others = signs.filter((one) => !keys.has(keyOfLook(one)));
  return isTold ? others : [...others, ...looks.map((look): Sign => ({ ...look, sees }))];
}

/** Those whose place the line still has: a plan may change while it is being looked at. */
export function signsOn(line: Line, signs: readonly Sign[]): readonly Sign[] {
  const names = {
    drinker: new Set(line.drinkers.id),
    run: new Set(line.runs.map(({ id }) => id)),
    source: new Set(line.sources.map(({ id }) => id)),
  };
  const kept = signs.filter(({ at, id }) => names[at].has(id));
  return kept.length === signs.length ? signs : kept;
}

/** Whether some source was found empty. */
export const isFoundEmpty = (signs: readonly Sign[]): boolean =>
  signs.some((sign) => sign.look === "water" && sign.sees === "empty");

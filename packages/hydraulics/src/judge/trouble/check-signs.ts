import { type Problem, writeFound } from "../../document/problem.js";
import type { Line } from "../../model/line.js";
import type { PlacesByName } from "./chances.js";
import { ANSWERS, keyOfLook, PLACES_OF, type Place, type Sign } from "./signs.js";

/** Places of a line by name; of those that share a name, the first. */
export function placesByName({ drinkers, runs, sources }: Line): PlacesByName {
  const byName = (names: readonly string[]) => {
    const places = new Map<string, number>();
    names.forEach((name, i) => {
      if (!places.has(name)) places.set(name, i);
    });
    return places;
  };
  return {
    drinker: byName(drinkers.id),
    run: byName(runs.map(({ id }) => id)),
    source: byName(sources.map(({ id }) => id)),
  };
}

/** What does not fit the plan in a list of signs; empty where all do. Nothing about them is trusted. */
export function checkSigns(signs: readonly Sign[], places: PlacesByName): Problem[] {
  const seen = new Map<string, number>();
  return signs.flatMap((sign, k) => {
    const path = `signs[${k}]`;
    const found = checkSign(sign, path, places);
    if (found.length > 0) return found;
    const key = keyOfLook(sign);
    const before = seen.get(key);
    seen.set(key, k);
    return before === undefined ? [] : [toldTwice(path, sign, before)];
  });
}

function checkSign(sign: Sign, path: string, places: PlacesByName): Problem[] {
  if (!Object.hasOwn(PLACES_OF, sign.look))
    return [choice(`${path}.look`, sign.look, Object.keys(PLACES_OF))];
  if (!PLACES_OF[sign.look].includes(sign.at)) return [choice(`${path}.at`, sign.at, PLACES_OF[sign.look])];
  if (!places[sign.at].has(sign.id)) return [unknownPlace(`${path}.id`, sign.at, sign.id, places)];
  if (sign.look === "jug") {
    if (Number.isFinite(sign.flow) && sign.flow >= 0) return [];
    return [
      {
        code: "outOfRange",
        path: `${path}.flow`,
        found: writeFound(sign.flow),
        allowed: "A flow is a number of m³/s, 0 or more.",
        mend: "Write for instance 1e-6, which is 60 mL/min.",
      },
    ];
  }
  const answers: readonly string[] = ANSWERS[sign.look];
  return answers.includes(sign.sees) ? [] : [choice(`${path}.sees`, sign.sees, answers)];
}

const choice = (path: string, found: unknown, choices: readonly string[]): Problem => ({
  code: "notAChoice",
  path,
  found: writeFound(found),
  allowed: `It is one of ${choices.join(", ")}.`,
  mend: "Take one of these.",
});

/** Names shown of a line that has many. */
const MOST_SHOWN = 6;

function unknownPlace(path: string, at: Place, id: unknown, places: PlacesByName): Problem {
  const names = [...places[at].keys()];
  const shown = names.slice(0, MOST_SHOWN).map((name) => JSON.stringify(name));
  const more = names.length > MOST_SHOWN ? ` and ${names.length - MOST_SHOWN} more` : "";
  return {
    code: "unknownName",
    path,
    found: writeFound(id),
    allowed: names.length === 0 ? `The plan has no ${at}.` : `The plan's ${at}s: ${shown.join(", ")}${more}.`,
    mend: "Write a name as the check of the plan prints it.",
  };
}

const toldTwice = (path: string, sign: Sign, before: number): Problem => ({
  code: "nameTwice",
  path,
  found: writeFound(`${sign.look} at ${sign.id}`),
  allowed: `Each look is told once; signs[${before}] tells it already.`,
  mend: "Leave one of the two out.",
});

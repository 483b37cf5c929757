import type { BirdKind } from "../tables/bird-types.js";
import { allBirds } from "../tables/birds.js";
import {
  type Found,
  findBird,
  findDrinker,
  findFitting,
  findPipe,
  findRoof,
  findVessel,
  findWaterer,
  kindMeant,
  namedWaterers,
} from "../tables/by-name.js";
import { allDrinkers } from "../tables/drinkers.js";
import { allFittings } from "../tables/fittings.js";
import { kindFound } from "../tables/found.js";
import { allRoofs } from "../tables/roofs.js";
import type { DrinkerKind, FittingKind, PipeSize, RoofKind, VesselKind } from "../tables/row-types.js";
import { allVessels } from "../tables/vessels.js";
import { type Problem, writeFound } from "./problem.js";

/** "elbow-90 x 4" as its name and count; a bare name counts once. */
export function readFittingText(text: string): { name: string; count: number } {
  const match = /^(.*?)\s*[x\u00d7]\s*(\d{1,5})$/i.exec(text.trim());
  return match === null ? { name: text.trim(), count: 1 } : { name: match[1], count: Number(match[2]) };
}

export const findBirdByName = (words: string): BirdKind | undefined => kindMeant(allBirds, words);
export const findPipeByName = (words: string): PipeSize | undefined => kindFound(findPipe(words));
export const findFittingByName = (words: string): FittingKind | undefined => kindMeant(allFittings, words);
export const findDrinkerByName = (words: string): DrinkerKind | undefined => kindMeant(allDrinkers, words);
export const findRoofByName = (words: string): RoofKind | undefined => kindMeant(allRoofs, words);
export const findVesselByName = (words: string): VesselKind | undefined => kindMeant(allVessels, words);
/** The id of a loose waterer; what it is stands in tables/waterers.ts. */
export const findWatererId = (words: string): string | undefined => kindMeant(namedWaterers, words)?.id;

const FINDERS = {
  bird: { find: findBird, example: "hen" },
  pipe: { find: findPipe, example: "pvc-sch40-1/2" },
  fitting: { find: findFitting, example: "elbow-90" },
  drinker: { find: findDrinker, example: "nipple-side-action" },
  roof: { find: findRoof, example: "metal" },
  vessel: { find: findVessel, example: "drum-55gal-plastic" },
  waterer: { find: findWaterer, example: "fount-1gal" },
} as const;

/** The problem of a name that no table has, or undefined when it is known. */
export function unknownName(what: keyof typeof FINDERS, words: string, path: string): Problem | undefined {
  const { find, example } = FINDERS[what];
  const found: Found<{ readonly id: string }> = find(words);
  if (found.outcome === "found") return undefined;
  const near = found.near.map((kind) => kind.id);
  return {
    code: "unknownName",
    path,
    found: writeFound(words),
    allowed: `No ${what} of that name is in the tables.`,
    mend:
      near.length === 0
        ? `Write an id such as "${example}".`
        : `Did you mean ${near.map((id) => `"${id}"`).join(" or ")}?`,
  };
}

import { allBirds, type BirdKind } from "./birds.js";
import { allDrinkers, type DrinkerKind } from "./drinkers.js";
import { editDistance } from "./edit-distance.js";
import { allFittings, type FittingKind } from "./fittings.js";
import { type Found, nearest } from "./found.js";
import { allRoofs, type RoofKind } from "./roofs.js";
import { allVessels, type VesselKind } from "./vessels.js";
import { watererNames } from "./waterer-names.generated.js";

export { findPipe } from "./find-pipe.js";
export type { Found } from "./found.js";

/** A kind of loose waterer, by its names. */
export interface NamedWaterer {
  readonly id: string;
  readonly name: string;
  readonly also: readonly string[];
}

/** Words that tell no kind from another. */
const FILLING = new Set("a an the of in on with for us degree deg fully".split(" "));

const SAME: Readonly<Record<string, string>> = {
  gallon: "gal",
  liter: "l",
  litre: "l",
  quart: "qt",
  ninety: "90",
  ell: "elbow",
  pail: "bucket",
  ibc: "tote",
  bbl: "barrel",
};

/** The telling words of a name, sorted, so that order, case, plurals and hyphens do not matter. */
function tellingWords(text: string): readonly string[] {
  const words = text
    .toLowerCase()
    .replace(/°/g, " ")
    .replace(/(\d)([a-z])/g, "$1 $2")
    .split(/[^a-z0-9.]+/)
    .map((word) => word.replace(/\.$/, ""))
    .map((word) => (word.length > 3 && /[^s]s$/.test(word) ? word.slice(0, -1) : word))
    .map((word) => SAME[word] ?? word);
  return [...new Set(words)].filter((word) => word !== "" && !FILLING.has(word)).sort();
}

/** 1 for equal words, less for words that differ by a letter in three at most, 0 beyond. */
function wordLikeness(word: string, other: string): number {
  if (word === other) return 1;
  if (Math.min(word.length, other.length) < 3) return 0;
  const alike = 1 - editDistance(word, other) / Math.max(word.length, other.length);
  return alike >= 0.6 ? alike : 0;
}

/** Shared words over all words, from 0 to 1 (Dice), slips of the pen counted in part. */
function likeness(asked: readonly string[], name: readonly string[]): number {
  const best = asked.map((word) => Math.max(0, ...name.map((other) => wordLikeness(word, other))));
  return (2 * best.reduce((sum, one) => sum + one, 0)) / (asked.length + name.length);
}

const namesOf = (kind: NamedWaterer) => [kind.id, kind.name, ...kind.also];

/** Exactly one kind with that id, or with all the words and no other word. What is nearest takes far longer to find. */
export function kindMeant<Kind extends NamedWaterer>(
  kinds: readonly Kind[],
  words: string,
): Kind | undefined {
  const exact = kinds.find((kind) => kind.id === words.trim().toLowerCase());
  if (exact !== undefined) return exact;
  const asked = tellingWords(words);
  const isNamed = (name: string) => asked.length > 0 && tellingWords(name).join(" ") === asked.join(" ");
  const fitting = kinds.filter((kind) => namesOf(kind).some(isNamed));
  return fitting.length === 1 ? fitting[0] : undefined;
}

/** The kind meant; otherwise the nearest three. */
function findAmong<Kind extends NamedWaterer>(kinds: readonly Kind[], words: string): Found<Kind> {
  const kind = kindMeant(kinds, words);
  if (kind !== undefined) return { outcome: "found", kind };
  const asked = tellingWords(words);
  const scored = kinds.map((kind) => ({
    kind,
    score: Math.max(...namesOf(kind).map((name) => likeness(asked, tellingWords(name)))),
  }));
  return { outcome: "near", near: nearest(scored, 3) };
}

/**
 * The fitting meant by an id or by what people write, such as "90 degree elbow" or "hose bib".
 *
 * @param words  an id or words
 * @returns the kind, or near misses for a message
 * @example findFitting("elbow 90").outcome   // "found"
 */
export function findFitting(words: string): Found<FittingKind> {
  return findAmong(allFittings, words);
}

/**
 * The drinker meant by an id or by what people write, such as "push-in nipples" or "float cup".
 *
 * @param words  an id or words
 * @returns the kind, or near misses for a message
 * @example findDrinker("nipple-side-action").outcome   // "found"
 */
export function findDrinker(words: string): Found<DrinkerKind> {
  return findAmong(allDrinkers, words);
}

/**
 * The vessel meant by an id or by what people write, such as "5 gallon bucket" or "blue barrel".
 *
 * @param words  an id or words
 * @returns the kind, or near misses for a message
 * @example findVessel("55 gallon drum").kind.id   // "drum-55gal-plastic"
 */
export function findVessel(words: string): Found<VesselKind> {
  return findAmong(allVessels, words);
}

/**
 * The kind of bird meant by an id or by what people write, such as "laying hens" or "meat birds".
 *
 * @param words  an id or words
 * @returns the kind, or near misses for a message
 * @example findBird("laying hens").kind.id   // "hen"
 */
export function findBird(words: string): Found<BirdKind> {
  return findAmong(allBirds, words);
}

/**
 * The roof meant by an id or by what people write, such as "metal" or "clay tiles".
 *
 * @param words  an id or words
 * @returns the kind, or near misses for a message
 * @example findRoof("metal").outcome   // "found"
 */
export function findRoof(words: string): Found<RoofKind> {
  return findAmong(allRoofs, words);
}

/** Loose waterers by their names alone. */
export const namedWaterers: readonly NamedWaterer[] = watererNames.map(([id, name, also]) => ({
  id,
  name,
  also,
}));

/**
 * The loose waterer meant by an id or by what people write, such as "nipple bucket" or "1 gallon fount".
 *
 * @param words  an id or words
 * @returns its id and names, or near misses for a message
 * @example findWaterer("rubber pan").outcome   // "found"
 */
export function findWaterer(words: string): Found<NamedWaterer> {
  return findAmong(namedWaterers, words);
}

import { chanceAbove } from "../../numerics/shares.js";
import type { Expectation, ExpectedSource, Leak, Usual } from "./expectation.js";
import { ANSWERS, answerIndex, type Look, type Looked, type Sign } from "./signs.js";

/**
 * How keepers see: every figure common practice, no source. They are gentle on purpose, so that one odd sign never
 * rules a cause out.
 */
export const SEEING = {
  /** Share of answers that are wrong for no reason. */
  slip: 0.03,
  /** A drinker is called weak below its need, or below this share of what it should give. */
  weakShare: 0.6,
  /** It is called dry below this share of that. */
  dryShare: 0.12,
  /** Spread of what is called weak, and of a jug-and-watch flow, as logarithms of the flow. */
  flowSpread: 0.35,
  jugSpread: 0.3,
  /** A jug held this long under a drinker that gives nothing may still get this much [m3/s]. */
  jugFloor: 2e-8,
  /** Spread of the head beyond which a drinker drips, as a share of it. */
  sealSpread: 0.12,
  /** Fall of a level that is told from none, and its spread [m]. */
  reading: 0.004,
  readingSpread: 0.0015,
  /** In a day the level falls less than marked below this share, faster above that one; spread as a logarithm. */
  lessShare: 0.7,
  fasterShare: 1.4,
  stillShare: 0.12,
  daySpread: 0.2,
  /** Spread of the time a source lasts, as a logarithm. */
  emptySpread: 0.5,
  /** Water this far under where it was thought to stand is called low [m]. */
  lowBy: 0.06,
  lowSpread: 0.02,
  /** A leak that wets the ground for sure, and its spread as a logarithm [m3/s]. */
  wettingFlow: 3e-9,
  wetSpread: 0.7,
  /** Of what runs out at one drinker, the chance that the ground along its whole run is told as wet. */
  wetAlongRun: 0.6,
  /** Of an opened end: shares of what should come. */
  littleShare: 0.6,
  nothingShare: 0.05,
  endSpread: 0.3,
  /** With the lid off a drinker is said to give more from this gain on; spread as a logarithm. */
  lidGain: 1.3,
  lidSpread: 0.1,
} as const;

/** The places of a line by name, as looks name them. */
export interface PlacesByName {
  readonly drinker: ReadonlyMap<string, number>;
  readonly run: ReadonlyMap<string, number>;
  readonly source: ReadonlyMap<string, number>;
}

/** What chances are reckoned with. */
export interface Seen {
  readonly usual: Usual;
  readonly places: PlacesByName;
}

/**
 * Chance of each answer that a look may give, were the line in an expected state; they add up to 1.
 *
 * @throws RangeError when the look names no place of the line
 */
export function chancesOf(look: Look, expectation: Expectation, seen: Seen): number[] {
  const bare = bareChances(look, expectation, seen);
  const slips = SLIPS[look.look];
  return bare.map((p, k) => SEEING.slip * slips[k] + (1 - SEEING.slip) * p);
}

/**
 * Where slips go, in the order of the answers: that all is well is said without looking closely, that something is
 * wrong seldom for nothing. Common practice, no source.
 */
const SLIPS: Readonly<Record<Looked, readonly number[]>> = {
  gives: [0.15, 0.35, 0.5],
  drips: [0.15, 0.85],
  night: [0.4, 0.6],
  day: [0.25, 0.25, 0.25, 0.25],
  water: [0.1, 0.3, 0.6],
  ground: [0.4, 0.6],
  end: [0.2, 0.5, 0.3],
  lid: [0.4, 0.6],
};

/** Natural logarithm of the chance (for a jug: of the density) of a sign in an expected state. */
export function logChanceOf(sign: Sign, expectation: Expectation, seen: Seen): number {
  if (sign.look === "jug")
    return Math.log(jugDensity(expectation.flow[placeIndex(sign, seen.places)], sign.flow));
  const answer = answerIndex(sign);
  if (answer < 0)
    throw new RangeError(`logChanceOf: ${sign.look} sees ${ANSWERS[sign.look].join(", ")}, not ${sign.sees}`);
  return Math.log(chancesOf(sign, expectation, seen)[answer]);
}

/** Logarithm of the chance of a sign were nothing known: every answer alike. */
export function logChanceOfAny(sign: Sign): number {
  return sign.look === "jug" ? Math.log(JUG_ANY) : -Math.log(ANSWERS[sign.look].length);
}

/** Density of any flow over the four powers of ten that drinkers span. */
const JUG_ANY = 1 / Math.log(1e4);

function jugDensity(expected: number, measured: number): number {
  const x = Math.log((measured + SEEING.jugFloor) / (expected + SEEING.jugFloor)) / SEEING.jugSpread;
  const normal = Math.exp(-0.5 * x * x) / (SEEING.jugSpread * Math.sqrt(2 * Math.PI));
  return SEEING.slip * JUG_ANY + (1 - SEEING.slip) * normal;
}

export function placeIndex(
  { at, id }: { readonly at: keyof PlacesByName; readonly id: string },
  places: PlacesByName,
) {
  const index = places[at].get(id);
  if (index === undefined) throw new RangeError(`placeIndex: the line has no ${at} ${JSON.stringify(id)}`);
  return index;
}

function bareChances(look: Look, expectation: Expectation, { usual, places }: Seen): number[] {
  const index = placeIndex(look, places);
  switch (look.look) {
    case "gives":
      return givesChances(expectation.flow[index], weakBelow(usual.need[index], usual.flow[index]));
    case "drips":
      return yesNo(dripChance(expectation.overSeal[index]));
    case "night":
      return nightChances(expectation.sources[index]);
    case "day":
      return dayChances(expectation.sources[index]);
    case "water":
      return waterChances(expectation.sources[index], usual.lastSeen);
    case "ground":
      return yesNo(wetChance(expectation.leaks, look.at, index));
    case "end":
      return endChances(expectation.endShare(index));
    case "lid":
      return yesNo(above(expectation.lidGain(index), { bound: SEEING.lidGain, spread: SEEING.lidSpread }));
  }
}

const yesNo = (chance: number): number[] => [chance, 1 - chance];

/** Chance that a size is seen as above a bound: rises through a half where they are equal, on the scale of logarithms. */
function above(size: number, { bound, spread }: { readonly bound: number; readonly spread: number }): number {
  if (!(size > 0)) return 0;
  if (size === Number.POSITIVE_INFINITY || bound <= 0) return 1;
  return chanceAbove((1.7 * Math.log(size / bound)) / spread);
}

/** Flow below which a drinker is called weak [m3/s]. */
export const weakBelow = (need: number, usual: number): number =>
  Math.max(need, SEEING.weakShare * usual, 1e-9);

function givesChances(flow: number, weak: number): number[] {
  const fine = above(flow, { bound: weak, spread: SEEING.flowSpread });
  const notDry = above(flow, { bound: SEEING.dryShare * weak, spread: SEEING.flowSpread });
  return [1 - notDry, notDry - fine, fine];
}

function dripChance(overSeal: number): number {
  return overSeal === Number.POSITIVE_INFINITY ? 1 : chanceAbove((1.7 * overSeal) / SEEING.sealSpread);
}

function nightChances({ nightFall, nightUsual, isKeptFull }: ExpectedSource): number[] {
  // What fills it hides a small fall; neither answer tells much then.
  if (isKeptFull && nightFall < SEEING.reading) return [0.1, 0.9];
  const over = nightFall - nightUsual - SEEING.reading;
  return yesNo(chanceAbove((1.7 * over) / SEEING.readingSpread));
}

/** What goes wrong may have gone wrong in the middle of the day that was measured: half of all times it is taken so. */
function dayChances({ dayFall, dayUsual }: ExpectedSource): number[] {
  const ratio = (dayFall + SEEING.readingSpread) / (dayUsual + SEEING.readingSpread);
  const later = fallChances((1 + ratio) / 2);
  return fallChances(ratio).map((p, k) => 0.5 * p + 0.5 * later[k]);
}

/** Of a fall so many times that of the mark. */
function fallChances(ratio: number): number[] {
  const notStill = above(ratio, { bound: SEEING.stillShare, spread: SEEING.daySpread });
  const notLess = above(ratio, { bound: SEEING.lessShare, spread: SEEING.daySpread });
  const faster = above(ratio, { bound: SEEING.fasterShare, spread: SEEING.daySpread });
  return [1 - notStill, notStill - notLess, notLess - faster, faster];
}

function waterChances({ timeToEmpty, below }: ExpectedSource, lastSeen: number): number[] {
  const empty =
    below === Number.POSITIVE_INFINITY
      ? 1
      : above(lastSeen, { bound: timeToEmpty, spread: SEEING.emptySpread });
  const low = chanceAbove((1.7 * (below - SEEING.lowBy)) / SEEING.lowSpread);
  return [empty, (1 - empty) * low, (1 - empty) * (1 - low)];
}

function wetChance(leaks: readonly Leak[], at: string, index: number): number {
  let dry = 1;
  for (const leak of leaks) {
    const isHere = leak.at === at && leak.index === index;
    const isOnRun = at === "run" && leak.run === index;
    if (!isHere && !isOnRun) continue;
    const wets = above(leak.flow, { bound: SEEING.wettingFlow, spread: SEEING.wetSpread });
    dry *= 1 - wets * (isHere ? 1 : SEEING.wetAlongRun);
  }
  return 1 - dry;
}

/** A run without an end to open tells nothing: every answer alike. */
function endChances(share: number): number[] {
  if (Number.isNaN(share)) return [1 / 3, 1 / 3, 1 / 3];
  const plenty = above(share, { bound: SEEING.littleShare, spread: SEEING.endSpread });
  const some = above(share, { bound: SEEING.nothingShare, spread: SEEING.endSpread });
  return [1 - some, some - plenty, plenty];
}

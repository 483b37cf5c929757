import { findRoot } from "../numerics/root.js";
import { surfaceHeadSealed } from "../physics/vent.js";
import { capacityOfVessel, levelAtVolume, volumeAtLevel } from "../physics/vessel.js";
import { distanceFromSources } from "./distance.js";
import type { Line, Source } from "./line.js";

/** The four moments every plan is solved for. */
export const MOMENTS = ["fullIdle", "fullBusiest", "lowestBusiest", "ordinary"] as const;
/** One of the four moments. */
export type MomentName = (typeof MOMENTS)[number];

/** What sets the line at one moment: the water that feeds it, and who drinks. */
export interface Moment {
  readonly name: MomentName;
  /** Height of the pressure surface of each source [m above datum], in the order of `line.sources`. */
  readonly sourceHead: Float64Array;
  /** 1 where a drinker is at work, in the order of `line.drinkers`. */
  readonly atWork: Uint8Array;
  /** By source: 1 where its float valve stands wide open; none does where this is left out. */
  readonly feeding?: Uint8Array;
}

type LevelName = keyof Source["levels"];
const LEVEL_OF: Readonly<Record<MomentName, LevelName>> = {
  fullIdle: "full",
  fullBusiest: "full",
  lowestBusiest: "lowest",
  ordinary: "ordinary",
};

/** The four moments of a line, and the same levels with nobody drinking (for static heads). */
export interface Moments {
  readonly named: Readonly<Record<MomentName, Moment>>;
  readonly idle: Readonly<Record<MomentName, Moment>>;
}

/**
 * The four moments at which a line is judged: which level stands, and which drinkers are at work.
 *
 * @example Object.keys(buildMoments(line).named)   // ["fullIdle", "fullBusiest", "lowestBusiest", "ordinary"]
 */
export function buildMoments(line: Line): Moments {
  const farthest = chooseFarthest(line);
  const spread = chooseSpread(line);
  const nobody = new Uint8Array(line.drinkers.count);
  const working: Readonly<Record<MomentName, Uint8Array>> = {
    fullIdle: nobody,
    fullBusiest: farthest,
    lowestBusiest: farthest,
    ordinary: spread,
  };
  // At the busiest a header tank draws all its float valve lets in; else it is taken as full.
  const feeding = Uint8Array.from(line.sources, (source) => (source.feed === undefined ? 0 : 1));
  const each = (atWork: (name: MomentName) => Uint8Array) => {
    const moment = (name: MomentName): Moment => ({
      name,
      sourceHead: sourceHeads(line, name),
      atWork: atWork(name),
      ...(atWork(name) === farthest ? { feeding } : {}),
    });
    return {
      fullIdle: moment("fullIdle"),
      fullBusiest: moment("fullBusiest"),
      lowestBusiest: moment("lowestBusiest"),
      ordinary: moment("ordinary"),
    };
  };
  return { named: each((name) => working[name]), idle: each(() => nobody) };
}

/** The moments of a line that differs from another only in figures: the same drinkers at work, new heads. */
export function momentsAlike(line: Line, moments: Moments): Moments {
  const alike = (set: Moments["named"]) =>
    Object.fromEntries(
      MOMENTS.map((name) => [name, { ...set[name], sourceHead: sourceHeads(line, name) }]),
    ) as unknown as Moments["named"];
  return { named: alike(moments.named), idle: alike(moments.idle) };
}

/** Height of the pressure surface of every source at a moment [m above datum]. */
export function sourceHeads(line: Line, name: MomentName): Float64Array {
  return Float64Array.from(line.sources, (source) => pressureSurface(line, source, LEVEL_OF[name]));
}

function pressureSurface(line: Line, source: Source, name: LevelName): number {
  return pressureSurfaceAt(line, source, source.levels[name]);
}

/**
 * Where the water would stand in an open pipe at the source's outlet while its level is at a height above the inside
 * bottom. Open: the water's surface. Air tube: the tube's foot while the water stands above it. Sealed: the surface
 * less what the thinned air holds back, but no lower than the lowest drinker: there nothing flows any more, and the
 * air thins no further.
 */
export function pressureSurfaceAt(line: Line, source: Source, level: number): number {
  const surface = source.base + level;
  if (source.vent.kind === "airTube") return Math.min(surface, source.base + source.vent.foot);
  if (source.vent.kind === "open" || level >= source.levels.full) return surface;
  // A hair below full, rounding may give it a hair more than full.
  const drawn = Math.max(
    0,
    volumeAtLevel(source.shape, source.levels.full) - volumeAtLevel(source.shape, level),
  );
  return Math.max(sealedHead(line, source, drawn), Math.min(surface, lowestDrinker(line)));
}

/** Head of a sealed source after some water has left it since it was full and closed [m above datum]. */
function sealedHead(line: Line, source: Source, withdrawn: number): number {
  const volumeFull = volumeAtLevel(source.shape, source.levels.full);
  const airVolume = capacityOfVessel(source.shape) - volumeFull;
  const level = levelAtVolume(source.shape, Math.max(0, volumeFull - withdrawn));
  if (airVolume <= 0) return Number.NEGATIVE_INFINITY;
  return surfaceHeadSealed({ bottom: source.base, level, airVolume, withdrawn, density: line.water.density });
}

function usableOf(source: Source): number {
  return volumeAtLevel(source.shape, source.levels.full) - volumeAtLevel(source.shape, source.levels.lowest);
}

/** Whether a sealed source stops giving before its lowest level. */
export function stallsWithinUse(line: Line, source: Source): boolean {
  return source.vent.kind === "sealed" && sealedHead(line, source, usableOf(source)) <= lowestDrinker(line);
}

/** Water a sealed source gives before nothing reaches its lowest drinker [m3]; undefined when it is not sealed. */
export function givenBeforeStall(line: Line, source: Source): number | undefined {
  if (source.vent.kind !== "sealed") return undefined;
  const usable = usableOf(source);
  if (!stallsWithinUse(line, source)) return usable;
  const spare = (withdrawn: number) =>
    Math.max(-1e6, sealedHead(line, source, withdrawn) - lowestDrinker(line));
  if (spare(0) <= 0) return 0;
  return findRoot(spare, 0, usable).root;
}

function lowestDrinker(line: Line): number {
  return line.drinkers.height.reduce((least, height) => Math.min(least, height), Number.POSITIVE_INFINITY);
}

/** In each group the busiest number of drinkers, those farthest along the pipe from a source: the hardest to serve. */
function chooseFarthest(line: Line): Uint8Array {
  const { drinkers } = line;
  const distance = distanceFromSources(line);
  const atWork = new Uint8Array(drinkers.count);
  for (const group of drinkers.groups) {
    const members = Array.from({ length: group.count }, (_, k) => group.first + k);
    const far = (d: number) => distance[drinkers.point[d]];
    members.sort((a, b) => far(b) - far(a) || b - a);
    for (const d of members.slice(0, group.busiest)) atWork[d] = 1;
  }
  return atWork;
}

/** In each group the ordinary number of drinkers, evenly spread. */
function chooseSpread(line: Line): Uint8Array {
  const atWork = new Uint8Array(line.drinkers.count);
  for (const group of line.drinkers.groups) {
    for (let k = 0; k < group.ordinary; k += 1) {
      atWork[group.first + Math.floor(((k + 0.5) * group.count) / group.ordinary)] = 1;
    }
  }
  return atWork;
}

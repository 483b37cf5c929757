import type { DrawdownEvent } from "./drawn-pool.js";
import { endOfPiece, type LeakPieces, leakAt, rootOf, timeBetween } from "./leak-pieces.js";
import { crossBetween, forget, type Standing } from "./standing.js";

/** A stretch of even draw. */
export interface Stretch {
  /** What birds take and what drips [m³/s], as long as some drinker gives. */
  readonly rate: number;
  /** A hose lets in so much while the pool is not full [m³/s]. */
  readonly hose: number;
  readonly from: number;
  readonly to: number;
}

/** What left the pool and what came in, by way [m³]. */
export interface Moved {
  readonly drawn: number;
  readonly poured: number;
  /** Of what was drawn: what leaked or dripped, and no bird had. */
  readonly lost: number;
}

/**
 * A pool with a leak through a stretch of even draw: out goes what birds take and what leaks at the height the water
 * stands, in comes what a hose gives. It moves from place to place of the leak's law and of what happens on the way,
 * each step exact on that law, so what happens at a place happens at its own time.
 */
export function leakThrough(
  one: Standing,
  pieces: LeakPieces,
  stretch: Stretch,
  events: DrawdownEvent[],
): Moved {
  const { from, to } = stretch;
  const moved = { drawn: 0, poured: 0, lost: 0 };
  let time = from;
  // Each step ends at a place or the end; there are no more steps than places, once up and once down.
  const most = 4 * (pieces.drawn.length + one.places.length) + 8;
  for (let step = 0; time < to && step < most; step += 1) {
    const next = stepFrom(one, pieces, stretch, to - time);
    const before = one.drawn;
    const out = next.drawn - before + next.poured;
    moved.drawn += out;
    moved.poured += next.poured;
    moved.lost += Math.max(0, out - Math.min(out, next.drunk));
    one.drawn = next.drawn;
    time = next.lasts >= to - time ? to : time + next.lasts;
    if (next.drawn < before) {
      if (placeFrom(one, before) === before) forget(one);
    } else if (placeFrom(one, next.drawn) === next.drawn)
      crossBetween(one, { before: one.drawn, rate: 0, from: time }, events);
  }
  return moved;
}

interface Step {
  readonly drawn: number;
  readonly lasts: number;
  readonly poured: number;
  /** By birds, of what left the pool [m³]. */
  readonly drunk: number;
}

/** To the next place, up or down, or as far as the time goes. */
function stepFrom(one: Standing, pieces: LeakPieces, { rate, hose }: Stretch, most: number): Step {
  const leak = leakAt(pieces, one.drawn);
  const isAtLast = one.drawn === one.birdsAll;
  // At its last drinker birds drink again as soon as a hose gives more than leaks and they want.
  const isDry = one.drawn > one.birdsAll || (isAtLast && rate - hose + leak > 0);
  const taken = isDry ? 0 : rate;
  const bird = Math.max(0, taken - one.pool.drips);
  const base = taken - hose;
  // The same sum as along a piece, or a rest that is only rounding would be told from none.
  const net = base + leak;
  const stay = (poured: number, drunk: number): Step => ({ drawn: one.drawn, lasts: most, poured, drunk });
  if (one.drawn <= 0 && net <= 0) return stay((taken + leak) * most, bird * most);
  // At its last drinker, with a hose that gives more than leaks and less than is wanted besides: all of it is drunk.
  if (isDry && isAtLast && net <= 0) return stay(hose * most, -net * most);
  if ((one.drawn >= one.all && net >= 0) || net === 0) return stay(hose * most, bird * most);
  const target = targetOf(one, pieces, net > 0);
  const lasts =
    one.drawn >= pieces.most && target >= pieces.most
      ? evenly({ from: one.drawn, to: target, net }, most)
      : alongPiece(pieces, { from: one.drawn, to: target, base }, most);
  return { ...lasts, poured: hose * lasts.lasts, drunk: bird * lasts.lasts };
}

/** The nearest place in the way it goes: of the leak's law, or where something happens. */
function targetOf(one: Standing, pieces: LeakPieces, isDraining: boolean): number {
  const { places, drawn, all } = one;
  if (isDraining) {
    const next = placeFrom(one, drawn, true);
    return drawn < pieces.most ? Math.min(next, endOfPiece(pieces, drawn, true)) : next;
  }
  const below = placeBelow(places, drawn);
  if (drawn > pieces.most) return Math.max(pieces.most, below);
  return Math.max(below, endOfPiece(pieces, Math.min(drawn, all), false));
}

/** The first place from here on, or only beyond; all that can be drawn where there is none. */
function placeFrom({ places, all }: Standing, drawn: number, isBeyond = false): number {
  const k = firstFrom(places, drawn);
  return places[isBeyond && places[k] === drawn ? k + 1 : k] ?? all;
}

const placeBelow = (places: readonly number[], drawn: number): number =>
  places[firstFrom(places, drawn) - 1] ?? 0;

/** Index of the first place that is no less. */
function firstFrom(places: readonly number[], drawn: number): number {
  let [low, high] = [0, places.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (places[middle] < drawn) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Below the leak only the birds draw. */
function evenly(way: { readonly from: number; readonly to: number; readonly net: number }, most: number) {
  const lasts = (way.to - way.from) / way.net;
  return lasts >= most ? { drawn: way.from + way.net * most, lasts: most } : { drawn: way.to, lasts };
}

/** Within one piece of the leak's law. */
function alongPiece(
  pieces: LeakPieces,
  way: { readonly from: number; readonly to: number; readonly base: number },
  most: number,
) {
  const at = (drawn: number) => ({
    s: rootOf(pieces.most, drawn),
    rate: way.base + leakAt(pieces, drawn),
  });
  const [from, to] = [at(way.from), at(way.to)];
  // An outflow that dies away only with the last of the water comes to its end; any other that does, never.
  const isThere = to.rate * from.rate >= 0;
  const lasts = isThere ? timeBetween(pieces.most, from, to) : Number.POSITIVE_INFINITY;
  if (lasts <= most) return { drawn: way.to, lasts };
  const s = rootAfter(pieces.most, from, to, most);
  return { drawn: pieces.most * (1 - s * s), lasts: most };
}

/** Where it stands after a time that does not take it to the end of the piece. */
function rootAfter(
  most: number,
  from: { readonly s: number; readonly rate: number },
  to: { readonly s: number; readonly rate: number },
  time: number,
): number {
  const slope = (from.rate - to.rate) / (from.s - to.s);
  let [near, far] = [from.s, to.s];
  for (let round = 0; round < 60 && near !== far; round += 1) {
    const middle = (near + far) / 2;
    if (middle === near || middle === far) break;
    const rate = from.rate + slope * (middle - from.s);
    const isBefore = rate * from.rate > 0 && timeBetween(most, from, { s: middle, rate }) <= time;
    if (isBefore) near = middle;
    else far = middle;
  }
  return near;
}

import type { DrawdownEvent } from "./drawn-pool.js";
import { type LeakPieces, leakAt, pieceAt, rootOf, timeBetween } from "./leak-pieces.js";
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
 * stands, in comes what a hose gives. It moves from place to place of the leak's law, each step exact on that law, so
 * what happens at a place happens at its own time.
 */
export function leakThrough(
  one: Standing,
  pieces: LeakPieces,
  stretch: Stretch,
  events: DrawdownEvent[],
): Moved {
  const { hose, from, to } = stretch;
  const moved = { drawn: 0, poured: 0, lost: 0 };
  let time = from;
  // Each step ends at a place or the end; there are no more steps than places, once up and once down.
  for (let step = 0; time < to && step < 4 * (pieces.drawn.length + one.places.length) + 8; step += 1) {
    const taken = one.drawn < one.birdsAll ? stretch.rate : 0;
    const next = stepFrom(one, pieces, { taken, hose, most: to - time });
    const out = next.drawn - one.drawn + next.poured;
    const drunk = Math.min(out, Math.max(0, taken - one.pool.drips) * next.lasts);
    moved.drawn += out;
    moved.poured += next.poured;
    moved.lost += Math.max(0, out - drunk);
    const isFilling = next.drawn < one.drawn;
    one.drawn = next.drawn;
    time = next.lasts >= to - time ? to : time + next.lasts;
    if (isFilling) forget(one);
    else crossBetween(one, { before: one.drawn, rate: 0, from: time }, events);
  }
  return moved;
}

interface Step {
  readonly drawn: number;
  readonly lasts: number;
  readonly poured: number;
}

/** To the next place, up or down, or as far as the time goes. */
function stepFrom(
  one: Standing,
  pieces: LeakPieces,
  { taken, hose, most }: { readonly taken: number; readonly hose: number; readonly most: number },
): Step {
  const leak = leakAt(pieces, one.drawn);
  const net = taken + leak - hose;
  if (one.drawn <= 0 && net <= 0) return { drawn: 0, lasts: most, poured: (taken + leak) * most };
  if (one.drawn >= one.all && net >= 0) return { drawn: one.drawn, lasts: most, poured: hose * most };
  if (net === 0) return { drawn: one.drawn, lasts: most, poured: hose * most };
  if (one.drawn >= pieces.most && !(net < 0 && one.drawn === pieces.most))
    return evenStep(one, pieces, { net, hose, most });
  return leakStep(one, pieces, { base: taken - hose, net, hose, most });
}

/** Below the leak only the birds draw. */
function evenStep(
  one: Standing,
  pieces: LeakPieces,
  { net, hose, most }: { readonly net: number; readonly hose: number; readonly most: number },
): Step {
  const target = net > 0 ? nextMark(one) : pieces.most;
  const lasts = (target - one.drawn) / net;
  if (lasts >= most) return { drawn: one.drawn + net * most, lasts: most, poured: hose * most };
  return { drawn: target, lasts, poured: hose * lasts };
}

function nextMark(one: Standing): number {
  return one.places.find((place) => place > one.drawn) ?? one.all;
}

function leakStep(
  one: Standing,
  pieces: LeakPieces,
  {
    base,
    net,
    hose,
    most,
  }: { readonly base: number; readonly net: number; readonly hose: number; readonly most: number },
): Step {
  const { drawn, root, flow } = pieces;
  const k = pieceAt(pieces, one.drawn);
  const end = net > 0 ? k + 1 : drawn[k] < one.drawn ? k : k - 1;
  const from = { s: rootOf(pieces.most, one.drawn), rate: net };
  const to = { s: root[end], rate: base + flow[end] };
  // An outflow that dies away only with the last of the water comes to its end; any other that does, never.
  const isThere = to.rate * net >= 0;
  const lasts = isThere ? timeBetween(pieces.most, from, to) : Number.POSITIVE_INFINITY;
  if (lasts <= most) return { drawn: drawn[end], lasts, poured: hose * lasts };
  const s = rootAfter(pieces.most, from, to, most);
  return { drawn: pieces.most * (1 - s * s), lasts: most, poured: hose * most };
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

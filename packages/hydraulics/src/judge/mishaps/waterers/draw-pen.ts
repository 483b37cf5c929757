import type { Weather } from "../../../model/flock.js";
import type { PenDraw } from "../../../simulate/pen-draw.js";

const DAY = 86_400;

/** Waterers of a pen that are alike and fare alike, all together. */
export interface LoosePool {
  /** When full, of which birds can drink [m³]. */
  readonly full: number;
  /** At the start [m³]; less than full where something happened to it. */
  readonly start: number;
  /** Birds that find room at once: the share of the drinking that is taken from it. */
  readonly places: number;
  /** Taken from it over what is drunk. */
  readonly taken: number;
  /** To the air [m³/s] while it holds water. */
  readonly dry: number;
  /** Filled by hand this often from the start [s], from the first time on; undefined: nobody fills it. */
  readonly refill: { readonly first: number; readonly every: number } | undefined;
}

/** What a pen's drinking is drawn with. */
export interface PenDrawing {
  /** Drunk on each day, counted from 0, without what is spilled. */
  readonly drawOn: (day: number) => PenDraw;
  /** Of the line, at which birds go on drinking. */
  readonly linePlaces: number;
  /** When it begins [s after midnight], and how long at most [s]. */
  readonly from: number;
  readonly lasts: number;
}

/** A pen's loose waterers drawn down. Times [s] from the start, volumes [m³]. */
export interface PenDrawdown {
  /** Stretches in which birds find nothing. */
  readonly without: readonly { readonly from: number; readonly to: number }[];
  readonly poured: number;
  readonly drunk: number;
  readonly air: number;
  readonly left: number;
  readonly until: number;
}

/**
 * Draws the loose waterers of a pen down. Birds share out by places among those that hold water, and between the edges of
 * the day's curve they drink evenly, so the time at which one is empty is found exactly.
 */
export function drawPen(pools: readonly LoosePool[], drawing: PenDrawing): PenDrawdown {
  const { from, lasts, linePlaces } = drawing;
  const volumes = pools.map(({ start }) => start);
  const end = from + lasts;
  const sums = { poured: 0, drunk: 0, air: 0 };
  const without: { from: number; to: number }[] = [];
  let time = from;
  while (time < end && !isOver(pools, volumes)) {
    const rate = drawing.drawOn(Math.floor(time / DAY + 1e-12));
    const edge = Math.min(end, nextEdge(rate, time), nextRefill(pools, from, time));
    const drinking = rateAt(rate, (time + edge) / 2);
    const wet = (p: number) => volumes[p] > 1e-12 && pools[p].places > 0;
    const places = pools.reduce((sum, pool, p) => sum + (wet(p) ? pool.places : 0), linePlaces);
    const takes = pools.map((pool, p) => (wet(p) ? (drinking * pool.places * pool.taken) / places : 0));
    const dries = pools.map((pool, p) => (volumes[p] > 1e-12 ? pool.dry : 0));
    const first = Math.min(
      ...volumes.map((volume, p) =>
        takes[p] + dries[p] > 0 ? volume / (takes[p] + dries[p]) : Number.POSITIVE_INFINITY,
      ),
    );
    const step = Math.min(edge - time, first);
    if (places === 0) note(without, time - from, time - from + step);
    pools.forEach((_, p) => {
      sums.drunk += takes[p] * step;
      sums.air += dries[p] * step;
      volumes[p] = Math.max(0, volumes[p] - (takes[p] + dries[p]) * step);
    });
    time += step;
    sums.poured += fill(pools, volumes, time - from);
  }
  if (time < end && linePlaces === 0) note(without, time - from, lasts);
  return { without, ...sums, left: volumes.reduce((sum, one) => sum + one, 0), until: time - from };
}

/** Nothing is left that changes: all is empty and nobody fills. */
const isOver = (pools: readonly LoosePool[], volumes: readonly number[]): boolean =>
  volumes.every((volume) => volume <= 1e-12) && pools.every(({ refill }) => refill === undefined);

function note(without: { from: number; to: number }[], from: number, to: number): void {
  const last = without[without.length - 1];
  if (last !== undefined && from - last.to < 1e-6) last.to = to;
  else without.push({ from, to });
}

/** The next time at which the drinking changes, midnight among them. */
function nextEdge({ edges }: PenDraw, time: number): number {
  const midnight = Math.floor(time / DAY + 1e-12) * DAY;
  return Math.min(
    midnight + DAY,
    ...edges.map((edge) => midnight + edge).filter((edge) => edge > time + 1e-6),
  );
}

function rateAt({ edges, rates }: PenDraw, time: number): number {
  const clock = time - Math.floor(time / DAY) * DAY;
  return rates[edges.findIndex((edge) => edge > clock) - 1] ?? 0;
}

function nextRefill(pools: readonly LoosePool[], from: number, time: number): number {
  const times = pools.flatMap(({ refill }) =>
    refill === undefined ? [] : [roundAfter(refill, time - from)],
  );
  return from + Math.min(Number.POSITIVE_INFINITY, ...times);
}

function roundAfter(
  { first, every }: { readonly first: number; readonly every: number },
  since: number,
): number {
  if (since < first - 1e-6) return first;
  return first + (Math.floor((since - first) / every + 1e-9) + 1) * every;
}

/** Fills what is due now, and tells what was poured [m³]. */
function fill(pools: readonly LoosePool[], volumes: number[], since: number): number {
  return pools.reduce((sum, { refill, full }, p) => {
    if (refill === undefined || since < refill.first - 1e-6) return sum;
    const rounds = (since - refill.first) / refill.every;
    if (Math.abs(rounds - Math.round(rounds)) * refill.every > 1e-6) return sum;
    const poured = Math.max(0, full - volumes[p]);
    volumes[p] += poured;
    return sum + poured;
  }, 0);
}

/**
 * Birds times the hours of light for which they find nothing.
 *
 * @param until  up to when it is counted [s] from the start
 */
export function birdHoursOf(
  { without }: Pick<PenDrawdown, "without">,
  {
    birds,
    from,
    until,
    weather,
  }: { readonly birds: number; readonly from: number; readonly until: number; readonly weather: Weather },
): number {
  const seconds = without.reduce(
    (sum, one) => sum + lightWithin(from + one.from, from + Math.min(one.to, until), weather),
    0,
  );
  return (birds * seconds) / 3600;
}

/** Seconds of light between two times [s after the first midnight]. */
function lightWithin(from: number, to: number, { dawn, light }: Weather): number {
  if (to <= from) return 0;
  let sum = 0;
  for (let day = Math.floor(from / DAY) - 1; day * DAY < to; day++) {
    const begins = day * DAY + dawn;
    sum += Math.max(0, Math.min(to, begins + light) - Math.max(from, begins));
  }
  return sum;
}

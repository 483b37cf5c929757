import { distanceFromSources } from "../model/distance.js";
import { flowOfDrinker } from "../model/drinker-flow.js";
import type { Flock, Pen, Weather } from "../model/flock.js";
import type { Line } from "../model/line.js";
import { buildMoments, type Moment } from "../model/moment.js";
import { prepareLine } from "../solve/prepare-line.js";
import type { LineSolution } from "../solve/solution.js";
import { reachState } from "../solve/solve-line.js";
import { type CrowdLoad, crowdLoad } from "./crowd-load.js";
import { type DrinkerPlace, groupOf, placesOf } from "./crowd-want.js";
import { type PenWant, wantOfPen } from "./pen-want.js";

/** Rounds after which a crowd that still grows is taken to fill every drinker. */
const MOST_ROUNDS = 200;

/** One pen at its busiest hour, when it and the line have settled. */
export interface PenCrowd {
  readonly pen: Pen;
  readonly want: PenWant;
  readonly load: CrowdLoad;
  /** Drinkers that give water when nobody drinks, with what they pass when the birds are busiest. */
  readonly giving: readonly { readonly drinker: number; readonly place: DrinkerPlace }[];
  /** Birds that find a place at them at once. */
  readonly places: number;
  /** Drinkers at work at once in the busiest minutes, of those that give. */
  readonly busiest: number;
  readonly rounds: number;
  /** Drinkers whose number at work the plan leaves open, the farthest first; 1 where one gives. */
  readonly order: Int32Array;
  readonly gives: Uint8Array;
  /** Of those whose number the plan states, how many are at work and give. */
  readonly stated: number;
}

export interface Crowd {
  readonly pens: readonly PenCrowd[];
  /** 1 where a drinker is at work in the busiest minutes, in the order of `line.drinkers`. */
  readonly atWork: Uint8Array;
}

interface Growing {
  readonly pen: Pen;
  readonly want: PenWant;
  readonly giving: readonly number[];
  readonly order: Int32Array;
  readonly gives: Uint8Array;
  readonly stated: number;
  places: readonly DrinkerPlace[];
  load: CrowdLoad;
  busiest: number;
}

/**
 * Birds and line solved together: a weak flow makes bouts longer, longer bouts put more birds at the drinkers at once,
 * and more at work weaken the flow. Begins with the line as it stands with nobody drinking and goes up, so that it
 * ends at the least crowd that holds; with the water at the lowest usable level, losses by Darcy-Weisbach.
 *
 * @param line    the line; groups in `stated` keep their number at work
 * @param flock   who drinks
 * @param stated  groups whose busiest number the plan states, by index
 */
export function crowdOf(line: Line, flock: Flock, stated: ReadonlySet<number>): Crowd {
  const busy = buildMoments(line);
  const prepared = prepareLine(line, "darcyWeisbach");
  let state = reachState(prepared, busy.idle.lowestBusiest);
  const moment = { ...busy.named.lowestBusiest, atWork: busy.named.lowestBusiest.atWork.slice() };
  const distance = distanceFromSources(line);
  const pens = flock.pens.map(
    (pen): Growing => beginPen(line, pen, flock.weather, { state, moment, distance, stated }),
  );
  for (const { order } of pens) for (const d of order) moment.atWork[d] = 0;
  let rounds = 1;
  for (; ; rounds += 1) {
    if (!growPens(line, pens, { state, moment, rounds })) break;
    state = reachState(prepared, moment);
  }
  return { pens: pens.map((pen) => settle(pen, rounds)), atWork: moment.atWork };
}

interface Start {
  readonly state: LineSolution;
  readonly moment: Moment;
  readonly distance: Float64Array;
  readonly stated: ReadonlySet<number>;
}

function beginPen(
  line: Line,
  pen: Pen,
  weather: Weather,
  { state, moment, distance, stated }: Start,
): Growing {
  const { drinkers } = line;
  const far = (d: number) => distance[drinkers.point[d]];
  const gives = (d: number) => flowAt(line, d, state, undefined) > 0;
  const isStated = (d: number) => stated.has(drinkers.group[d]);
  const open = pen.drinkers.filter((d) => !isStated(d)).sort((a, b) => far(b) - far(a) || b - a);
  return {
    pen,
    want: wantOfPen(line, pen, weather),
    giving: pen.drinkers.filter(gives),
    order: Int32Array.from(open),
    gives: Uint8Array.from(open, (d) => (gives(d) ? 1 : 0)),
    stated: pen.drinkers.filter((d) => isStated(d) && moment.atWork[d] === 1 && gives(d)).length,
    places: [],
    load: crowdLoad([], []),
    busiest: 0,
  };
}

/** Lets each crowd grow to what the line now gives; tells whether any did. */
function growPens(
  line: Line,
  pens: readonly Growing[],
  { state, moment, rounds }: { state: LineSolution; moment: Moment; rounds: number },
): boolean {
  let grew = false;
  for (const pen of pens) {
    pen.places = pen.giving.map((d) => placeAt(line, d, state, rounds === 1 ? undefined : moment.atWork));
    pen.load = crowdLoad(pen.want.batches, pen.places);
    // The line is never judged as if nobody came: where any bird drinks, one drinker is at work.
    const atOnce = pen.load.demand > 0 ? Math.max(1, pen.load.atOnce) : 0;
    const wanted = rounds > MOST_ROUNDS ? pen.giving.length : Math.min(pen.giving.length, atOnce);
    if (wanted <= pen.busiest) continue;
    pen.busiest = wanted;
    putToWork(pen.order, pen.gives, wanted - pen.stated, moment.atWork);
    grew = true;
  }
  return grew;
}

/**
 * Puts the farthest drinkers of an order to work until so many of them give; those that give nothing in between count
 * as at work too, which changes no flow.
 *
 * @param wanted  at least one is put to work where any bird drinks at all
 */
export function putToWork(order: Int32Array, gives: Uint8Array, wanted: number, atWork: Uint8Array): void {
  let left = Math.max(1, wanted);
  order.forEach((d, k) => {
    atWork[d] = left > 0 ? 1 : 0;
    left -= gives[k];
  });
}

const placeAt = (
  line: Line,
  d: number,
  state: LineSolution,
  atWork: Uint8Array | undefined,
): DrinkerPlace => {
  const group = groupOf(line, d);
  return { flow: flowAt(line, d, state, atWork), workedBy: group.workedBy, places: placesOf(group) };
};

/** What a drinker passes in a state: as solved if it is at work there, else by its law at the head it has. */
function flowAt(line: Line, d: number, state: LineSolution, atWork: Uint8Array | undefined): number {
  const { drinkers } = line;
  if (atWork?.[d] === 1) return state.drinkerFlow[d];
  const point = drinkers.point[d];
  if (state.reached[point] === 0) return 0;
  return flowOfDrinker(drinkers, d, state.head[point] - drinkers.height[d]);
}

function settle(growing: Growing, rounds: number): PenCrowd {
  const { pen, want, load, giving, places, order, gives, stated, busiest } = growing;
  return {
    pen,
    want,
    load,
    giving: giving.map((drinker, k) => ({ drinker, place: places[k] })),
    places: places.reduce((sum, place) => sum + place.places, 0),
    busiest,
    rounds,
    order,
    gives,
    stated,
  };
}

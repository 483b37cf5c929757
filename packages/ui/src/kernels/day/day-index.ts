import { DAY_EVENTS, type DayEvents, type DayResult } from "@headfall/hydraulics";

/** Who is where at one moment of a simulated day. */
export interface DayMoment {
  readonly time: number;
  /** By drinker, birds at it. */
  readonly at: Int32Array;
  /** By pen, birds that drink and birds that wait. */
  readonly drinking: Int32Array;
  readonly waiting: Int32Array;
}

/** The events of a day, made ready to ask for any moment of it. */
export interface DayIndex {
  readonly events: DayEvents;
  readonly drinkers: number;
  readonly pens: number;
  /** By event: the pen of its bird, and by how much it changes who waits there. */
  readonly pen: Int32Array;
  readonly waits: Int8Array;
  /** By pen, its drinkers that were drunk from, ascending. */
  readonly drinkersOfPen: readonly (readonly number[])[];
  /** Who is where after every `BETWEEN` events, one after the other; each: drinkers, pens drinking, pens waiting. */
  readonly noted: Int32Array;
}

/** Events between two notes of who is where: the most that have to be gone through for one moment. */
const BETWEEN = 256;

/** Goes through the day once; after that any moment is had from the note before it and a few events. */
export function indexDay({ events, birds, drinkers, pens }: DayResult): DayIndex {
  if (events === undefined) throw new RangeError("indexDay: the day was not recorded");
  const pen = Int32Array.from(events.bird, (bird) => birds[bird]!.pen);
  const waits = waitSteps(events, birds.length);
  const size = drinkers.length + 2 * pens.length;
  const noted = new Int32Array((Math.floor(events.count / BETWEEN) + 1) * size);
  const used = pens.map(() => new Set<number>());
  const plain = { events, drinkers: drinkers.length, pens: pens.length, pen, waits };
  const state = new Int32Array(size);
  for (let event = 0; event <= events.count; event += 1) {
    if (event % BETWEEN === 0) noted.set(state, (event / BETWEEN) * size);
    if (event === events.count) break;
    if (events.kind[event] === DAY_EVENTS.begins) used[pen[event]!]!.add(events.drinker[event]!);
    step(plain, event, state);
  }
  return { ...plain, noted, drinkersOfPen: used.map((set) => [...set].sort((a, b) => a - b)) };
}

/** A bird that drinks, or gives up, waits no more if it did; many do neither after waiting. */
function waitSteps({ count, kind, bird }: DayEvents, birds: number): Int8Array {
  const isWaiting = new Uint8Array(birds);
  const steps = new Int8Array(count);
  for (let event = 0; event < count; event += 1) {
    const one = bird[event]!;
    if (kind[event] === DAY_EVENTS.ends) continue;
    const now = kind[event] === DAY_EVENTS.waits ? 1 : 0;
    steps[event] = now - isWaiting[one]!;
    isWaiting[one] = now;
  }
  return steps;
}

type Plain = Omit<DayIndex, "noted" | "drinkersOfPen">;

function step({ events, drinkers, pens, pen, waits }: Plain, event: number, state: Int32Array): void {
  const kind = events.kind[event];
  const change = kind === DAY_EVENTS.begins ? 1 : kind === DAY_EVENTS.ends ? -1 : 0;
  const at = drinkers + pen[event]!;
  if (change !== 0) {
    const drinker = events.drinker[event]!;
    state[drinker] = state[drinker]! + change;
    state[at] = state[at]! + change;
  }
  state[at + pens] = state[at + pens]! + waits[event]!;
}

/** Who is where at a time [s after midnight], all that happens at that instant counted. */
export function momentAt(index: DayIndex, time: number): DayMoment {
  const { drinkers, pens, noted } = index;
  const size = drinkers + 2 * pens;
  const count = countUpTo(index.events, time);
  const note = Math.floor(count / BETWEEN);
  const state = noted.slice(note * size, (note + 1) * size);
  for (let event = note * BETWEEN; event < count; event += 1) step(index, event, state);
  return {
    time,
    at: state.subarray(0, drinkers),
    drinking: state.subarray(drinkers, drinkers + pens),
    waiting: state.subarray(drinkers + pens),
  };
}

/** How many events there are up to a time; they are in order, so by halving. */
function countUpTo({ count, time }: DayEvents, until: number): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time[middle]! <= until) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Most birds of one pen in each of many equal stretches of the day. */
export interface Peaks {
  /** Drinking. */
  readonly drinking: Int32Array;
  /** Drinking and waiting together. */
  readonly both: Int32Array;
}

/** So that no crowd is lost between two columns of pixels, each stretch tells its most, not its middle. */
export function peaksOf({ events, pen: penOf, waits }: DayIndex, pen: number, stretches: number): Peaks {
  const drinking = new Int32Array(stretches);
  const both = new Int32Array(stretches);
  let [drink, wait, stretch] = [0, 0, 0];
  const mark = () => {
    drinking[stretch] = Math.max(drinking[stretch]!, drink);
    both[stretch] = Math.max(both[stretch]!, drink + wait);
  };
  const goTo = (next: number) => {
    while (stretch < next) {
      stretch += 1;
      mark();
    }
  };
  for (let event = 0; event < events.count; event += 1) {
    if (penOf[event] !== pen) continue;
    goTo(Math.min(stretches - 1, Math.floor((events.time[event]! / DAY_SECONDS) * stretches)));
    const kind = events.kind[event];
    drink += kind === DAY_EVENTS.begins ? 1 : kind === DAY_EVENTS.ends ? -1 : 0;
    wait += waits[event]!;
    // One that waited and now drinks is told by two steps of one event; what stands in between is no moment.
    mark();
  }
  goTo(stretches - 1);
  return { drinking, both };
}

export const DAY_SECONDS = 86_400;

/**
 * Approximate minimum degree on a quotient graph: the elimination order for the looped part of a network.
 *
 * Eliminating a vertex joins all its neighbours to each other. The quotient graph never writes those joins out:
 * the eliminated vertex stays on as an *element*, one list of the vertices it joined, and a vertex keeps a list of
 * elements beside its list of plain neighbours. Each elimination only shortens the lists, so the whole fits the
 * space of the first graph. Written from memory of the two papers below; step names follow the second.
 *
 * @source george-liu-1989, from memory    @source amestoy-davis-duff-1996, from memory
 */

import {
  type AdjacencyLists,
  absorbMember,
  buildQuotientGraph,
  deferHubs,
  ELEMENT,
  enlist,
  GONE,
  makeRoom,
  type QuotientGraph,
  unlist,
  VARIABLE,
} from "./quotient-graph.js";

/**
 * Minimum-degree order of a graph; a permutation of its vertices.
 *
 * Cost grows nearly as the number of neighbours for networks and as n log n for grids. Vertices joined to more
 * than `10 sqrt(n)` others go last unexamined: rewriting their lists at each step would cost n² on a hub.
 */
export function orderByMinimumDegree(adjacency: AdjacencyLists): Int32Array {
  const graph = buildQuotientGraph(adjacency);
  const order = new Int32Array(graph.size);
  const live = graph.size - deferHubs(graph, order);
  let placed = 0;
  let lowest = 0;
  for (let step = 1; placed < live; step++) {
    while (graph.degreeHead[lowest] < 0) lowest++;
    const pivot = graph.degreeHead[lowest];
    unlist(graph, pivot);
    formElement(graph, pivot, step);
    measureElements(graph, pivot, step);
    shortenLists(graph, pivot, step);
    mergeTwins(graph, pivot);
    // Vertices eliminated with the pivot: those merged into it before, and those just found to have no neighbour
    // outside the new element (mass elimination).
    for (let v = pivot; v >= 0; v = graph.nextMember[v]) order[placed++] = v;
    lowest = Math.min(lowest, relist(graph, pivot, live - placed));
  }
  return order;
}

/** Step 1: the new element is everything the pivot touches, directly or through its elements, which it absorbs. */
function formElement(graph: QuotientGraph, pivot: number, step: number): void {
  const { start, length, elementCount, state, reached } = graph;
  makeRoom(graph, pivot);
  const { lists } = graph;
  const begin = graph.free;
  reached[pivot] = step;

  const first = start[pivot];
  const firstVariable = first + elementCount[pivot];
  for (let at = first; at < firstVariable; at++) {
    const element = lists[at];
    if (state[element] !== ELEMENT) continue;
    state[element] = GONE;
    takeVariables(graph, start[element], start[element] + length[element], step);
  }
  takeVariables(graph, firstVariable, first + length[pivot], step);

  state[pivot] = ELEMENT;
  start[pivot] = begin;
  length[pivot] = graph.free - begin;
}

/** Appends to the new element the live variables of one stretch of the lists, each once. */
function takeVariables(graph: QuotientGraph, from: number, to: number, step: number): void {
  const { lists, state, reached } = graph;
  for (let at = from; at < to; at++) {
    const v = lists[at];
    if (state[v] !== VARIABLE || reached[v] === step) continue;
    reached[v] = step;
    unlist(graph, v);
    lists[graph.free++] = v;
  }
}

/** Step 2: for each element that shares variables with the new one, the weight of what it does not share. */
function measureElements(graph: QuotientGraph, pivot: number, step: number): void {
  const { lists, start, length, elementCount, state, weight, degree, measured, outside } = graph;
  const end = start[pivot] + length[pivot];
  for (let at = start[pivot]; at < end; at++) {
    const v = lists[at];
    const endElements = start[v] + elementCount[v];
    for (let e = start[v]; e < endElements; e++) {
      const element = lists[e];
      if (state[element] !== ELEMENT) continue;
      if (measured[element] !== step) {
        measured[element] = step;
        outside[element] = degree[element];
      }
      outside[element] -= weight[v];
    }
  }
}

/**
 * Step 3: drops from each variable's list what the new element covers, adds the new element, and bounds the degree
 * by the parts: plain neighbours, plus each element's part outside the new one (the new element's own part is added
 * in `relist`, once its weight is known). A variable left with nothing else goes with the pivot.
 */
function shortenLists(graph: QuotientGraph, pivot: number, step: number): void {
  const { size, lists, start, length, elementCount, state, weight, degree, reached, outside, hash } = graph;
  const end = start[pivot] + length[pivot];
  for (let at = start[pivot]; at < end; at++) {
    const v = lists[at];
    const first = start[v];
    const firstVariable = first + elementCount[v];
    const last = first + length[v];
    let write = first;
    let bound = 0;
    let sum = 0;

    // Elements: those absorbed are gone already; one wholly inside the new element is absorbed now.
    for (let from = first; from < firstVariable; from++) {
      const element = lists[from];
      if (state[element] !== ELEMENT) continue;
      if (outside[element] === 0) {
        state[element] = GONE;
        continue;
      }
      lists[write++] = element;
      bound += outside[element];
      sum += element;
    }

    // Plain neighbours: those in the new element are reached through it from now on.
    const elementsEnd = write;
    for (let from = firstVariable; from < last; from++) {
      const other = lists[from];
      if (state[other] !== VARIABLE || reached[other] === step) continue;
      lists[write++] = other;
      bound += weight[other];
      sum += other;
    }

    // Mass elimination: nothing outside the new element, so eliminating this variable next adds no fill.
    if (write === first) {
      absorbMember(graph, pivot, v);
      continue;
    }

    // The new element goes to the end of the elements. There is room: the pivot, or what led to it, was dropped.
    lists[write] = lists[elementsEnd];
    lists[elementsEnd] = pivot;
    elementCount[v] = elementsEnd - first + 1;
    length[v] = write - first + 1;
    degree[v] = Math.min(degree[v], bound);
    hash[v] = sum % size;
  }
}

/** Step 4: variables of the new element with the same list are one variable from here on (supervariables). */
function mergeTwins(graph: QuotientGraph, pivot: number): void {
  const { lists, start, length, state, bucketHead, bucketNext, hash } = graph;
  const end = start[pivot] + length[pivot];
  for (let at = start[pivot]; at < end; at++) {
    const v = lists[at];
    if (state[v] !== VARIABLE) continue;
    bucketNext[v] = bucketHead[hash[v]];
    bucketHead[hash[v]] = v;
  }
  for (let at = start[pivot]; at < end; at++) {
    if (state[lists[at]] !== VARIABLE) continue;
    const bucket = hash[lists[at]];
    for (let v = bucketHead[bucket]; v >= 0; v = bucketNext[v]) mergeTwinsOf(graph, v);
    bucketHead[bucket] = -1;
  }
}

/** Merges into `v` its twins further down its bucket. */
function mergeTwinsOf(graph: QuotientGraph, v: number): void {
  const { lists, start, length, elementCount, weight, stamp, bucketNext } = graph;
  if (bucketNext[v] < 0) return;
  const mark = ++graph.lastStamp;
  for (let at = start[v]; at < start[v] + length[v]; at++) stamp[lists[at]] = mark;
  let previous = v;
  for (let other = bucketNext[v]; other >= 0; other = bucketNext[other]) {
    let isTwin = length[other] === length[v] && elementCount[other] === elementCount[v];
    for (let at = start[other]; isTwin && at < start[other] + length[other]; at++) {
      isTwin = stamp[lists[at]] === mark;
    }
    if (isTwin) {
      weight[v] += weight[other];
      absorbMember(graph, v, other);
      bucketNext[previous] = bucketNext[other];
    } else previous = other;
  }
}

/**
 * Step 5: the new element keeps its live variables only; each, its degree now known, is listed for choosing again.
 *
 * @param remaining  vertices not eliminated yet
 * @returns the lowest degree listed; `graph.size` when the element is empty
 */
function relist(graph: QuotientGraph, pivot: number, remaining: number): number {
  const { lists, start, length, state, weight, degree } = graph;
  const begin = start[pivot];
  const end = begin + length[pivot];
  let write = begin;
  let total = 0;
  for (let at = begin; at < end; at++) {
    const v = lists[at];
    if (state[v] !== VARIABLE) continue;
    lists[write++] = v;
    total += weight[v];
  }
  graph.free = write;
  length[pivot] = write - begin;
  degree[pivot] = total;
  if (write === begin) state[pivot] = GONE;

  let lowest = graph.size;
  for (let at = begin; at < write; at++) {
    const v = lists[at];
    degree[v] = Math.min(degree[v] + total, remaining) - weight[v];
    enlist(graph, v);
    lowest = Math.min(lowest, degree[v]);
  }
  return lowest;
}

/**
 * The quotient graph of an elimination: what `minimum-degree.ts` works on, and how its lists are kept.
 *
 * @source george-liu-1989, from memory    @source amestoy-davis-duff-1996, from memory
 */

/** Neighbours of vertex v are neighbours[starts[v]] .. neighbours[starts[v + 1] - 1]. */
export interface AdjacencyLists {
  readonly size: number;
  readonly starts: Int32Array;
  readonly neighbours: Int32Array;
}

export const VARIABLE = 0; // still to be eliminated, stands for itself and for those merged into it
export const ELEMENT = 1; // eliminated, joins the variables of its list
export const GONE = 2; // merged into a variable, or swallowed by a later element

/** Everything the elimination changes. Every array is indexed by vertex unless it says otherwise. */
export interface QuotientGraph {
  readonly size: number;
  lists: Int32Array; // the lists themselves, one after another
  spareLists: Int32Array; // where they move to when closing up the gaps
  free: number; // first place of `lists` never used
  readonly start: Int32Array; // of the vertex's list
  readonly length: Int32Array; // of the vertex's list
  readonly elementCount: Int32Array; // a variable's list begins with this many elements
  readonly state: Uint8Array;
  readonly weight: Int32Array; // vertices this variable stands for
  readonly degree: Int32Array; // variable: bound on its external degree; element: weight of its list
  readonly reached: Int32Array; // step at which the variable was last in the new element
  readonly measured: Int32Array; // step at which the element's `outside` was last worked out
  readonly outside: Int32Array; // weight of the element's list outside the new element
  readonly stamp: Int32Array; // marks the list being compared
  lastStamp: number;
  readonly bucketHead: Int32Array; // indexed by hash; -1 when empty
  readonly bucketNext: Int32Array;
  readonly hash: Int32Array;
  readonly degreeHead: Int32Array; // indexed by degree: first variable of that degree, or -1
  readonly degreeNext: Int32Array;
  readonly degreePrevious: Int32Array;
  readonly nextMember: Int32Array; // chain of those eliminated together with the vertex
  readonly lastMember: Int32Array;
}

export function buildQuotientGraph(adjacency: AdjacencyLists): QuotientGraph {
  const { size, starts, neighbours } = adjacency;
  // Live lists never outgrow the first graph, and a new element is never longer than all live lists together:
  // twice the first graph is always enough after closing up, and closing up is rare (once on a grid).
  const room = 2 * neighbours.length + 1;
  const filled = (value: number) => new Int32Array(size).fill(value);
  const graph: QuotientGraph = {
    size,
    lists: new Int32Array(room),
    spareLists: new Int32Array(room),
    free: neighbours.length,
    start: starts.slice(0, size),
    length: filled(0),
    elementCount: filled(0),
    state: new Uint8Array(size).fill(VARIABLE),
    weight: filled(1),
    degree: filled(0),
    reached: filled(0),
    measured: filled(0),
    outside: filled(0),
    stamp: filled(0),
    lastStamp: 0,
    bucketHead: filled(-1),
    bucketNext: filled(-1),
    hash: filled(0),
    degreeHead: filled(-1),
    degreeNext: filled(-1),
    degreePrevious: filled(-1),
    nextMember: filled(-1),
    lastMember: Int32Array.from({ length: size }, (_, v) => v),
  };
  graph.lists.set(neighbours);
  for (let v = 0; v < size; v++) graph.length[v] = starts[v + 1] - starts[v];
  return graph;
}

/** Puts hubs at the end of `order`, lists every other vertex by degree; returns the number of hubs. */
export function deferHubs(graph: QuotientGraph, order: Int32Array): number {
  const { size, length, state } = graph;
  const most = Math.max(16, 10 * Math.sqrt(size));
  let hubs = 0;
  for (let v = size - 1; v >= 0; v--) {
    if (length[v] <= most) {
      graph.degree[v] = length[v];
      enlist(graph, v);
      continue;
    }
    state[v] = GONE;
    order[size - 1 - hubs] = v;
    hubs++;
  }
  return hubs;
}

export function enlist(graph: QuotientGraph, v: number): void {
  const { degree, degreeHead, degreeNext, degreePrevious } = graph;
  const next = degreeHead[degree[v]];
  degreeNext[v] = next;
  degreePrevious[v] = -1;
  if (next >= 0) degreePrevious[next] = v;
  degreeHead[degree[v]] = v;
}

export function unlist(graph: QuotientGraph, v: number): void {
  const { degree, degreeHead, degreeNext, degreePrevious } = graph;
  const next = degreeNext[v];
  const previous = degreePrevious[v];
  if (next >= 0) degreePrevious[next] = previous;
  if (previous >= 0) degreeNext[previous] = next;
  else degreeHead[degree[v]] = next;
}

/** `v` is eliminated whenever `into` is: right after it, at no further fill. */
export function absorbMember(graph: QuotientGraph, into: number, v: number): void {
  graph.state[v] = GONE;
  graph.nextMember[graph.lastMember[into]] = v;
  graph.lastMember[into] = graph.lastMember[v];
}

/** Closes the gaps between lists when the longest element the pivot could form would not fit behind them. */
export function makeRoom(graph: QuotientGraph, pivot: number): void {
  const { lists, spareLists, start, length, elementCount, state } = graph;
  let needed = length[pivot] - elementCount[pivot];
  for (let at = start[pivot]; at < start[pivot] + elementCount[pivot]; at++) needed += length[lists[at]];
  if (graph.free + needed <= lists.length) return;

  let free = 0;
  for (let v = 0; v < graph.size; v++) {
    if (state[v] === GONE) continue;
    const begin = free;
    for (let at = start[v]; at < start[v] + length[v]; at++) spareLists[free++] = lists[at];
    start[v] = begin;
  }
  graph.lists = spareLists;
  graph.spareLists = lists;
  graph.free = free;
}

/** Pairs of regular networks, vertices numbered row by row. */
export type Pairs = [number, number][];

export const chainPairs = (size: number): Pairs =>
  Array.from({ length: Math.max(0, size - 1) }, (_, k) => [k, k + 1]);

export const ringPairs = (size: number): Pairs => Array.from({ length: size }, (_, k) => [k, (k + 1) % size]);

export const gridPairs = (side: number): Pairs => {
  const pairs: Pairs = [];
  for (let v = 0; v < side * side; v++) {
    if ((v + 1) % side !== 0) pairs.push([v, v + 1]);
    if (v + side < side * side) pairs.push([v, v + side]);
  }
  return pairs;
};

export const completePairs = (size: number): Pairs => {
  const pairs: Pairs = [];
  for (let i = 0; i < size; i++) for (let j = 0; j < i; j++) pairs.push([i, j]);
  return pairs;
};

/** Vertex `size` joined to every vertex of a ring. */
export const wheelPairs = (size: number): Pairs => [
  ...ringPairs(size),
  ...Array.from({ length: size }, (_, k): [number, number] => [size, k]),
];

export const firstEnds = (pairs: Pairs) => Int32Array.from(pairs, ([i]) => i);
export const secondEnds = (pairs: Pairs) => Int32Array.from(pairs, ([, j]) => j);

/** Neighbours of each vertex, both directions, as the orderings take them. */
export function adjacencyOf(size: number, pairs: Pairs) {
  const lists = Array.from({ length: size }, () => new Set<number>());
  for (const [i, j] of pairs) {
    lists[i]!.add(j);
    lists[j]!.add(i);
  }
  const starts = new Int32Array(size + 1);
  for (let v = 0; v < size; v++) starts[v + 1] = starts[v]! + lists[v]!.size;
  return { size, starts, neighbours: Int32Array.from(lists.flatMap((list) => [...list])) };
}

/**
 * Entries below the diagonal of the factor, by playing elimination out on sets: each vertex eliminated joins all
 * its remaining neighbours to each other. The definition of fill, with no tree and no quotient graph.
 */
export function countByElimination(size: number, pairs: Pairs, order: Iterable<number>): number {
  const lists = Array.from({ length: size }, () => new Set<number>());
  for (const [i, j] of pairs) {
    lists[i]!.add(j);
    lists[j]!.add(i);
  }
  let entries = 0;
  for (const v of order) {
    const left = [...lists[v]!];
    entries += left.length;
    for (const a of left) {
      lists[a]!.delete(v);
      for (const b of left) if (a !== b) lists[a]!.add(b);
    }
  }
  return entries;
}

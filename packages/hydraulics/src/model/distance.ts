import type { Line } from "./line.js";

/**
 * Distance of each point from the nearest source along open pipe [m]; infinite where none leads (Dijkstra with a
 * binary heap).
 */
export function distanceFromSources(line: Line): Float64Array {
  const { points, segments } = line;
  const meeting: number[][] = Array.from({ length: points.count }, () => []);
  for (let s = 0; s < segments.count; s += 1) {
    if (segments.shut[s] === 1) continue;
    meeting[segments.from[s]].push(s);
    meeting[segments.to[s]].push(s);
  }
  const distance = new Float64Array(points.count).fill(Number.POSITIVE_INFINITY);
  const heap = createHeap();
  for (const source of line.sources) {
    distance[source.point] = 0;
    heap.push(0, source.point);
  }
  for (let next = heap.pop(); next !== undefined; next = heap.pop()) {
    if (next.key > distance[next.item]) continue;
    for (const s of meeting[next.item]) {
      const other = segments.from[s] === next.item ? segments.to[s] : segments.from[s];
      const there = next.key + segments.length[s];
      if (there >= distance[other]) continue;
      distance[other] = there;
      heap.push(there, other);
    }
  }
  return distance;
}

interface Entry {
  readonly key: number;
  readonly item: number;
}

function createHeap(): { push(key: number, item: number): void; pop(): Entry | undefined } {
  const heap: Entry[] = [];
  const swap = (a: number, b: number) => {
    [heap[a], heap[b]] = [heap[b], heap[a]];
  };
  return {
    push(key, item) {
      heap.push({ key, item });
      for (let at = heap.length - 1; at > 0; ) {
        const above = (at - 1) >> 1;
        if (heap[above].key <= heap[at].key) break;
        swap(above, at);
        at = above;
      }
    },
    pop() {
      const first = heap[0];
      const last = heap.pop();
      if (last === undefined || heap.length === 0) return first;
      heap[0] = last;
      for (let at = 0; ; ) {
        const left = 2 * at + 1;
        const right = left + 1;
        let least = at;
        if (left < heap.length && heap[left].key < heap[least].key) least = left;
        if (right < heap.length && heap[right].key < heap[least].key) least = right;
        if (least === at) return first;
        swap(at, least);
        at = least;
      }
    },
  };
}

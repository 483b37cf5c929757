/** A queue that gives the first of its items by some order, whatever order they came in. */
export interface Heap<Item> {
  push(item: Item): void;
  /** The first item, taken out; undefined when there is none. */
  pop(): Item | undefined;
}

/**
 * A binary heap.
 *
 * @param isBefore  whether the first item goes before the second; items of which neither does come out in any order
 * @source williams-1964, from memory
 */
export function createHeap<Item>(isBefore: (a: Item, b: Item) => boolean): Heap<Item> {
  const heap: Item[] = [];
  const swap = (a: number, b: number) => {
    [heap[a], heap[b]] = [heap[b], heap[a]];
  };
  return {
    push(item) {
      heap.push(item);
      for (let at = heap.length - 1; at > 0; ) {
        const above = (at - 1) >> 1;
        if (!isBefore(heap[at], heap[above])) break;
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
        let least = at;
        for (const child of [left, left + 1]) {
          if (child < heap.length && isBefore(heap[child], heap[least])) least = child;
        }
        if (least === at) return first;
        swap(at, least);
        at = least;
      }
    },
  };
}

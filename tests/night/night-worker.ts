import { parentPort, workerData } from "node:worker_threads";
import { type CaseKind, createCases, type OneIn } from "./one-case.js";

/** Cases from one number up to, and without, another. */
interface Block {
  readonly kind: CaseKind;
  readonly from: number;
  readonly to: number;
}

const { at: shared, oneIn } = workerData as { at: SharedArrayBuffer; oneIn: OneIn };
/** Where the starting thread reads which case is gone through, so that it can tell one that never ends. */
const at = new Int32Array(shared);
const tryCase = createCases(oneIn);

parentPort?.on("message", ({ kind, from, to }: Block) => {
  const found = [];
  for (let number = from; number < to; number += 1) {
    Atomics.store(at, 0, number);
    const one = tryCase(kind, number);
    if (one !== undefined) found.push(one);
  }
  parentPort?.postMessage({ from, found });
});

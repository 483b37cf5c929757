import { Worker } from "node:worker_threads";

/** A case that takes longer than this never ends, as far as anyone will wait [ms]. */
const ENDLESS = 600_000;
/** Room for what has just been made [MB]. */
const YOUNG = 128;
const LOOK_EVERY = 1000;
const TELL_EVERY = 30_000;

/**
 * Gives out numbered cases to threads, a block at a time, until all are done or the process is told to stop.
 *
 * @param asked.worker     path of what a thread runs
 * @param asked.oneIn      how often more is asked
 * @param asked.kind       "plans" or "documents"
 * @param asked.tellFound  is given each case that went wrong
 * @param asked.tellDone   is given, after each block, the first number not gone through yet, and how many went wrong
 * @returns whether it was told to stop
 */
export async function runBlocks({ worker, oneIn, jobs, kind, from, to, block, tellFound, tellDone }) {
  const begun = Date.now();
  const open = new Set();
  let [next, cases, found, isStopped] = [from, 0, 0, false];
  const stop = () => {
    isStopped = true;
  };
  process.once("SIGINT", stop);
  process.once("SIGTERM", stop);
  const teller = setInterval(() => {
    const each = (Date.now() - begun) / Math.max(1, cases);
    const hours = (each * (to - from - cases)) / 3_600_000;
    process.stderr.write(
      `${kind}: ${cases} of ${to - from}, ${each.toFixed(1)} ms each, ${hours.toFixed(1)} h to go\n`,
    );
  }, TELL_EVERY);
  await Promise.all(Array.from({ length: jobs }, oneThread));
  clearInterval(teller);
  process.off("SIGINT", stop);
  process.off("SIGTERM", stop);
  return { isStopped };

  async function oneThread() {
    let thread = startThread(worker, oneIn);
    while (next < to && !isStopped) {
      const mine = { kind, from: next, to: Math.min(to, next + block) };
      next = mine.to;
      open.add(mine.from);
      for (let start = mine.from; start < mine.to; ) {
        const answer = await thread.ask({ ...mine, from: start });
        for (const one of answer.found) tellFound(one);
        found += answer.found.length;
        cases += answer.upTo - start;
        start = answer.upTo;
        if (answer.isLost) thread = startThread(worker, oneIn);
      }
      open.delete(mine.from);
      tellDone(Math.min(next, ...open), found);
    }
    await thread.end();
  }
}

/** A thread that is asked for blocks, and given up where one case never ends or takes the thread with it. */
function startThread(path, oneIn) {
  const shared = new SharedArrayBuffer(4);
  const at = new Int32Array(shared);
  const thread = new Worker(path, {
    workerData: { at: shared, oneIn },
    // Plans live shortly: with room for many of them, far fewer are carried from one half to the other.
    resourceLimits: { maxYoungGenerationSizeMb: YOUNG },
  });
  return { ask, end: () => thread.terminate() };

  function ask(asked) {
    return new Promise((resolve) => {
      let [seen, since] = [-1, Date.now()];
      const watch = setInterval(() => {
        const number = Atomics.load(at, 0);
        if (number !== seen) [seen, since] = [number, Date.now()];
        else if (Date.now() - since > ENDLESS) lose(`no answer in ${ENDLESS / 1000} s`);
      }, LOOK_EVERY);
      const onMessage = ({ found }) => finish({ found, upTo: asked.to });
      const onError = (error) => lose(`ends its thread: ${error.message}`);
      thread.once("message", onMessage);
      thread.once("error", onError);
      thread.postMessage(asked);

      function lose(fault) {
        const number = Atomics.load(at, 0);
        thread.terminate();
        finish({ found: [{ kind: asked.kind, number, faults: [fault] }], upTo: number + 1, isLost: true });
      }
      function finish(answer) {
        clearInterval(watch);
        thread.off("message", onMessage);
        thread.off("error", onError);
        resolve(answer);
      }
    });
  }
}

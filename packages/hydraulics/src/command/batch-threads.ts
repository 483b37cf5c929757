import { Worker } from "node:worker_threads";
import { type BatchAsk, faultOf, writeLine } from "./batch-line.js";
import { UNREADABLE } from "./open-plan.js";
import type { TextLine } from "./text-lines.js";

/** A line of a batch as it is written, and its status. */
export interface WrittenLine {
  readonly status: number;
  readonly text: string;
}

/** Lines read ahead of the first that is not written, for each thread: enough that none waits for its next. */
const AHEAD = 4;

/**
 * The answers about the plans of some lines, in their order, from so many threads; each as soon as it and those before
 * it are there. No more than a few lines a thread are held at once: who takes the answers slowly is not run ahead of.
 */
export async function* answersOf(
  lines: AsyncIterable<TextLine>,
  asked: BatchAsk,
  jobs: number,
): AsyncGenerator<WrittenLine> {
  const threads = new Threads(asked, jobs);
  const source = lines[Symbol.asyncIterator]();
  const waiting: Promise<WrittenLine>[] = [];
  try {
    let coming: Promise<IteratorResult<TextLine>> | undefined = source.next();
    while (coming !== undefined || waiting.length > 0) {
      const turns: Promise<WrittenLine | IteratorResult<TextLine>>[] = waiting.slice(0, 1);
      if (coming !== undefined && waiting.length < AHEAD * jobs) turns.push(coming);
      const turn = await Promise.race(turns);
      if ("status" in turn) {
        waiting.shift();
        yield turn;
      } else if (turn.done === true) {
        coming = undefined;
      } else {
        waiting.push(threads.answer(turn.value));
        coming = source.next();
        // What goes wrong with reading is told when its turn comes, not while others are waited for.
        coming.catch(() => {});
      }
    }
  } finally {
    await threads.end();
  }
}

/** One that waits for an answer. */
interface Errand {
  readonly line: TextLine;
  readonly done: (answer: WrittenLine) => void;
}

/** Threads that answer one line at a time each; one that dies of its line is replaced, and the line says so. */
class Threads {
  readonly #asked: BatchAsk;
  readonly #idle: Worker[] = [];
  readonly #busy = new Map<Worker, Errand>();
  readonly #queue: Errand[] = [];
  #more: number;

  constructor(asked: BatchAsk, jobs: number) {
    this.#asked = asked;
    this.#more = jobs;
  }

  answer(line: TextLine): Promise<WrittenLine> {
    return new Promise((done) => {
      this.#queue.push({ line, done });
      this.#next();
    });
  }

  async end(): Promise<void> {
    await Promise.all([...this.#idle, ...this.#busy.keys()].map((thread) => thread.terminate()));
  }

  #next(): void {
    if (this.#queue.length === 0) return;
    const thread = this.#idle.pop() ?? this.#begun();
    if (thread === undefined) return;
    const errand = this.#queue.shift() as Errand;
    this.#busy.set(thread, errand);
    thread.postMessage({ line: errand.line.line, text: errand.line.text });
  }

  /** Another thread, while there may be more of them. */
  #begun(): Worker | undefined {
    if (this.#more === 0) return undefined;
    this.#more -= 1;
    const thread = new Worker(new URL("./batch-worker.js", import.meta.url), { workerData: this.#asked });
    thread.on("message", (answer: WrittenLine) => {
      this.#idle.push(thread);
      this.#finish(thread, answer);
    });
    thread.once("error", (error) => {
      this.#more += 1;
      const { line } = this.#busy.get(thread)?.line ?? { line: 0 };
      const told = { line, ask: this.#asked.ask, status: UNREADABLE, fault: faultOf(error) };
      this.#finish(thread, { status: UNREADABLE, text: writeLine(told) });
    });
    return thread;
  }

  #finish(thread: Worker, answer: WrittenLine): void {
    const errand = this.#busy.get(thread);
    this.#busy.delete(thread);
    errand?.done(answer);
    this.#next();
  }
}

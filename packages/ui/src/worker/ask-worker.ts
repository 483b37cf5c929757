import type { Plan } from "@headfall/hydraulics";
import type { CheckAnswer, CheckProgress, CheckRequest, WorkerMessage } from "./protocol.js";

/** What the one who asks wants to be told. */
export interface WorkerListener {
  readonly answered: (answer: CheckAnswer) => void;
  readonly wentOn?: (progress: CheckProgress) => void;
}

/** An older question that has kept the worker this long is dropped for a newer one [ms]. */
const PATIENCE_MS = 400;

/**
 * Asks for checks that are too long for the page's own thread. While one question is being worked on, only the
 * newest of those that follow is kept. Where no worker can be had, the page's thread does it after all.
 */
export class WorkerAsker {
  #worker: Worker | undefined;
  #cannotStart = typeof Worker === "undefined";
  #turn = 0;
  #inHand: CheckRequest | undefined;
  #since = 0;
  #waiting: CheckRequest | undefined;
  readonly #listener: WorkerListener;

  constructor(listener: WorkerListener) {
    this.#listener = listener;
  }

  /** @returns the turn, by which the answer will be known */
  ask(plan: Plan, samples: number, day?: string): number {
    const request: CheckRequest = { turn: ++this.#turn, plan, day, samples };
    if (this.#inHand !== undefined && performance.now() - this.#since > PATIENCE_MS) this.close();
    if (this.#inHand !== undefined) this.#waiting = request;
    else this.#send(request);
    return request.turn;
  }

  /** Ends the worker and what it was at; the next question starts another. */
  close(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#inHand = undefined;
    this.#waiting = undefined;
  }

  #send(request: CheckRequest): void {
    this.#inHand = request;
    this.#since = performance.now();
    if (this.#cannotStart) {
      // Fetched only here: what samples is not needed for the first look.
      void import("./check-here.js").then(({ checkHere }) => {
        const start = performance.now();
        const outcome = checkHere(request);
        this.#receive({ turn: request.turn, outcome, isCoarse: false, ms: performance.now() - start });
      });
      return;
    }
    this.#worker ??= this.#start();
    this.#worker.postMessage(request);
  }

  #start(): Worker {
    const worker = new Worker(new URL("./check-worker.js", import.meta.url), { type: "module" });
    worker.addEventListener("message", (event: MessageEvent<WorkerMessage>) => this.#receive(event.data));
    worker.addEventListener("error", () => this.#giveUpOnWorker());
    return worker;
  }

  #giveUpOnWorker(): void {
    const unanswered = this.#waiting ?? this.#inHand;
    this.close();
    this.#cannotStart = true;
    if (unanswered !== undefined) this.#send(unanswered);
  }

  #receive(message: WorkerMessage): void {
    if (!("outcome" in message)) {
      this.#listener.wentOn?.(message);
      return;
    }
    if (message.isCoarse) {
      this.#listener.answered(message);
      return;
    }
    this.#inHand = undefined;
    const next = this.#waiting;
    this.#waiting = undefined;
    this.#listener.answered(message);
    if (next !== undefined) this.#send(next);
  }
}

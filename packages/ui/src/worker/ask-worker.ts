import { checkPlan, type Plan } from "@headfall/hydraulics";
import type { CheckAnswer, CheckOutcome, CheckRequest } from "./protocol.js";

/**
 * Asks for checks that are too long for the page's own thread. While one question is being worked on, only the
 * newest of those that follow is kept. Where no worker can be had, the page's thread does it after all.
 */
export class WorkerAsker {
  #worker: Worker | undefined;
  #cannotStart = typeof Worker === "undefined";
  #turn = 0;
  #inHand: CheckRequest | undefined;
  #waiting: CheckRequest | undefined;
  readonly #answered: (outcome: CheckOutcome, turn: number) => void;

  constructor(answered: (outcome: CheckOutcome, turn: number) => void) {
    this.#answered = answered;
  }

  /** @returns the turn, by which the answer will be known */
  ask(plan: Plan, samples: number): number {
    const request: CheckRequest = { turn: ++this.#turn, plan, samples };
    if (this.#inHand !== undefined) this.#waiting = request;
    else this.#send(request);
    return request.turn;
  }

  /** Ends the worker; the next question starts another. */
  close(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#inHand = undefined;
    this.#waiting = undefined;
  }

  #send(request: CheckRequest): void {
    this.#inHand = request;
    if (this.#cannotStart) {
      setTimeout(() =>
        this.#receive({ turn: request.turn, outcome: checkPlan(request.plan, { samples: request.samples }) }),
      );
      return;
    }
    this.#worker ??= this.#start();
    this.#worker.postMessage(request);
  }

  #start(): Worker {
    const worker = new Worker(new URL("./check-worker.js", import.meta.url), { type: "module" });
    worker.addEventListener("message", (event: MessageEvent<CheckAnswer>) => this.#receive(event.data));
    worker.addEventListener("error", () => this.#giveUpOnWorker());
    return worker;
  }

  #giveUpOnWorker(): void {
    const unanswered = this.#waiting ?? this.#inHand;
    this.close();
    this.#cannotStart = true;
    if (unanswered !== undefined) this.#send(unanswered);
  }

  #receive(answer: CheckAnswer): void {
    this.#inHand = undefined;
    const next = this.#waiting;
    this.#waiting = undefined;
    this.#answered(answer.outcome, answer.turn);
    if (next !== undefined) this.#send(next);
  }
}

import type { RoomAnswer, RoomMessage, RoomQuestion, RoomRequest } from "./room-protocol.js";

/**
 * Asks one worker the questions of a room. While one is being worked on only the newest of those that follow is kept;
 * who asked an older one is told nothing. Where no worker can be had, the page's thread does it after all.
 */
export class RoomAsker {
  /** Told how far the question in hand has come, from 0 to 1, and what is being done where there is a word for it. */
  onProgress: (share: number, words?: string) => void = () => undefined;

  #worker: Worker | undefined;
  #cannotStart = typeof Worker === "undefined";
  #turn = 0;
  #inHand: RoomRequest | undefined;
  #waiting: RoomRequest | undefined;
  readonly #tellers = new Map<number, (answer: RoomAnswer<RoomQuestion["kind"]>) => void>();

  ask<Question extends RoomQuestion>(
    question: Question,
    tell: (answer: RoomAnswer<Question["kind"]>) => void,
  ): void {
    const request: RoomRequest = { turn: ++this.#turn, question };
    this.#tellers.clear();
    this.#tellers.set(request.turn, tell as (answer: RoomAnswer<RoomQuestion["kind"]>) => void);
    if (this.#inHand === undefined) this.#send(request);
    else this.#waiting = request;
  }

  /** Ends what is being worked on. */
  close(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#inHand = undefined;
    this.#waiting = undefined;
    this.#tellers.clear();
  }

  #send(request: RoomRequest): void {
    this.#inHand = request;
    if (this.#cannotStart) {
      void import("./answer-room.js").then(({ answerRoom }) => {
        this.#receive({ turn: request.turn, answered: answerRoom(request.question) });
      });
      return;
    }
    this.#worker ??= this.#start();
    this.#worker.postMessage(request);
  }

  #start(): Worker {
    const worker = new Worker(new URL("./room-worker.js", import.meta.url), { type: "module" });
    worker.addEventListener("message", (event: MessageEvent<RoomMessage>) => this.#receive(event.data));
    worker.addEventListener("error", () => this.#giveUpOnWorker());
    return worker;
  }

  #giveUpOnWorker(): void {
    const unanswered = this.#waiting ?? this.#inHand;
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#inHand = undefined;
    this.#waiting = undefined;
    this.#cannotStart = true;
    if (unanswered !== undefined) this.#send(unanswered);
  }

  #receive(message: RoomMessage): void {
    if (!("answered" in message)) {
      if (message.turn === this.#turn) this.onProgress(message.share, message.words);
      return;
    }
    this.#inHand = undefined;
    const next = this.#waiting;
    this.#waiting = undefined;
    this.#tellers.get(message.turn)?.(message.answered);
    this.#tellers.delete(message.turn);
    if (next !== undefined) this.#send(next);
  }
}

import type { ReactiveController, ReactiveControllerHost } from "lit";
import { RoomAsker } from "../worker/ask-room.js";
import type { RoomAnswer, RoomQuestion } from "../worker/room-protocol.js";

/**
 * Asks the rooms' worker for its host, once the hand has rested, and tells how far the answer is. The newest question
 * counts; with the host gone nothing is asked any more.
 */
export class RestedAsker implements ReactiveController {
  /** How far the work in hand has come, from 0 to 1; undefined when there is none, or nothing is told of it yet. */
  progress: number | undefined;

  readonly #host: ReactiveControllerHost;
  readonly #asker = new RoomAsker();
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
    this.#asker.onProgress = (share) => {
      this.progress = share;
      host.requestUpdate();
    };
  }

  hostDisconnected(): void {
    this.close();
  }

  /** @param rest  time without another question before this one is asked [ms] */
  ask<Question extends RoomQuestion>(
    question: Question,
    rest: number,
    tell: (answer: RoomAnswer<Question["kind"]>) => void,
  ): void {
    clearTimeout(this.#timer);
    const send = () =>
      this.#asker.ask(question, (answer) => {
        this.progress = undefined;
        tell(answer);
        this.#host.requestUpdate();
      });
    this.#timer = setTimeout(send, rest);
  }

  /** Ends what is waiting or being worked on. */
  close(): void {
    clearTimeout(this.#timer);
    this.#asker.close();
    this.progress = undefined;
  }
}

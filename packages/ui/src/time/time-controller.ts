import type { Plan, Problem } from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import { RoomAsker } from "../worker/ask-room.js";
import type { TimeAnswer } from "../worker/room-protocol.js";

/** Rest after the last change before the days are reckoned [ms]. */
const REST_MS = 250;

export interface TimeQuestion {
  readonly plan: Plan;
  readonly day: string | undefined;
  readonly daysAway: number;
  readonly source: number;
}

/** Has the days of a plan reckoned for its host, once the hand has rested. What was found last stays until then. */
export class TimeController implements ReactiveController {
  answer: TimeAnswer | undefined;
  problems: readonly Problem[] = [];
  /** Whether the answer is of an older question. */
  isOld = false;

  readonly #host: ReactiveControllerHost;
  readonly #asker = new RoomAsker();
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
    this.#asker.close();
  }

  ask(question: TimeQuestion): void {
    clearTimeout(this.#timer);
    this.isOld = true;
    this.#timer = setTimeout(() => this.#send(question), this.answer === undefined ? 0 : REST_MS);
  }

  #send(question: TimeQuestion): void {
    this.#asker.ask({ kind: "time", ...question }, (told) => {
      if (told.ok) this.answer = told.answer;
      this.problems = told.ok ? [] : told.problems;
      this.isOld = false;
      this.#host.requestUpdate();
    });
  }
}

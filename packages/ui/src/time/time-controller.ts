import type { Plan, Problem } from "@headfall/hydraulics";
import type { ReactiveControllerHost } from "lit";
import { RestedAsker } from "../controllers/rested-asker.js";
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
export class TimeController {
  answer: TimeAnswer | undefined;
  problems: readonly Problem[] = [];
  /** Whether the answer is of an older question. */
  isOld = false;

  readonly #asker: RestedAsker;

  constructor(host: ReactiveControllerHost) {
    this.#asker = new RestedAsker(host);
  }

  ask(question: TimeQuestion): void {
    this.isOld = true;
    this.#asker.ask({ kind: "time", ...question }, this.answer === undefined ? 0 : REST_MS, (told) => {
      if (told.ok) this.answer = told.answer;
      this.problems = told.ok ? [] : told.problems;
      this.isOld = false;
    });
  }
}

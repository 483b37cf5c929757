import type { CureAnswer, Plan, Problem } from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import { RoomAsker } from "../worker/ask-room.js";
import type { CureWanted } from "../worker/room-protocol.js";

/** Has cures of a plan looked for, when its host asks. What was found last stays until the next has been. */
export class CureController implements ReactiveController {
  answer: CureAnswer | undefined;
  /** The plan that the answer is of. */
  of: Plan | undefined;
  problems: readonly Problem[] = [];
  /** What is being tried, in words; undefined when nothing is. */
  trying: string | undefined;

  readonly #host: ReactiveControllerHost;
  readonly #asker = new RoomAsker();

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
    this.#asker.onProgress = (_, words) => {
      this.trying = words ?? "";
      host.requestUpdate();
    };
  }

  hostDisconnected(): void {
    this.cancel();
  }

  look(plan: Plan, options: CureWanted): void {
    this.trying = "";
    this.#asker.ask({ kind: "cure", plan, options }, (told) => {
      this.trying = undefined;
      this.problems = told.ok ? [] : told.problems;
      this.answer = told.ok ? told.answer : undefined;
      this.of = plan;
      this.#host.requestUpdate();
    });
    this.#host.requestUpdate();
  }

  cancel(): void {
    this.#asker.close();
    this.trying = undefined;
    this.#host.requestUpdate();
  }
}

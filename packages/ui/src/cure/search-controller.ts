import type { Plan, Problem } from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import { RoomAsker } from "../worker/ask-room.js";
import type { CureWanted, RoomAnswers } from "../worker/room-protocol.js";

/** Has cures of a plan looked for, or their trade-offs, when its host asks. What was found last stays until then. */
export class SearchController<Kind extends "cure" | "front"> implements ReactiveController {
  answer: RoomAnswers[Kind] | undefined;
  /** The plan that the answer is of. */
  of: Plan | undefined;
  problems: readonly Problem[] = [];
  /** What is being tried, in words; undefined when nothing is. */
  trying: string | undefined;

  readonly #host: ReactiveControllerHost;
  readonly #kind: Kind;
  readonly #asker = new RoomAsker();

  constructor(host: ReactiveControllerHost, kind: Kind) {
    this.#host = host;
    this.#kind = kind;
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
    this.#asker.ask({ kind: this.#kind, plan, options }, (told) => {
      this.trying = undefined;
      this.problems = told.ok ? [] : told.problems;
      // The answer is of the kind that was asked.
      this.answer = told.ok ? (told.answer as RoomAnswers[Kind]) : undefined;
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

import type { BuildSheet, Plan, Problem } from "@headfall/hydraulics";
import type { ReactiveControllerHost } from "lit";
import { RestedAsker } from "../controllers/rested-asker.js";

/** Rest after the last change before all is worked out again [ms]. */
const REST_MS = 400;

interface BuildQuestion {
  readonly plan: Plan;
  readonly day: string | undefined;
}

/** Has a plan's sheet for building worked out for its host, once the hand has rested. What was found last stays until then. */
export class BuildController {
  sheet: BuildSheet | undefined;
  /** What was found belongs to this plan. */
  shown: Plan | undefined;
  problems: readonly Problem[] = [];
  /** Whether the work was cancelled, and has to be asked for. */
  waits = false;

  readonly #host: ReactiveControllerHost;
  readonly #asker: RestedAsker;
  #asked: BuildQuestion | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    this.#asker = new RestedAsker(host);
  }

  /** How far the work in hand has come, from 0 to 1; undefined when there is none. */
  get progress(): number | undefined {
    return this.#asker.progress;
  }

  /** Whether what was found is of the plan before. */
  get isOld(): boolean {
    return this.sheet !== undefined && this.shown !== this.#asked?.plan;
  }

  ask(question: BuildQuestion): void {
    this.#asked = question;
    this.#run(question, this.sheet === undefined ? 0 : REST_MS);
  }

  /** The user wants it worked out after all. */
  again(): void {
    if (this.#asked !== undefined) this.#run(this.#asked, 0);
    this.#host.requestUpdate();
  }

  cancel(): void {
    this.#asker.close();
    this.waits = true;
    this.#host.requestUpdate();
  }

  #run(question: BuildQuestion, rest: number): void {
    this.waits = false;
    this.#asker.progress = 0;
    this.#asker.ask({ kind: "build", ...question }, rest, (told) => {
      if (told.ok) {
        this.sheet = told.answer;
        this.shown = question.plan;
      }
      this.problems = told.ok ? [] : told.problems;
    });
  }
}

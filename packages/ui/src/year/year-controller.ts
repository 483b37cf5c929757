import type { Plan, Problem, YearOfPlan } from "@headfall/hydraulics";
import type { ReactiveControllerHost } from "lit";
import { RestedAsker } from "../controllers/rested-asker.js";
import type { RoomTold } from "../kernels/how-got/request.js";

/** Rest after the last change before the year is reckoned: it takes seconds [ms]. */
const REST_MS = 400;

interface YearQuestion {
  readonly plan: Plan;
  readonly day: string | undefined;
  readonly weeks: number;
}

/** Has a plan's year reckoned for its host, once the hand has rested. What was found last stays until then. */
export class YearController {
  year: YearOfPlan | undefined;
  /** The same, for figures that tell how they were got. */
  told: RoomTold = {};
  problems: readonly Problem[] = [];
  /** Whether what is shown is of an older plan. */
  isOld = false;
  /** Whether the last run was cancelled, and has to be asked for. */
  waits = false;

  readonly #host: ReactiveControllerHost;
  readonly #asker: RestedAsker;
  #asked: YearQuestion | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    this.#asker = new RestedAsker(host);
  }

  /** How far the work in hand has come, from 0 to 1; undefined when there is none. */
  get progress(): number | undefined {
    return this.#asker.progress;
  }

  ask(question: YearQuestion): void {
    this.#asked = question;
    this.#run(this.year === undefined ? 0 : REST_MS);
  }

  /** The user wants it run after all. */
  run(): void {
    this.#run(0);
    this.#host.requestUpdate();
  }

  /** Ends the work; what was found last stays. */
  cancel(): void {
    this.#asker.close();
    this.waits = true;
    this.#host.requestUpdate();
  }

  #run(rest: number): void {
    if (this.#asked === undefined) return;
    this.isOld = true;
    this.waits = false;
    this.#asker.progress = 0;
    this.#asker.ask({ kind: "year", ...this.#asked }, rest, (told) => {
      if (told.ok) {
        this.year = told.answer;
        this.told = { year: told.answer };
      }
      this.problems = told.ok ? [] : told.problems;
      this.isOld = false;
    });
  }
}

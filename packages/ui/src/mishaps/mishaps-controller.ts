import type { Mishaps, Plan, Problem } from "@headfall/hydraulics";
import type { ReactiveControllerHost } from "lit";
import { RestedAsker } from "../controllers/rested-asker.js";
import type { RoomTold } from "../kernels/how-got/request.js";
import { drinkersIn } from "../kernels/mishaps/drinkers-in.js";

/** Rest after the last change before the mishaps are run: there are dozens [ms]. */
const REST_MS = 400;
/** Plans of more drinkers are run when that is asked for. */
export const MOST_AT_ONCE = 300;

interface MishapsQuestion {
  readonly plan: Plan;
  readonly day: string | undefined;
}

/** Has the mishaps of a plan run for its host, once the hand has rested. What was found last stays until then. */
export class MishapsController {
  mishaps: Mishaps | undefined;
  /** The same, for figures that tell how they were got. */
  told: RoomTold = {};
  /** What was found belongs to this plan. */
  shown: Plan | undefined;
  problems: readonly Problem[] = [];
  /** Whether a run has to be asked for: the plan is large, or the last one was cancelled. */
  waits = false;

  readonly #host: ReactiveControllerHost;
  readonly #asker: RestedAsker;
  #asked: MishapsQuestion | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    this.#asker = new RestedAsker(host);
  }

  /** How far the run in hand has come, from 0 to 1; undefined when none is. */
  get progress(): number | undefined {
    return this.#asker.progress;
  }

  /** Whether what was found is of the plan before. */
  get isOld(): boolean {
    return this.mishaps !== undefined && this.shown !== this.#asked?.plan;
  }

  /** Takes a new plan; a large one waits to be asked for. */
  ask(question: MishapsQuestion): void {
    this.#asked = question;
    this.waits = drinkersIn(question.plan) > MOST_AT_ONCE;
    if (this.waits) this.#asker.close();
    else this.#run(question, this.mishaps === undefined ? 0 : REST_MS);
  }

  /** The user wants it run. */
  run(): void {
    if (this.#asked === undefined) return;
    this.waits = false;
    this.#run(this.#asked, 0);
    this.#host.requestUpdate();
  }

  /** Ends the run; what was found last stays. */
  cancel(): void {
    this.#asker.close();
    this.waits = true;
    this.#host.requestUpdate();
  }

  #run(question: MishapsQuestion, rest: number): void {
    this.#asker.progress = 0;
    this.#asker.ask({ kind: "mishaps", ...question }, rest, (told) => {
      if (told.ok) {
        this.mishaps = told.answer;
        this.told = { mishaps: told.answer };
        this.shown = question.plan;
      }
      this.problems = told.ok ? [] : told.problems;
    });
  }
}

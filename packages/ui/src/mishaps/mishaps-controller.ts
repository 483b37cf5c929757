import type { Mishaps, Plan, Problem } from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { RoomTold } from "../kernels/how-got/request.js";
import { drinkersIn } from "../kernels/mishaps/drinkers-in.js";
import { RoomAsker } from "../worker/ask-room.js";

/** Rest after the last change before the mishaps are run: there are dozens [ms]. */
const REST_MS = 400;
/** Plans of more drinkers are run when that is asked for. */
export const MOST_AT_ONCE = 300;

interface MishapsQuestion {
  readonly plan: Plan;
  readonly day: string | undefined;
}

/** Has the mishaps of a plan run for its host, once the hand has rested. What was found last stays until then. */
export class MishapsController implements ReactiveController {
  mishaps: Mishaps | undefined;
  /** The same, for figures that tell how they were got. */
  told: RoomTold = {};
  /** What was found belongs to this plan. */
  shown: Plan | undefined;
  problems: readonly Problem[] = [];
  /** How far the run in hand has come, from 0 to 1; undefined when none is. */
  progress: number | undefined;
  /** Whether a run has to be asked for: the plan is large, or the last one was cancelled. */
  waits = false;

  readonly #host: ReactiveControllerHost;
  readonly #asker = new RoomAsker();
  #timer: ReturnType<typeof setTimeout> | undefined;
  #asked: MishapsQuestion | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
    this.#asker.onProgress = (share) => {
      this.progress = share;
      host.requestUpdate();
    };
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
    this.#asker.close();
  }

  /** Whether what was found is of the plan before. */
  get isOld(): boolean {
    return this.mishaps !== undefined && this.shown !== this.#asked?.plan;
  }

  /** Takes a new plan; a large one waits to be asked for. */
  ask(question: MishapsQuestion): void {
    this.#asked = question;
    this.waits = drinkersIn(question.plan) > MOST_AT_ONCE;
    clearTimeout(this.#timer);
    if (this.waits) this.#asker.close();
    this.progress = this.waits ? undefined : 0;
    if (!this.waits)
      this.#timer = setTimeout(() => this.#send(question), this.mishaps === undefined ? 0 : REST_MS);
  }

  /** The user wants it run. */
  run(): void {
    if (this.#asked === undefined) return;
    this.waits = false;
    this.progress = 0;
    this.#send(this.#asked);
    this.#host.requestUpdate();
  }

  /** Ends the run; what was found last stays. */
  cancel(): void {
    clearTimeout(this.#timer);
    this.#asker.close();
    this.progress = undefined;
    this.waits = true;
    this.#host.requestUpdate();
  }

  #send(question: MishapsQuestion): void {
    this.#asker.ask({ kind: "mishaps", ...question }, (told) => {
      if (told.ok) {
        this.mishaps = told.answer;
        this.told = { mishaps: told.answer };
        this.shown = question.plan;
      }
      this.problems = told.ok ? [] : told.problems;
      this.progress = undefined;
      this.#host.requestUpdate();
    });
  }
}

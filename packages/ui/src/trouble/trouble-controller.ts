import type { Plan, Problem, Sign, Trouble } from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { RoomTold } from "../kernels/how-got/request.js";
import { RoomAsker } from "../worker/ask-room.js";

/** Rest after the last press before the causes are ranked [ms]. */
const REST_MS = 200;

export interface TroubleQuestion {
  readonly plan: Plan;
  readonly day: string | undefined;
  readonly signs: readonly Sign[];
  readonly lastSeen: number;
  /** Where the water stands in each source [m]; as the plan has it where left out. */
  readonly levels: readonly (number | undefined)[];
}

/** Has likely causes ranked for its host, once the hand has rested. What was found last stays until then. */
export class TroubleController implements ReactiveController {
  trouble: Trouble | undefined;
  /** The same, for figures that tell how they were got. */
  told: RoomTold = {};
  problems: readonly Problem[] = [];
  /** Whether causes are being ranked anew. */
  isOld = false;
  /** How far that has come, from 0 to 1; undefined until it takes long enough to tell. */
  progress: number | undefined;
  /** Whether the user wanted no more of it. */
  isStopped = false;

  readonly #host: ReactiveControllerHost;
  readonly #asker = new RoomAsker();
  #timer: ReturnType<typeof setTimeout> | undefined;
  #asked: TroubleQuestion | undefined;

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

  /** Takes new signs, or a new plan; without signs nothing is wrong that could be told. */
  ask(question: TroubleQuestion): void {
    clearTimeout(this.#timer);
    this.#asked = question;
    this.isStopped = false;
    if (question.signs.length === 0) {
      this.#asker.close();
      this.#take(undefined, []);
      return;
    }
    this.isOld = true;
    this.#timer = setTimeout(() => this.#send(question), REST_MS);
  }

  /** Ends the work; what was found last stays. */
  stop(): void {
    clearTimeout(this.#timer);
    this.#asker.close();
    this.progress = undefined;
    this.isOld = false;
    this.isStopped = true;
    this.#host.requestUpdate();
  }

  /** After all. */
  goOn(): void {
    if (this.#asked !== undefined) this.ask(this.#asked);
    this.#host.requestUpdate();
  }

  #send(question: TroubleQuestion): void {
    this.#asker.ask({ kind: "trouble", ...question }, (told) => {
      if (told.ok) this.#take(told.answer, []);
      else this.#take(this.trouble, told.problems);
    });
  }

  #take(trouble: Trouble | undefined, problems: readonly Problem[]): void {
    if (trouble !== this.trouble) this.told = { trouble };
    this.trouble = trouble;
    this.problems = problems;
    this.progress = undefined;
    this.isOld = false;
    this.#host.requestUpdate();
  }
}

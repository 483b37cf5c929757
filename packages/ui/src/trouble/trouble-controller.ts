import type { Plan, Problem, Sign, Trouble } from "@headfall/hydraulics";
import type { ReactiveControllerHost } from "lit";
import { RestedAsker } from "../controllers/rested-asker.js";
import type { RoomTold } from "../kernels/how-got/request.js";

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
export class TroubleController {
  trouble: Trouble | undefined;
  /** The same, for figures that tell how they were got. */
  told: RoomTold = {};
  problems: readonly Problem[] = [];
  /** Whether causes are being ranked anew. */
  isOld = false;
  /** Whether the user wanted no more of it. */
  isStopped = false;

  readonly #host: ReactiveControllerHost;
  readonly #asker: RestedAsker;
  #asked: TroubleQuestion | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    this.#asker = new RestedAsker(host);
  }

  /** How far that has come, from 0 to 1; undefined until it takes long enough to tell. */
  get progress(): number | undefined {
    return this.#asker.progress;
  }

  /** Takes new signs, or a new plan; without signs nothing is wrong that could be told. */
  ask(question: TroubleQuestion): void {
    this.#asked = question;
    this.isStopped = false;
    if (question.signs.length === 0) {
      this.#asker.close();
      this.#take(undefined, []);
      return;
    }
    this.isOld = true;
    this.#asker.ask({ kind: "trouble", ...question }, REST_MS, (told) => {
      if (told.ok) this.#take(told.answer, []);
      else this.#take(this.trouble, told.problems);
    });
  }

  /** Ends the work; what was found last stays. */
  stop(): void {
    this.#asker.close();
    this.isOld = false;
    this.isStopped = true;
    this.#host.requestUpdate();
  }

  /** After all. */
  goOn(): void {
    if (this.#asked !== undefined) this.ask(this.#asked);
    this.#host.requestUpdate();
  }

  #take(trouble: Trouble | undefined, problems: readonly Problem[]): void {
    if (trouble !== this.trouble) this.told = { trouble };
    this.trouble = trouble;
    this.problems = problems;
    this.isOld = false;
    this.#host.requestUpdate();
  }
}

import type { Measuring, Plan } from "@headfall/hydraulics";
import type { ReactiveControllerHost } from "lit";
import { RestedAsker } from "../controllers/rested-asker.js";

/** Rest after the last change before measurements are tried: that is as long as many checks [ms]. */
const REST_MS = 800;

/** Has the measurements of a plan tried for its host, once the hand has rested. */
export class MeasureController {
  /** What the plan asked about came to. */
  measuring: Measuring | undefined;

  readonly #host: ReactiveControllerHost;
  readonly #asker: RestedAsker;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    this.#asker = new RestedAsker(host);
  }

  /** How far the work has come, from 0 to 1; undefined while there is none. */
  get progress(): number | undefined {
    return this.#asker.progress;
  }

  /** Ends what is under way and forgets what was found. */
  forget(): void {
    this.#asker.close();
    this.measuring = undefined;
  }

  /** Takes a new plan; what was found of the one before no longer counts. */
  ask(plan: Plan, day: string | undefined, rest = REST_MS): void {
    this.forget();
    this.#asker.progress = 0;
    this.#asker.ask({ kind: "measure", plan, day }, rest, (told) => {
      if (told.ok) this.measuring = told.answer;
    });
    this.#host.requestUpdate();
  }

  /** Ends the work; nothing is known then. */
  stop(): void {
    this.forget();
    this.#host.requestUpdate();
  }
}

import type { Measuring, Plan } from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import { RoomAsker } from "../worker/ask-room.js";

/** Rest after the last change before measurements are tried: that is as long as many checks [ms]. */
const REST_MS = 800;

/** Has the measurements of a plan tried for its host, once the hand has rested. */
export class MeasureController implements ReactiveController {
  /** What the plan asked about came to. */
  measuring: Measuring | undefined;
  /** How far the work has come, from 0 to 1; undefined while there is none. */
  progress: number | undefined;

  readonly #host: ReactiveControllerHost;
  readonly #asker = new RoomAsker();
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
    this.#asker.onProgress = (share) => {
      if (this.progress === undefined) return;
      this.progress = share;
      host.requestUpdate();
    };
  }

  hostDisconnected(): void {
    this.forget();
  }

  /** Ends what is under way and forgets what was found. */
  forget(): void {
    clearTimeout(this.#timer);
    this.#asker.close();
    this.measuring = undefined;
    this.progress = undefined;
  }

  /** Takes a new plan; what was found of the one before no longer counts. */
  ask(plan: Plan, day: string | undefined, rest = REST_MS): void {
    this.forget();
    this.progress = 0;
    this.#timer = setTimeout(() => {
      this.#asker.ask({ kind: "measure", plan, day }, (told) => {
        this.progress = undefined;
        if (told.ok) this.measuring = told.answer;
        this.#host.requestUpdate();
      });
    }, rest);
    this.#host.requestUpdate();
  }

  /** Ends the work; nothing is known then. */
  stop(): void {
    this.forget();
    this.#host.requestUpdate();
  }
}
